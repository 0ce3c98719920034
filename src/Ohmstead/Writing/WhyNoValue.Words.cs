using System.Text.RegularExpressions;
using Ohmstead.Records.Model;

namespace Ohmstead.Writing;

/// <content>Words that are written otherwise: signs behind a figure, where it was read, results, doubts, ripples, several in one.</content>
internal sealed partial class WhyNoValue
{
    private static string? OfEnd(string word) =>
        word.TrimEnd(',', ';', ':') is { Length: > 0 } bare && bare.Length < word.Length && char.IsLetterOrDigit(bare[^1])
            ? $"'{word}' ends in a sign that is no part of a value; write {bare}"
            : null;

    private string? OfCircuit(string word)
    {
        var isWord = Vocabulary.Circuits.Means(word, out var circuit);
        var isIn = isWord ? circuit is Circuit.In : word == NotLifted;
        return !isWord && !isIn && !Lifted.Contains(word, StringComparer.Ordinal) ? null
            : kind is null ? $"'{word}' is told of parts, and a test point is neither in the circuit nor lifted; leave it out"
            : $"'{word}' is said by its key; write circuit={Vocabulary.Circuits.WordFor(isIn ? Circuit.In : Circuit.Out)}";
    }

    private static string? OfResult(string word) =>
        Good.Contains(word, StringComparer.OrdinalIgnoreCase) || Bad.Contains(word, StringComparer.OrdinalIgnoreCase)
            ? $"'{word}' is no result; write {(Good.Contains(word, StringComparer.OrdinalIgnoreCase) ? "pass" : "fail")}"
            : null;

    // c. 1982 is a year, c. 312 a figure that somebody doubts; a meter shows neither.
    private string? OfDoubt(string word)
    {
        var doubt = Doubt().Match(word);
        var figure = doubt.Groups["figure"].Value;
        return !doubt.Success ? null
            : figure.Length == 4 && figure.StartsWith("19", StringComparison.Ordinal)
                ? $"'{word}' tells a year, and a reading is what the meter shows; a year stands in the record of the board, as in made: "
                    + figure
            : $"'{word}' is about a figure, and a reading is the one that the meter shows; write {Tight(figure)}"
                + (IsBare(figure) && !isUnitKnown ? " with its unit" : string.Empty)
                + " if the meter showed that";
    }

    private string? OfRipple(string word)
    {
        var peak = PeakToPeak().Match(word);
        return peak.Success && measures is PointMeasure.Voltage
            ? $"a ripple is peak to peak by itself; write ripple={Tight(peak.Groups["value"].Value)}"
            : null;
    }

    // "312uF 1.4ohm" in one pair of quotes, 312/1.4.
    private string? OfSeveral(string word)
    {
        string[] pieces = [.. word.Split(Between, StringSplitOptions.RemoveEmptyEntries)];
        var isComma = word.Count(letter => letter == ',') == 1 && pieces.Length == 2 && IsBare(pieces[0]);
        string[] whole = [.. SaidIndication.Joined(pieces)];
        return whole.Length > 1 && !isComma && Array.TrueForAll(whole, piece => IsBare(piece) || Dimensions().Any(one => Is(piece, one)))
            ? $"'{word}' is {whole.Length} values in one word; write {string.Join(' ', whole.Select(Tight))}"
            : null;
    }

    [GeneratedRegex(
        "^(c\\.|ca\\.?|circa|about|approx\\.?|~|≈) ?(?<figure>[0-9].*)$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Doubt();

    [GeneratedRegex(
        "^(?<value>[0-9.]+ ?[µumkM]?V) ?(pp|p-p|pk-pk|ptp)$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        1000
    )]
    private static partial Regex PeakToPeak();
}
