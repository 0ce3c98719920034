using System.Collections.Immutable;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The print on a capacitor taken apart: numbers, unit, voltage, polarity; not yet what they mean.</summary>
internal readonly record struct PrintScan(
    ImmutableArray<decimal> Numbers,
    char Separator,
    string Unit,
    Quantity? Volts,
    bool IsBipolar,
    string? Fault
)
{
    private const int Longest = 60;

    internal static PrintScan Scan(ReadOnlySpan<char> text)
    {
        if (text.Length > Longest)
            return Broken($"'{Excerpt.From(text)}' is too long for the print on a capacitor, expected 60 characters at most");
        var rest = text;
        var bipolar = TakeBipolar(ref rest);
        var numbers = ImmutableArray.CreateBuilder<decimal>();
        var separator = '\0';
        while (TakeNumber(ref rest, out var number))
        {
            if (number == 0m)
                return Broken($"'{Excerpt.From(text)}' has a value of 0, expected a capacitance above 0");
            numbers.Add(number);
            if (rest.IsEmpty || rest[0] is not ('+' or '-' or '/'))
                break;
            if (separator != '\0' && separator != rest[0])
                return Broken($"'{Excerpt.From(text)}' has two kinds of separator, expected one");
            separator = rest[0];
            rest = rest[1..];
        }

        if (numbers.Count == 0 || (separator != '\0' && numbers.Count == 1))
            return Broken($"'{Excerpt.From(text)}' is no print of a capacitor, expected such as 8 mfd, 8+8 mfd 450 V or .047");
        rest = rest.TrimStart();
        var end = 0;
        while (end < rest.Length && !char.IsAsciiDigit(rest[end]) && !char.IsWhiteSpace(rest[end]))
            end++;
        var unit = rest[..end];
        // 2200u16 is a value and a voltage; the figure behind the unit of 4n7 is a part of the value.
        if (end > 0 && rest.Length == end + 1 && char.IsAsciiDigit(rest[end]))
            return Broken($"'{Excerpt.From(text)}' has one figure after its unit, expected a rated voltage of two or more");
        rest = rest[end..].TrimStart();
        if (rest.IsEmpty)
            return new PrintScan(numbers.ToImmutable(), separator, unit.ToString(), null, bipolar, null);
        if (unit.IsEmpty && numbers.Count == 1 && VoltageCode.Parse(rest).Is(out var coded, out _))
            return new PrintScan(numbers.ToImmutable(), separator, "", coded, bipolar, null);
        if (!TakeNumber(ref rest, out var volts) || volts is <= 0m or > 1_000_000m)
            return Broken($"'{Excerpt.From(rest)}' in '{Excerpt.From(text)}' is no rated voltage, expected such as 450 V");

        var word = rest.Trim();
        if (System.Text.Ascii.EqualsIgnoreCase(word, "SV"))
            return Broken($"'{Excerpt.From(text)}' gives a surge voltage, expected the rated voltage");
        return IsVoltageWord(word)
            ? new PrintScan(numbers.ToImmutable(), separator, unit.ToString(), new Quantity(volts, Dimension.Voltage), bipolar, null)
            : Broken($"'{Excerpt.From(word)}' in '{Excerpt.From(text)}' is not understood, expected V, VDC, WV, WVDC or VDCW");
    }

    private static PrintScan Broken(string fault) => new([], '\0', "", null, false, fault);

    private static bool TakeBipolar(ref ReadOnlySpan<char> text)
    {
        foreach (var word in (ReadOnlySpan<string>)[" BP", " NP", " 0+0", " bip", " bipolar"])
        {
            if (!text.EndsWith(word, StringComparison.OrdinalIgnoreCase))
                continue;
            text = text[..^word.Length].TrimEnd();
            return true;
        }

        return false;
    }

    private static bool TakeNumber(ref ReadOnlySpan<char> text, out decimal number)
    {
        var end = 0;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] == '.'))
            end++;
        var read = QuantityText.Parse(text[..end], Dimension.Number).Is(out var value, out _);
        number = value.Value;
        if (read)
            text = text[end..];
        return read;
    }

    private static bool IsVoltageWord(ReadOnlySpan<char> word)
    {
        foreach (var known in (ReadOnlySpan<string>)["", "V", "VDC", "V DC", "WV", "WVDC", "VDCW", "VW", "volts"])
        {
            if (System.Text.Ascii.EqualsIgnoreCase(word, known))
                return true;
        }

        return false;
    }
}
