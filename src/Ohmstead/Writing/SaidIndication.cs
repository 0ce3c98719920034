using System.Buffers;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Writing;

/// <summary>
/// Readings that are no figure, as they are said: <c>open</c>, <c>short</c>, <c>over range</c>, <c>&gt;20Mohm</c>. A shell takes &gt; and
/// &lt; for itself, so
/// <c>over 20Mohm</c> and <c>under 0.1ohm</c> mean the same; a record holds the sign alone.
/// </summary>
internal static class SaidIndication
{
    private const string Over = "over";
    private const string Under = "under";
    private static readonly SearchValues<char> OfNumbers = SearchValues.Create("0123456789.,");
    private static readonly char[] BeforeNumber = [Condition, ' '];
    private static readonly string[] Doubts = ["c.", "ca.", "ca", "circa", "about", "approx.", "approx", "~", "≈"];

    /// <summary>What people write before the condition under which something was read; a record has a key for each.</summary>
    public const char Condition = '@';

    /// <summary>
    /// The same words, those put together that a space parted: <c>391 uF</c>, <c>over range</c>, <c>over 20Mohm</c>,
    /// <c>esr=&gt; 20 MΩ</c>; and what stands behind an @ or a word of doubt with that.
    /// </summary>
    public static IReadOnlyList<string> Joined(IReadOnlyList<string> words)
    {
        var joined = new List<string>(words.Count);
        for (var at = 0; at < words.Count; at++)
        {
            var word = words[at];
            if (at + 1 < words.Count && Begins(word) is var (before, sign))
            {
                var next = words[++at];
                word =
                    sign == ">" && $"{Over} {next}" == IndicationText.OverRange && word.EndsWith(Over, StringComparison.Ordinal)
                        ? before + IndicationText.OverRange
                        : before + sign + next;
                if (at + 1 < words.Count && IsNumber(next) && IsUnit(words[at + 1]))
                {
                    word += " " + words[++at];
                }
            }
            else
            {
                if (at + 1 < words.Count && (word.EndsWith(Condition) || Doubts.Contains(word)))
                {
                    word += $" {words[++at]}";
                }

                if (at + 1 < words.Count && IsNumber(word[(word.LastIndexOfAny(BeforeNumber) + 1)..]) && IsUnit(words[at + 1]))
                {
                    word += $" {words[++at]}";
                }
            }

            joined.Add(Signed(word));
        }

        return joined;
    }

    /// <summary>
    /// Where the value begins in a word that says its key: behind <c>=</c>, or at the sign of <c>esr&gt;20Mohm</c>; 0 where it says none.
    /// </summary>
    public static (int KeyEnd, int ValueStart) Split(string word)
    {
        var end = word.AsSpan().IndexOfAny("=<>≤≥");
        return end <= 0 ? (0, 0) : (end, word[end] == '=' ? end + 1 : end);
    }

    /// <summary>The text with its sign as a record has it, or as it is where it has none: <c>over 20 MΩ</c> is <c>&gt;20 MΩ</c>.</summary>
    public static string Signed(string text) =>
        text == IndicationText.OverRange ? text
        : text.StartsWith(Over + " ", StringComparison.Ordinal) ? ">" + text[(Over.Length + 1)..]
        : text.StartsWith(Under + " ", StringComparison.Ordinal) ? "<" + text[(Under.Length + 1)..]
        : text;

    /// <summary>The key that a word of the meter belongs to by what the part is; or why it must be said.</summary>
    public static (string? Key, string? Fault) KeyOf(string word, PartKind? kind)
    {
        var key = kind is null
            ? null
            : (kind.Family, word) switch
            {
                (PartFamily.Capacitor, IndicationText.Open) => "capacitance",
                // A short is found with direct current.
                (PartFamily.Capacitor, IndicationText.Short) => "resistance",
                (PartFamily.Resistor or PartFamily.Fuse or PartFamily.Coil or PartFamily.Inductor, _) => "resistance",
                (PartFamily.Transistor, not IndicationText.OverRange) => "forward_voltage",
                (PartFamily.Other, not IndicationText.OverRange) when kind.Junction != Junction.None => "forward_voltage",
                (PartFamily.Other, not IndicationText.OverRange)
                    when kind == PartKinds.Switch
                        || kind == PartKinds.Lamp
                        || kind == PartKinds.Connector
                        || kind == PartKinds.Valve
                        || kind == PartKinds.Other => "resistance",
                _ => null,
            };
        return key is null
            ? (
                null,
                $"'{word}' can be of more than one quantity; say which, as in "
                    + $"resistance={(word.Contains(' ', StringComparison.Ordinal) ? $"\"{word}\"" : word)}"
            )
            : (key, null);
    }

    // What a word that ends in a sign, or in the word for it, says before the sign.
    private static (string Before, string Sign)? Begins(string word)
    {
        foreach (
            var (ending, sign) in new[]
            {
                (Over, ">"),
                (Under, "<"),
                (">=", ">="),
                ("<=", "<="),
                (">", ">"),
                ("<", "<"),
                ("≥", "≥"),
                ("≤", "≤"),
            }
        )
        {
            if (
                word.EndsWith(ending, StringComparison.Ordinal)
                && word[..^ending.Length] is var before
                && (before.Length == 0 || before[^1] == '=' || !char.IsAsciiLetter(ending[0]))
            )
            {
                return (before, sign);
            }
        }

        return null;
    }

    private static bool IsNumber(string word) =>
        word.AsSpan().IndexOfAnyInRange('0', '9') >= 0 && word.AsSpan(word[0] == '-' ? 1 : 0).IndexOfAnyExcept(OfNumbers) < 0;

    private static bool IsUnit(string word) =>
        word.Length > 0
        && word.All(unit => char.IsLetter(unit) || unit is 'Ω' or '%' or '°')
        && word is not (IndicationText.Open or IndicationText.Short or Over or Under)
        && !Vocabulary.Results.Means(word, out _)
        && !Vocabulary.Circuits.Means(word, out _)
        && BenchShape.Reading.PlaceOf(word) < 0
        && BenchShape.Proof.PlaceOf(word) < 0;
}
