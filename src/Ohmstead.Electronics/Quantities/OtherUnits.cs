using System.Buffers;
using System.Globalization;

namespace Ohmstead.Electronics.Quantities;

/// <summary>What people write around a value in other places and other years, and the value that it means. Nothing is read by these: they
/// only find the words of a message.</summary>
internal static class OtherUnits
{
    private static readonly string[] Hedges =
    [
        "approximately ",
        "approx. ",
        "approx ",
        "about ",
        "around ",
        "circa ",
        "ca. ",
        "c. ",
        "~",
        "≈",
    ];

    // What says how a value is counted where there is only one way: d.c. of a rating, peak to peak of a ripple.
    private static readonly string[] WithoutWeight = ["dc", "d.c.", "d.c", "vdc", "pp", "p-p", "pk-pk", "ptp", "p/p", "peak-to-peak"];

    /// <summary>What a plain number is written with.</summary>
    internal static readonly SearchValues<char> OfNumbers = SearchValues.Create("0123456789.");

    private static readonly string[] InchWords = ["\"", "in", "inch", "inches", "''", "″"];
    private static readonly string[] PercentWords = ["percent", "per cent", "pct"];

    // An inch is 25.4 mm exactly, and 0 °F is 32 degrees of 5/9 below 0 °C (NIST SP 811).
    private const decimal Inch = 25.4m;
    private const decimal FreezingPoint = 32m;

    /// <summary>How many characters a word of doubt takes before the number; 0 where none stands.</summary>
    internal static int Hedge(ReadOnlySpan<char> text)
    {
        foreach (var hedge in Hedges)
        {
            if (text.StartsWith(hedge, StringComparison.OrdinalIgnoreCase))
            {
                var end = hedge.Length;
                while (end < text.Length && QuantityText.IsSpace(text[end]))
                    end++;
                return end < text.Length && char.IsAsciiDigit(text[end]) ? end : 0;
            }
        }

        return 0;
    }

    /// <summary>Whether what follows a value adds nothing to it.</summary>
    /// <param name="rest">What follows.</param>
    /// <param name="unit">The unit before it, which may have been written again.</param>
    internal static bool IsOfNoWeight(ReadOnlySpan<char> rest, ReadOnlySpan<char> unit)
    {
        var word = rest.Trim().ToString();
        return WithoutWeight.Contains(word, StringComparer.OrdinalIgnoreCase) || unit.Trim().SequenceEqual(word);
    }

    /// <summary>The value in a unit that is read, or null.</summary>
    internal static string? Meant(string number, ReadOnlySpan<char> unit, Dimension expected)
    {
        var word = unit.Trim().ToString();
        if (expected is Dimension.Length && InchWords.Contains(word, StringComparer.Ordinal) && Value(number) is { } inches)
            return string.Create(CultureInfo.InvariantCulture, $"{inches * Inch:0.#####} mm");
        if (expected is Dimension.Temperature && word is "°" or "deg" or "degrees" or "grad")
            return $"{number} °C";
        if (expected is Dimension.Ratio && PercentWords.Contains(word, StringComparer.Ordinal))
            return $"{number} %";
        foreach (var tail in WithoutWeight)
        {
            if (word.Length > tail.Length && word.EndsWith(tail, StringComparison.OrdinalIgnoreCase))
                return $"{number} {word[..^tail.Length].Trim()}";
        }

        return null;
    }

    /// <summary>A temperature of another scale in degrees Celsius, to a tenth; null where it is no number.</summary>
    internal static string? InDegrees(string number, ReadOnlySpan<char> unit)
    {
        if (Value(number) is not { } value)
            return null;
        var celsius = unit is "K" ? value - 273.15m : (value - FreezingPoint) * 5m / 9m;
        return string.Create(CultureInfo.InvariantCulture, $"{decimal.Round(celsius, 1, MidpointRounding.AwayFromZero):0.#} °C");
    }

    /// <summary>What three figures alone mean on a capacitor: two digits and how many zeros follow, in picofarad (IEC 60062); null for
    /// other numbers.</summary>
    internal static string? OfPrint(string number, Dimension expected)
    {
        if (expected is not Dimension.Capacitance || number is not [>= '1' and <= '9', >= '0' and <= '9', >= '1' and <= '6'])
            return null;
        var picofarads = decimal.Parse(number[..2] + new string('0', number[2] - '0'), CultureInfo.InvariantCulture);
        return QuantityText.Format(new Quantity(picofarads / 1_000_000_000_000m, Dimension.Capacitance));
    }

    private static decimal? Value(string number) =>
        number.Length <= 12
        && decimal.TryParse(
            number,
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out var value
        )
            ? value
            : null;
}
