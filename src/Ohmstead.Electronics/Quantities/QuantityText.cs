namespace Ohmstead.Electronics.Quantities;

/// <summary>Reads and writes quantities as text. There is one grammar, the same in every field, and no culture in it.</summary>
/// <remarks>
/// <code>
/// quantity = [ "-" ] number [ spaces ] [ unit ]   |   [ "-" ] code [ [ spaces ] base unit ]
/// number   = digits [ "." digits ]  |  "." digits          (old print writes .047; "5." and "+5" are refused, and so is "-0")
/// code     = digits letter digits  |  letter digits        (IEC 60062: 4k7, 2M2, p47, 4R7; also 3V3 and 2A5)
/// spaces   = space, no-break space, thin space, narrow no-break space
/// </code>
/// There are no exponents, no hexadecimal, no separators of thousands, no decimal comma and no space at either end. The unit may be left out
/// for a number and a ratio only. Up to 28 significant digits are read, exactly; zeros at the end of the fraction stay in the scale of the decimal
/// where the unit is a power of ten, so 0.10 V keeps its two places. A text of more than 200 characters is a fault. Nothing a text contains
/// raises an exception.
/// </remarks>
public static partial class QuantityText
{
    private const int LongestText = 200;

    /// <summary>Reads a quantity of the dimension that is expected.</summary>
    /// <param name="text">The text: 391 µF, 4k7, 1.4 Ω, 38 °C, 12 %.</param>
    /// <param name="expected">The dimension that belongs here; another one is a fault.</param>
    /// <param name="print">How mF and MF are meant in a capacitance; unstated, they are a fault that names both meanings.</param>
    /// <returns>The quantity in its base unit, or the fault with its place in the text.</returns>
    public static Parsed<Quantity> Parse(ReadOnlySpan<char> text, Dimension expected, UnitPrint print = UnitPrint.Unstated)
    {
        if (text.IsEmpty) return QuantityFaults.Empty(expected);
        if (text.Length > LongestText) return QuantityFaults.TooLong(text, LongestText);

        var index = text[0] == '-' ? 1 : 0;
        var run = default(DigitRun);
        int power;
        if (text.Length > index + 1 && char.IsAsciiDigit(text[index + 1]) && DimensionFacts.TryCodeLetter(expected, text[index], out power))
        {
            index++;
            run.Read(text, ref index, fraction: true);
            return AfterCode(text, index, run, power, expected);
        }

        run.Read(text, ref index, fraction: false);
        var pointed = index < text.Length && text[index] == '.';
        if (pointed)
        {
            index++;
            run.Read(text, ref index, fraction: true);
            if (run.Fraction == 0) return QuantityFaults.Number(text, run.Count == 0 ? index - 1 : index, expected);
        }

        if (run.Count == 0) return QuantityFaults.Number(text, index, expected);
        if (!pointed && text.Length > index + 1 && char.IsAsciiDigit(text[index + 1]) && DimensionFacts.TryCodeLetter(expected, text[index], out power))
        {
            index++;
            run.Read(text, ref index, fraction: true);
            return AfterCode(text, index, run, power, expected);
        }

        var numberEnd = index;
        while (index < text.Length && IsSpace(text[index])) index++;
        var unit = text[index..];
        var multiplier = 1;
        if (unit.IsEmpty && numberEnd == text.Length && expected is Dimension.Number or Dimension.Ratio)
        {
            power = 0;
        }
        else if (UnitLookup.IsTwoFacedFarad(expected, unit))
        {
            if (print is UnitPrint.Unstated) return QuantityFaults.TwoFacedFarad(text, index, numberEnd);
            power = print is UnitPrint.Old ? -6 : unit[0] == 'm' ? -3 : 6;
        }
        else if (unit.IsEmpty || !UnitLookup.TryFind(expected, unit, out power, out multiplier))
        {
            return QuantityFaults.Unit(text, numberEnd, index, expected);
        }

        return Finish(text, run, multiplier, power, expected);
    }

    /// <summary>Whether a character may stand between a number and its unit.</summary>
    internal static bool IsSpace(char character) => character is ' ' or '\u00A0' or '\u2009' or '\u202F';

    private static Parsed<Quantity> AfterCode(ReadOnlySpan<char> text, int index, DigitRun run, int power, Dimension expected)
    {
        var codeEnd = index;
        while (index < text.Length && IsSpace(text[index])) index++;
        var plain = index == text.Length ? codeEnd == index
            : UnitLookup.TryFind(expected, text[index..], out var unitPower, out var multiplier) && unitPower == 0 && multiplier == 1;
        return plain ? Finish(text, run, 1, power, expected) : QuantityFaults.AfterCode(text, codeEnd, index, expected);
    }

    private static Parsed<Quantity> Finish(ReadOnlySpan<char> text, DigitRun run, int multiplier, int power, Dimension expected)
    {
        if (!run.TryScale(multiplier, power, out var value)) return QuantityFaults.NotHeld(text, run, expected);
        if (text[0] == '-')
        {
            if (run.IsZero) return QuantityFaults.MinusZero(text);
            value = -value;
        }

        return value <= DimensionFacts.Most(expected) && value >= DimensionFacts.Least(expected)
            ? Parsed<Quantity>.Of(new Quantity(value, expected))
            : QuantityFaults.Implausible(text, value, expected);
    }
}
