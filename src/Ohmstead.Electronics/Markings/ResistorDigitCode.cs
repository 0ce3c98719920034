using System.Globalization;
using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The digit code of resistors: two or three digits and the number of zeros, in ohm.</summary>
/// <remarks>103 is 10 kΩ, 1002 is 10 kΩ of a closer tolerance, 000 is a link. Source: IEC 60062:2016, from memory.</remarks>
public static class ResistorDigitCode
{
    private static readonly Source Standard = Source.FromMemory("IEC 60062:2016", "code of three or four characters");

    /// <summary>Reads the code of a resistor: three or four digits.</summary>
    public static Parsed<Marking<MarkedValue>> Parse(ReadOnlySpan<char> text)
    {
        if (text.Length is not (3 or 4) || text.ContainsAnyExceptInRange('0', '9'))
            return Marking<MarkedValue>.Failed(
                text,
                $"'{Excerpt.From(text)}' is no digit code of a resistor, expected three or four digits such as 103 or 1002"
            );
        if (!text.ContainsAnyExcept('0'))
            return Marking<MarkedValue>.Read(
                new MarkingReading<MarkedValue>(
                    new MarkedValue(new Quantity(0m, Dimension.Resistance)),
                    "zeros alone are a link",
                    Source.CommonPractice
                )
            );
        if (text[0] == '0')
            return Marking<MarkedValue>.Failed(text, $"'{Excerpt.From(text)}' starts with 0, expected a digit from 1 to 9");

        var digits = int.Parse(text[..^1], NumberStyles.None, CultureInfo.InvariantCulture);
        var power = text[^1] - '0';
        var ohms = new Quantity(digits * DecimalMath.PowerOfTen(power), Dimension.Resistance);
        var rule = string.Create(CultureInfo.InvariantCulture, $"{digits} × 10^{power} Ω");
        return Marking<MarkedValue>.Read(new MarkingReading<MarkedValue>(new MarkedValue(ohms), rule, Standard));
    }
}
