using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Decoding;

/// <summary>Reports the characters of a file that nobody sees or that are none.</summary>
/// <remarks>
/// The front matter is held to more than the body: nothing in it may hide, since keys and names are compared letter by letter.
/// In the body only control characters, codes that are no characters and changes of direction are reported.
/// </remarks>
public static class CharacterScan
{
    // A file with ten thousand of them is one mistake, not ten thousand.
    private const int MostOfOneCheck = 20;

    private const int LongestWord = 60;

    /// <summary>Adds the findings of one file.</summary>
    /// <param name="findings">Where they go, in order of place.</param>
    /// <param name="source">The file.</param>
    /// <param name="frontMatterEnd">The offset behind the front matter.</param>
    /// <returns>False when the front matter holds a character that YAML readers take for the end of the text or of a line.</returns>
    public static bool AddTo(FindingList findings, SourceText source, int frontMatterEnd)
    {
        var text = source.Text;
        var canBeRead = true;
        for (var at = 0; SuspectCharacters.IndexIn(text.AsSpan(at)) is >= 0 and var found; at++)
        {
            at += found;
            var code = CodeAt(text, at);
            var inFrontMatter = at < frontMatterEnd;
            canBeRead &= !inFrontMatter || code is not (0 or 0x85 or 0x2028 or 0x2029);
            if (
                Judge(code, text, at, inFrontMatter) is { } judgement
                && !findings.CountsIfFull(judgement.Check, source.Path, MostOfOneCheck)
            )
            {
                findings.Add(ToFinding(source, at, code, judgement), MostOfOneCheck);
            }
        }

        return canBeRead;
    }

    /// <summary>The check and severity for a character, or null when it may stand there.</summary>
    private static (string Check, Severity Severity, string What)? Judge(int code, string text, int at, bool inFrontMatter) =>
        SuspectCharacters.KindOf(code) switch
        {
            CharacterKind.Control when inFrontMatter || code != 0x85 => (TextChecks.ControlCharacter, Severity.Error, "control character"),
            CharacterKind.NoCharacter => (TextChecks.NotACharacter, Severity.Error, "reserved code"),
            CharacterKind.Direction => (TextChecks.HiddenCharacter, Severity.Warning, "hidden change of direction"),
            CharacterKind.LineSeparator when inFrontMatter => (TextChecks.HiddenCharacter, Severity.Error, "hidden character"),
            CharacterKind.Invisible when inFrontMatter => (TextChecks.HiddenCharacter, Severity.Error, "invisible character"),
            CharacterKind.Joiner when inFrontMatter && IsBesideAscii(text, at) => (
                TextChecks.HiddenCharacter,
                Severity.Error,
                "invisible character"
            ),
            _ => null,
        };

    // The text was decoded from valid UTF-8, so every high surrogate has its low one.
    private static int CodeAt(string text, int at) => char.IsHighSurrogate(text[at]) ? char.ConvertToUtf32(text, at) : text[at];

    private static bool IsBesideAscii(string text, int at) =>
        (at > 0 && char.IsAscii(text[at - 1])) || (at + 1 < text.Length && char.IsAscii(text[at + 1]));

    private static Finding ToFinding(SourceText source, int at, int code, (string Check, Severity Severity, string What) judgement) =>
        new(
            judgement.Check,
            judgement.Severity,
            source.PlaceAt(at, code > 0xFFFF ? 2 : 1),
            $"{judgement.What} {SuspectCharacters.NameOf(code)}",
            code is 0x85 or 0x2028 or 0x2029 ? "begin a new line there, or write a space instead"
                : WordAt(source.Text, at) is { } word ? $"remove it: type {word} anew in place of what stands there"
                : "remove it"
        );

    // The word around a character that nobody sees, without it; null where it holds more than usual letters, or stands by itself.
    private static string? WordAt(string text, int at)
    {
        var (start, end) = (at, at);
        while (start > 0 && IsOfWord(text[start - 1]))
        {
            start--;
        }

        while (end < text.Length && (IsOfWord(text[end]) || SuspectCharacters.IndexIn(text.AsSpan(end, 1)) == 0))
        {
            end++;
        }

        var word = string.Concat(text[start..end].Where(IsOfWord));
        return word.Length is > 0 and <= LongestWord ? word : null;
    }

    private static bool IsOfWord(char letter) => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_' or '.' or '+' or '/' or ':';
}
