using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace Ohmstead.Assessment.Searching;

/// <summary>Takes a text apart for a search: one way for what is held, for what is asked, and for the script of the pages.</summary>
/// <remarks>
/// Letters are compared plain and small. Names lose their hyphens and the zeros before a number, so that SP-0007, SP0007 and sp-7 are one.
/// A name or word with hyphens is found by its pieces, too. Everything else parts words.
/// </remarks>
public static partial class SearchText
{
    private const RegexOptions Options = RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture;
    private const int Patience = 1000;

    // A chain of more is taken for several: nobody asks for one.
    private const int MostPieces = 8;

    /// <summary>Words that stand in most sentences and tell none from another; neither held nor asked for.</summary>
    public static IReadOnlyList<string> Stops { get; } =
    [
        "a",
        "an",
        "and",
        "are",
        "as",
        "at",
        "be",
        "but",
        "by",
        "for",
        "from",
        "had",
        "has",
        "have",
        "in",
        "is",
        "it",
        "its",
        "of",
        "on",
        "or",
        "so",
        "that",
        "the",
        "then",
        "there",
        "this",
        "to",
        "was",
        "we",
        "were",
        "which",
        "with",
    ];

    private static readonly FrozenSet<string> StopSet = Stops.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether a token is one of the words that are left out.</summary>
    public static bool IsStop(string token) => StopSet.Contains(token);

    /// <summary>The stretches of a text, in order.</summary>
    public static IReadOnlyList<SearchItem> Read(string text)
    {
        var plain = PlainLetters.Of(text);
        var items = new List<SearchItem>(plain.Length / 6);
        var at = 0;
        while (at < plain.Length)
        {
            var isPoint = plain[at] == '.' && at + 1 < plain.Length && char.IsAsciiDigit(plain[at + 1]);
            if (!isPoint && !IsLetter(plain[at]))
            {
                at++;
                continue;
            }

            var (item, end) = SearchDates.Read(plain, at) ?? SearchFigures.Read(plain, at) ?? ReadRun(plain, at);
            items.Add(item);
            at = end;
        }

        return items;
    }

    /// <summary>What a whole text is called in the index, so that whoever asks for just that finds it first.</summary>
    public static string Name(string text) =>
        "!" + string.Join('_', Read(text).Where(item => !IsStop(item.Token)).SelectMany(item => item.Asked[0]));

    /// <summary>Whether a character is of a word or a number.</summary>
    internal static bool IsLetter(char c) =>
        char.IsAscii(c) ? char.IsAsciiLetterOrDigit(c) : char.IsLetter(c) || char.IsDigit(c) || char.IsSurrogate(c);

    // Letters and digits with hyphens between them.
    private static (SearchItem Item, int End) ReadRun(string text, int at)
    {
        // A point that begins no number after all.
        at += text[at] == '.' ? 1 : 0;
        var end = at;
        var pieces = new List<string>(1);
        while (true)
        {
            var start = end;
            while (end < text.Length && IsLetter(text[end]))
            {
                end++;
            }

            pieces.Add(Canonical(text[start..end].ToLowerInvariant()));
            if (pieces.Count == MostPieces || !IsWithin(text, end))
            {
                break;
            }

            end++;
        }

        if (pieces.Count == 1)
        {
            return (new(KindOf(pieces[0]), pieces[0]), end);
        }

        return (pieces.Exists(HasDigit) ? Joined(pieces) : Hyphened(pieces), end);
    }

    private static SearchItem Joined(List<string> pieces)
    {
        var whole = pieces.Skip(1).Aggregate(pieces[0], Join);
        IEnumerable<string> pairs =
            pieces.Count == 2
                ? []
                : pieces
                    .Zip(pieces.Skip(1))
                    .Where(pair => HasDigit(pair.First) || HasDigit(pair.Second))
                    .Select(pair => Join(pair.First, pair.Second));
        return new(SearchItemKind.Name, whole)
        {
            Beside = [.. pieces.Concat(pairs).Where(piece => !IsStop(piece)).Distinct(StringComparer.Ordinal)],
            Asked =
            [
                [whole],
                [.. pieces],
            ],
        };
    }

    private static SearchItem Hyphened(List<string> pieces) =>
        new(SearchItemKind.Words, pieces[0])
        {
            Beside = [.. pieces.Skip(1)],
            Asked =
            [
                [.. pieces],
            ],
        };

    /// <summary>A word and what stands behind it as one name: sp and 7 are SP-0007.</summary>
    internal static string Joined(string left, string right) => Join(left, right);

    // Two figures side by side would be another number.
    private static string Join(string left, string right) =>
        char.IsAsciiDigit(left[^1]) == char.IsAsciiDigit(right[0]) ? $"{left}-{right}" : left + right;

    private static bool HasDigit(string piece) => piece.AsSpan().ContainsAnyInRange('0', '9');

    private static SearchItemKind KindOf(string piece) =>
        !HasDigit(piece) ? SearchItemKind.Word
        : piece.AsSpan().ContainsAnyExceptInRange('0', '9') ? SearchItemKind.Name
        : SearchItemKind.Number;

    /// <summary>Whether a hyphen with a letter or digit behind it stands there.</summary>
    internal static bool IsWithin(string text, int at) => at + 1 < text.Length && text[at] is '-' or '_' && IsLetter(text[at + 1]);

    /// <summary>A name without the zeros before its numbers, which say nothing: 0007 is 7.</summary>
    internal static string Canonical(string piece) =>
        piece.Contains('0', StringComparison.Ordinal) ? LeadingZeros().Replace(piece, string.Empty) : piece;

    [GeneratedRegex("(?<![0-9])0+(?=[0-9])", Options, Patience)]
    private static partial Regex LeadingZeros();
}
