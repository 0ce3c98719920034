using System.Globalization;
using System.Text;

namespace Ohmstead.Electronics.Quantities;

/// <summary>Says why a text is no quantity. Only reached when something is wrong, so it may take its time to find the best words.</summary>
internal static partial class QuantityFaults
{
    internal static Parsed<Quantity> Empty(Dimension expected) =>
        Fault(ParseFaultKind.Empty, 0, 0, $"nothing is written where a {Expected(expected)} is expected");

    internal static Parsed<Quantity> TooLong(ReadOnlySpan<char> text, int most) =>
        Fault(ParseFaultKind.OutOfRange, 0, text.Length, string.Create(CultureInfo.InvariantCulture, $"'{Excerpt.Of(text)}' has {text.Length} characters, expected {most} at most"));

    internal static Parsed<Quantity> MinusZero(ReadOnlySpan<char> text) =>
        Fault(ParseFaultKind.OutOfRange, 0, text.Length, $"'{Excerpt.Of(text)}' is zero with a minus, expected zero without a sign", text[1..].ToString());

    internal static Parsed<Quantity> NotHeld(ReadOnlySpan<char> text, DigitRun run, Dimension expected) =>
        run.IsTooExact
            ? Fault(ParseFaultKind.OutOfRange, 0, text.Length, string.Create(CultureInfo.InvariantCulture, $"'{Excerpt.Of(text)}' has {run.Significant} significant digits, expected 28 at most"))
            : Fault(ParseFaultKind.OutOfRange, 0, text.Length, $"'{Excerpt.Of(text)}' is too large or too small to be held exactly as a {DimensionFacts.Name(expected)}");

    internal static Parsed<Quantity> Implausible(ReadOnlySpan<char> text, decimal value, Dimension expected)
    {
        var name = DimensionFacts.Name(expected);
        var least = DimensionFacts.Least(expected);
        if (value < 0m && least == 0m)
            return Fault(ParseFaultKind.OutOfRange, 0, text.Length, $"'{Excerpt.Of(text)}' is negative, and a {name} is never below 0", text[1..].ToString());
        var bound = QuantityText.Format(new Quantity(value < least ? least : DimensionFacts.Most(expected), expected));
        return Fault(ParseFaultKind.OutOfRange, 0, text.Length, $"'{Excerpt.Of(text)}' is not plausible: a {name} here goes {(value < least ? "down" : "up")} to {bound}");
    }

    internal static Parsed<Quantity> TwoFacedFarad(ReadOnlySpan<char> text, int unitStart, int numberEnd)
    {
        var number = text[..numberEnd].ToString();
        var unit = text[unitStart..].ToString();
        var other = unit[0] == 'm' ? "millifarad by SI" : "megafarad by SI, which is not plausible";
        return Fault(ParseFaultKind.Ambiguous, unitStart, 2, $"'{unit}' is microfarad on old print and {other}", unit[0] == 'm' ? $"{number} µF or {number}000 µF" : $"{number} µF");
    }

    /// <summary>Something other than nothing or the base unit stands behind a marking code.</summary>
    internal static Parsed<Quantity> AfterCode(ReadOnlySpan<char> text, int codeEnd, int index, Dimension expected)
    {
        if (LookAlike(text, out var fault)) return fault;
        var code = text[..codeEnd].ToString();
        var rest = text[index..];
        return rest.Length == 1 && char.IsAsciiLetterUpper(rest[0])
            ? Fault(ParseFaultKind.NotUnderstood, index, 1, $"'{rest}' after '{code}' is a tolerance letter, expected the {DimensionFacts.Name(expected)} alone", code)
            : Fault(ParseFaultKind.NotUnderstood, codeEnd, text.Length - codeEnd, $"'{Excerpt.Of(text[codeEnd..])}' after the code '{code}' is not understood, expected nothing more", code);
    }

    /// <summary>The units that fit, as the end of a message.</summary>
    private static string Expected(Dimension expected)
    {
        var usual = UnitTable.Usual(expected);
        return usual.Count == 0 ? DimensionFacts.Name(expected) : $"{DimensionFacts.Name(expected)} in {Or(usual)}";
    }

    private static string Or(IReadOnlyList<string> words) =>
        words.Count == 1 ? words[0] : $"{string.Join(", ", words.Take(words.Count - 1))} or {words[^1]}";

    private static bool LookAlike(ReadOnlySpan<char> text, out Parsed<Quantity> fault)
    {
        var place = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            if (LookAlikes.TryFind(rune, out var meant, out var name))
            {
                var found = meant.Length == 0 ? "" : $", expected '{meant}'";
                fault = Fault(ParseFaultKind.LookAlike, place, rune.Utf16SequenceLength, $"{name} {Excerpt.CodePoint(rune)} in '{Excerpt.Of(text)}'{found}", Plain(text));
                return true;
            }

            place += rune.Utf16SequenceLength;
        }

        fault = default;
        return false;
    }

    /// <summary>The text with every look-alike replaced by what it looks like.</summary>
    private static string Plain(ReadOnlySpan<char> text)
    {
        var plain = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
            plain.Append(LookAlikes.TryFind(rune, out var meant, out _) ? meant : rune.ToString());
        return plain.ToString();
    }

    private static Parsed<Quantity> Fault(ParseFaultKind kind, int offset, int length, string message, string? next = null) =>
        Parsed<Quantity>.Failed(new ParseFault(kind, offset, length, message, next));
}
