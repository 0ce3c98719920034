namespace Ohmstead.Electronics.Quantities;

/// <summary>Reads and writes quantities as text. There is one grammar, the same in every field, and no culture in it.</summary>
/// <remarks>
/// <code>
/// quantity = [ "-" ] number [ spaces ] [ unit ]   |   [ "-" ] code [ [ spaces ] base unit ]
/// number   = digits [ "." digits ]  |  "." digits          (old print writes .047; "5." and "+5" are refused, and so is "-0")
/// code     = digits letter digits  |  letter digits        (IEC 60062: 4k7, 2M2, p47, 4R7; also 3V3 and 2A5)
/// spaces   = space, no-break space, thin space, narrow no-break space
/// </code>
/// There are no exponents, no hexadecimal, no separators of thousands, no decimal comma and no space at either end. The unit may be left
/// out for a number and a ratio only. Up to 28 significant digits are read, exactly; zeros at the end of the fraction stay in the scale of
/// the decimal where the unit is a power of ten, so 0.10 V keeps its two places. A text of more than 200 characters is a fault. Nothing a
/// text contains raises an exception.
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
        var failure = Read(text, expected, print, out var quantity);
        return failure.Step is QuantityStep.Done ? Parsed<Quantity>.From(quantity) : QuantityFaults.Explain(failure, text, expected);
    }

    /// <summary>Reads a quantity where nobody asks why there is none, which costs far less than <see cref="Parse"/>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="expected">The dimension that belongs here.</param>
    /// <param name="print">How mF and MF are meant in a capacitance; unstated, they are no quantity.</param>
    /// <param name="quantity">The quantity in its base unit.</param>
    /// <returns>Whether <see cref="Parse"/> would give one.</returns>
    public static bool TryRead(ReadOnlySpan<char> text, Dimension expected, UnitPrint print, out Quantity quantity) =>
        Read(text, expected, print, out quantity).Step is QuantityStep.Done;

    /// <summary>Reads a quantity without finding words for what may be wrong with it.</summary>
    internal static QuantityFailure Read(ReadOnlySpan<char> text, Dimension expected, UnitPrint print, out Quantity quantity)
    {
        quantity = default;
        if (text.IsEmpty)
            return new QuantityFailure(QuantityStep.Empty);
        if (text.Length > LongestText)
            return new QuantityFailure(QuantityStep.TooLong);

        var index = text[0] == '-' ? 1 : 0;
        var run = default(DigitRun);
        run.Read(text, ref index, fraction: false);
        var whole = run.Count;
        if (
            text.Length > index + 1
            && char.IsAsciiDigit(text[index + 1])
            && DimensionFacts.TryCodeLetter(expected, text[index], out var power)
        )
        {
            index++;
            run.Read(text, ref index, fraction: true);
            return AfterCode(text, index, run, power, expected, out quantity);
        }

        if (index < text.Length && text[index] == '.')
        {
            index++;
            run.Read(text, ref index, fraction: true);
            if (run.Fraction == 0)
                return new QuantityFailure(QuantityStep.Number, whole == 0 ? index - 1 : index);
        }

        return run.Count == 0 ? new QuantityFailure(QuantityStep.Number, index) : WithUnit(text, index, run, expected, print, out quantity);
    }

    /// <summary>Whether a character may stand between a number and its unit.</summary>
    internal static bool IsSpace(char character) => character is ' ' or '\u00A0' or '\u2009' or '\u202F';

    private static QuantityFailure WithUnit(
        ReadOnlySpan<char> text,
        int numberEnd,
        DigitRun run,
        Dimension expected,
        UnitPrint print,
        out Quantity quantity
    )
    {
        quantity = default;
        var index = AfterSpaces(text, numberEnd);
        var unit = text[index..];
        if (unit.IsEmpty && numberEnd == text.Length && expected is Dimension.Number or Dimension.Ratio)
            return Finish(text, run, 1, 0, expected, out quantity);
        if (UnitLookup.IsTwoFacedFarad(expected, unit))
        {
            return print is UnitPrint.Unstated
                ? new QuantityFailure(QuantityStep.TwoFacedFarad, numberEnd, index)
                : Finish(
                    text,
                    run,
                    1,
                    print is UnitPrint.Old ? -6
                        : unit[0] == 'm' ? -3
                        : 6,
                    expected,
                    out quantity
                );
        }

        return !unit.IsEmpty && UnitLookup.TryFind(expected, unit, out var power, out var multiplier)
            ? Finish(text, run, multiplier, power, expected, out quantity)
            : new QuantityFailure(QuantityStep.Unit, numberEnd, index);
    }

    private static QuantityFailure AfterCode(
        ReadOnlySpan<char> text,
        int codeEnd,
        DigitRun run,
        int power,
        Dimension expected,
        out Quantity quantity
    )
    {
        quantity = default;
        var index = AfterSpaces(text, codeEnd);
        var plain =
            index == text.Length
                ? codeEnd == index
                : UnitLookup.TryFind(expected, text[index..], out var unitPower, out var multiplier) && unitPower == 0 && multiplier == 1;
        return plain ? Finish(text, run, 1, power, expected, out quantity) : new QuantityFailure(QuantityStep.AfterCode, codeEnd, index);
    }

    private static int AfterSpaces(ReadOnlySpan<char> text, int index)
    {
        while (index < text.Length && IsSpace(text[index]))
            index++;
        return index;
    }

    private static QuantityFailure Finish(
        ReadOnlySpan<char> text,
        DigitRun run,
        int multiplier,
        int power,
        Dimension expected,
        out Quantity quantity
    )
    {
        quantity = default;
        if (!run.TryScale(multiplier, power, out var value))
            return new QuantityFailure(QuantityStep.NotHeld, SignificantDigits: run.Significant);
        if (text[0] == '-')
        {
            if (run.IsZero)
                return new QuantityFailure(QuantityStep.MinusZero);
            value = -value;
        }

        if (value > DimensionFacts.Most(expected) || value < DimensionFacts.Least(expected))
            return new QuantityFailure(QuantityStep.Implausible, Value: value);
        quantity = new Quantity(value, expected);
        return default;
    }
}
