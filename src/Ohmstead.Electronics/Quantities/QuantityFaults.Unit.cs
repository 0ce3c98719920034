using System.Globalization;
using Ohmstead.Electronics.Decimals;

namespace Ohmstead.Electronics.Quantities;

/// <content>Faults in what follows the number.</content>
internal static partial class QuantityFaults
{
    /// <summary>What stands behind the number is no unit of the dimension.</summary>
    private static Parsed<Quantity> Unit(ReadOnlySpan<char> text, int numberEnd, int unitStart, Dimension expected)
    {
        var number = text[..numberEnd].ToString();
        var unit = text[unitStart..];
        if (numberEnd < text.Length && text[numberEnd] == ',')
            return Comma(text, numberEnd, expected);
        if (LookAlike(text, expected, out var fault))
            return fault;
        if (unit.IsEmpty)
            return WithoutUnit(text, number, expected);
        if (char.IsWhiteSpace(text[^1]))
            return Fault(
                ParseFaultKind.NotUnderstood,
                text.TrimEnd().Length,
                1,
                $"a space after '{Excerpt.From(text.TrimEnd())}', expected nothing more",
                Offer(expected, text.TrimEnd().ToString())
            );
        if (unitStart == numberEnd && WithLetterDigits(text, expected, out fault))
            return fault;
        if (unitStart == numberEnd && NotDecimal(text, number, unit, expected, out fault))
            return fault;
        if (char.IsAsciiDigit(unit[0]))
        {
            return Fault(
                ParseFaultKind.NotUnderstood,
                numberEnd,
                unitStart - numberEnd,
                $"a space inside the number '{Excerpt.From(text)}', expected the digits together",
                Offer(expected, string.Concat(number, unit))
            );
        }

        return OtherUnit(text, unitStart, unit, number, expected);
    }

    private static Parsed<Quantity> WithoutUnit(ReadOnlySpan<char> text, string number, Dimension expected)
    {
        var usual = UnitTable.Usual(expected);
        var choices = Offer(expected, usual.Select(unit => $"{number} {unit}"));
        choices = OtherUnits.OfPrint(number, expected) is { } print
            ? $"{choices}, or {print} where {number} is the code of its print"
            : choices;
        if (number.Length == text.Length)
            return Fault(
                ParseFaultKind.UnitMissing,
                0,
                text.Length,
                $"'{Excerpt.From(text)}' has no unit, expected {Expected(expected)}",
                choices
            );
        var bare = expected is Dimension.Number or Dimension.Ratio;
        return Fault(
            ParseFaultKind.NotUnderstood,
            number.Length,
            text.Length - number.Length,
            $"a space after '{number}', expected {(bare ? "nothing more" : "a unit")}",
            bare ? Offer(expected, number) : choices
        );
    }

    private static bool NotDecimal(
        ReadOnlySpan<char> text,
        string number,
        ReadOnlySpan<char> rest,
        Dimension expected,
        out Parsed<Quantity> fault
    )
    {
        var at = number.Length;
        fault = default;
        switch (rest)
        {
            case ['x' or 'X', ..] when number is "0" or "-0":
                fault = Fault(
                    ParseFaultKind.NotUnderstood,
                    0,
                    text.Length,
                    $"'{Excerpt.From(text)}' is hexadecimal, expected a decimal number"
                );
                return true;
            case ['_' or '\'' or '\u2019', ..]:
                fault = Fault(
                    ParseFaultKind.NotUnderstood,
                    at,
                    1,
                    $"a separator '{rest[0]}' in '{Excerpt.From(text)}', expected the digits together",
                    Offer(expected, string.Concat(number, rest[1..]))
                );
                return true;
            case ['.', ..]:
                fault = Fault(ParseFaultKind.NotUnderstood, at, 1, $"a second point in '{Excerpt.From(text)}', expected one at most");
                return true;
            case ['E', >= '0' and <= '9', ..] when expected is Dimension.Resistance:
                fault = Fault(
                    ParseFaultKind.Ambiguous,
                    at,
                    1,
                    $"'{Excerpt.From(text)}' is a decimal point at E on old Continental print and a power of ten elsewhere",
                    Offer(expected, $"{number}R{rest[1..]}")
                );
                return true;
            case ['e' or 'E', >= '0' and <= '9', ..] or ['e' or 'E', '+' or '-', >= '0' and <= '9', ..]:
                fault = Exponent(text, at, rest[1..], expected);
                return true;
            default:
                return false;
        }
    }

    private static Parsed<Quantity> Exponent(ReadOnlySpan<char> text, int at, ReadOnlySpan<char> exponent, Dimension expected)
    {
        var end = 1;
        while (end < exponent.Length && char.IsAsciiDigit(exponent[end]))
            end++;
        var inRange =
            int.TryParse(exponent[..end], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var power)
            && power is >= -28 and <= 28;
        return inRange
            ? Fault(
                ParseFaultKind.NotUnderstood,
                at,
                end + 1,
                $"a power of ten in '{Excerpt.From(text)}', expected the digits in full or a unit with a prefix",
                WithoutExponent(text[..at], power, exponent[end..], expected)
            )
            : Fault(
                ParseFaultKind.OutOfRange,
                at,
                end + 1,
                $"the power of ten in '{Excerpt.From(text)}' is out of range, expected the digits in full or a unit with a prefix"
            );
    }

    /// <summary>The same value with a prefix that fits, or null where it cannot be held.</summary>
    private static string? WithoutExponent(ReadOnlySpan<char> number, int power, ReadOnlySpan<char> unit, Dimension expected) =>
        decimal.TryParse(
            number,
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out var value
        )
        && QuantityText.Read(string.Concat("1", unit), expected, UnitPrint.Unstated, out var one).Step is QuantityStep.Done
        && DecimalMath.TryShift(value * one.Value, power, out value)
            ? Offer(expected, QuantityText.Format(new Quantity(value, expected)))
            : null;

    private static Parsed<Quantity> OtherUnit(
        ReadOnlySpan<char> text,
        int unitStart,
        ReadOnlySpan<char> unit,
        string number,
        Dimension expected
    )
    {
        var digitsAfter = unit.Length > 1 && !unit[1..].ContainsAnyExceptInRange('0', '9');
        if (expected is Dimension.Resistance && unit[0] == 'm' && (unit.Length == 1 || digitsAfter))
        {
            var full = digitsAfter ? $"{number}.{unit[1..]}" : number;
            return Fault(
                ParseFaultKind.Ambiguous,
                unitStart,
                1,
                $"'m' in '{Excerpt.From(text)}' can be milli or a small M for mega",
                Offer(expected, $"{full} mΩ", $"{full} MΩ")
            );
        }

        if (expected is Dimension.Capacitance && unit is ['M'])
            return Fault(
                ParseFaultKind.Ambiguous,
                unitStart,
                1,
                $"'M' in '{Excerpt.From(text)}' is microfarad on old print and a tolerance of 20 % elsewhere",
                Offer(expected, $"{number} µF")
            );
        if (expected is Dimension.Temperature && unit is ['F' or 'K'] or "°F" or "degF")
            return Fault(
                ParseFaultKind.UnitUnknown,
                unitStart,
                unit.Length,
                $"unit '{unit}' is not taken for a temperature, expected °C",
                OtherUnits.InDegrees(number, unit) is { } degrees ? Offer(expected, degrees) : null
            );
        if (OtherUnits.Meant(number, unit, expected) is { } meant && Offer(expected, meant) is { } offered)
            return Fault(
                ParseFaultKind.UnitUnknown,
                unitStart,
                unit.Length,
                $"unit '{Excerpt.From(unit)}' is not known, expected {Expected(expected)}",
                offered
            );
        if (expected is Dimension.Duration && unit is ['m'])
            return Fault(
                ParseFaultKind.Ambiguous,
                unitStart,
                1,
                $"'m' in '{Excerpt.From(text)}' can be minutes or months",
                Offer(expected, $"{number} min", $"{number} months")
            );
        if (UnitLookup.OtherDimension(expected, unit) is { } other)
            return Wrong(text, unitStart, unit.Length, other, expected);
        if (digitsAfter && UnitLookup.OtherCode(expected, unit[0]) is { } code)
            return Wrong(text, 0, text.Length, code, expected, expected is Dimension.Capacitance ? Farads(number, unit) : null);
        if (unit is ['-', >= '0' and <= '9', ..])
            return Range(text, number, unit[1..].ToString(), expected);

        if (unit is ['/', >= '1' and <= '9', ..])
            return Fraction(text, number, unit[1..], expected);

        var cut = unit.IndexOfAny(" ,;\u00A0");
        var joined = cut > 0 ? Offer(expected, $"{number} {unit.ToString().Replace(" ", "", StringComparison.Ordinal)}") : null;
        if (joined is not null && !OtherUnits.IsOfNoWeight(unit[cut..], unit[..cut]))
            return Fault(
                ParseFaultKind.NotUnderstood,
                unitStart + cut,
                unit.Length - cut,
                $"a space inside the unit of '{Excerpt.From(text)}', expected its letters together",
                joined
            );
        return cut > 0 && UnitLookup.TryFind(expected, unit[..cut], out _, out _)
            ? Fault(
                ParseFaultKind.NotUnderstood,
                unitStart + cut,
                unit.Length - cut,
                $"'{Excerpt.From(unit[cut..])}' after '{Excerpt.From(text[..(unitStart + cut)])}' is not understood, expected nothing more",
                OtherUnits.IsOfNoWeight(unit[cut..], unit[..cut]) ? Offer(expected, text[..(unitStart + cut)].ToString()) : null
            )
            : Unknown(unitStart, unit, number, expected);
    }

    // The code of a resistor on a capacitor: 2k2 is two thousand two hundred of what is printed there, 2R2 is 2.2 of it.
    private static string? Farads(string number, ReadOnlySpan<char> code) =>
        code[0] is 'R' ? Offer(Dimension.Capacitance, $"{number}.{code[1..]} pF", $"{number}.{code[1..]} nF", $"{number}.{code[1..]} µF")
        : code[0] is 'k' or 'K' && code.Length <= 4
            ? Offer(
                Dimension.Capacitance,
                $"{number}{code[1..].ToString().PadRight(3, '0')} pF",
                $"{number}{code[1..].ToString().PadRight(3, '0')} µF"
            )
        : null;

    private static Parsed<Quantity> Unknown(int unitStart, ReadOnlySpan<char> unit, string number, Dimension expected)
    {
        var found = Excerpt.From(unit);
        var nearest = UnitLookup.Nearest(expected, found);
        return nearest is null
            ? Fault(ParseFaultKind.UnitUnknown, unitStart, unit.Length, $"unit '{found}' is not known, expected {Expected(expected)}")
            : Fault(
                ParseFaultKind.UnitUnknown,
                unitStart,
                unit.Length,
                $"unit '{found}' is not known, nearest is {nearest}",
                Offer(expected, $"{number} {nearest}")
            );
    }

    /// <summary>A fraction, with the decimal that it is where that ends.</summary>
    private static Parsed<Quantity> Fraction(ReadOnlySpan<char> text, string number, ReadOnlySpan<char> rest, Dimension expected)
    {
        var end = rest.IndexOfAnyExceptInRange('0', '9') is >= 0 and var at ? at : rest.Length;
        var isWhole =
            int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var above)
            & int.TryParse(rest[..end], NumberStyles.None, CultureInfo.InvariantCulture, out var below);
        var value = isWhole && below > 0 ? (decimal)above / below : 0m;
        var ends = value > 0m && decimal.Round(value, 6) == value && value * below == above;
        return Fault(
            ParseFaultKind.NotUnderstood,
            0,
            text.Length,
            $"'{Excerpt.From(text)}' is a fraction, expected {Expected(expected)}",
            ends ? Offer(expected, string.Create(CultureInfo.InvariantCulture, $"{value:0.######} {rest[end..].Trim()}")) : null
        );
    }

    /// <summary>A range written in place of one value.</summary>
    private static Parsed<Quantity> Range(ReadOnlySpan<char> text, string first, string second, Dimension expected)
    {
        var unit = second.AsSpan().IndexOfAnyExcept(OtherUnits.OfNumbers) is >= 0 and var end ? second[end..] : "";
        return Fault(
            ParseFaultKind.Ambiguous,
            0,
            text.Length,
            $"'{Excerpt.From(text)}' is a range, expected one value",
            Offer(expected, first + unit, second)
        );
    }

    private static Parsed<Quantity> Wrong(
        ReadOnlySpan<char> text,
        int offset,
        int length,
        Dimension given,
        Dimension expected,
        string? next = null
    ) =>
        Fault(
            ParseFaultKind.WrongDimension,
            offset,
            length,
            $"'{Excerpt.From(text)}': {DimensionFacts.Name(given)} given, {DimensionFacts.Name(expected)} expected",
            next
        );
}
