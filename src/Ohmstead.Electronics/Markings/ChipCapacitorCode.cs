using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The two-character code of chip capacitors: a letter for two figures, a digit for the power of ten, in picofarad.</summary>
/// <remarks>
/// S3 is 4.7 nF, A2 is 100 pF. A maker may print a letter of its own before it. Lists disagree about the small b. Source: EIA-198, as
/// quoted from a maker's marking sheet.
/// </remarks>
public static class ChipCapacitorCode
{
    private const int Length = 2;
    private const decimal Picofarad = 1e-12m;
    private const string Capitals = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    private static readonly Source Standard = Source.Published(
        "EIA-198",
        "two-character code, as quoted from NIC Components' marking sheet"
    );
    private static readonly Source Other = Source.Practice("another list of the EIA-198 code");
    private static readonly decimal[] OfCapitals =
    [
        1.0m,
        1.1m,
        1.2m,
        1.3m,
        1.5m,
        1.6m,
        1.8m,
        2.0m,
        2.2m,
        2.4m,
        2.7m,
        3.0m,
        3.3m,
        3.6m,
        3.9m,
        4.3m,
        4.7m,
        5.1m,
        5.6m,
        6.2m,
        6.8m,
        7.5m,
        8.2m,
        9.1m,
    ];

    /// <summary>Reads a code.</summary>
    public static Parsed<Marking<MarkedValue>> Parse(ReadOnlySpan<char> text)
    {
        if (text.Length != Length || !char.IsAsciiDigit(text[1]) || Figure(text[0]) is not { } figure)
            return Marking<MarkedValue>.Failed(
                text,
                $"'{Excerpt.From(text)}' is no two-character code of a capacitor, expected a letter and a digit such as S3"
            );
        var first = Reading(text, figure, Standard);
        return text[0] == 'b' ? Marking<MarkedValue>.Read(first, Reading(text, 3.5m, Other)) : Marking<MarkedValue>.Read(first);
    }

    // A nine is a tenth, as in the three-digit code.
    private static MarkingReading<MarkedValue> Reading(ReadOnlySpan<char> text, decimal figure, Source source)
    {
        var power = text[1] == '9' ? -1 : text[1] - '0';
        var farads = figure * DecimalMath.PowerOfTen(power) * Picofarad;
        return new(
            new MarkedValue(new Quantity(farads, Dimension.Capacitance)),
            $"{text[0]} is {Figures.Text(figure)}, × 10^{Figures.Text(power)} pF",
            source
        );
    }

    private static decimal? Figure(char letter) =>
        letter switch
        {
            'a' => 2.5m,
            'b' => 3.0m,
            'c' => 3.5m,
            'd' => 4.0m,
            'e' => 4.5m,
            'f' => 5.0m,
            'm' => 6.0m,
            'n' => 7.0m,
            't' => 8.0m,
            'y' => 9.0m,
            _ => Capitals.IndexOf(letter, StringComparison.Ordinal) is >= 0 and var at ? OfCapitals[at] : null,
        };
}
