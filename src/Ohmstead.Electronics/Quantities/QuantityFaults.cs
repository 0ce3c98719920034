using System.Globalization;

namespace Ohmstead.Electronics.Quantities;

/// <summary>Says why a text is no quantity. Only reached when something is wrong, so it may take its time to find the best words.</summary>
internal static partial class QuantityFaults
{
    internal static Parsed<Quantity> Explain(QuantityFailure failure, ReadOnlySpan<char> text, Dimension expected) =>
        failure.Step switch
        {
            QuantityStep.Empty => Fault(ParseFaultKind.Empty, 0, 0, $"nothing is written, expected {Expected(expected)}"),
            QuantityStep.TooLong => Fault(
                ParseFaultKind.OutOfRange,
                0,
                text.Length,
                string.Create(CultureInfo.InvariantCulture, $"'{Excerpt.From(text)}' has {text.Length} characters, expected 200 at most")
            ),
            QuantityStep.Number => Number(text, failure.First, expected),
            QuantityStep.AfterCode => AfterCode(text, failure.First, failure.Second, expected),
            QuantityStep.TwoFacedFarad => TwoFacedFarad(text, failure.First, failure.Second),
            QuantityStep.NotHeld when failure.SignificantDigits > 28 => Fault(
                ParseFaultKind.OutOfRange,
                0,
                text.Length,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"'{Excerpt.From(text)}' has {failure.SignificantDigits} significant digits, expected 28 at most"
                )
            ),
            QuantityStep.NotHeld => Fault(
                ParseFaultKind.OutOfRange,
                0,
                text.Length,
                $"'{Excerpt.From(text)}' is too large or too small to be held exactly as {DimensionFacts.One(expected)}"
            ),
            QuantityStep.MinusZero => Fault(
                ParseFaultKind.OutOfRange,
                0,
                text.Length,
                $"'{Excerpt.From(text)}' is zero with a minus, expected zero without a sign",
                Offer(expected, text[1..].ToString())
            ),
            QuantityStep.Implausible => Implausible(text, failure.Value, expected),
            _ => Unit(text, failure.First, failure.Second, expected),
        };

    private static Parsed<Quantity> Implausible(ReadOnlySpan<char> text, decimal value, Dimension expected)
    {
        var name = DimensionFacts.One(expected);
        var least = DimensionFacts.Least(expected);
        if (value < 0m && least == 0m)
            return Fault(ParseFaultKind.OutOfRange, 0, text.Length, $"'{Excerpt.From(text)}' is negative, and {name} is never below 0");
        var bound = QuantityText.Format(new Quantity(value < least ? least : DimensionFacts.Most(expected), expected));
        return Fault(
            ParseFaultKind.OutOfRange,
            0,
            text.Length,
            $"'{Excerpt.From(text)}' is not plausible: {name} here goes {(value < least ? "down" : "up")} to {bound}"
        );
    }

    private static Parsed<Quantity> TwoFacedFarad(ReadOnlySpan<char> text, int numberEnd, int unitStart)
    {
        var unit = text[unitStart..].ToString();
        var other = unit[0] == 'm' ? "millifarad by SI" : "megafarad by SI, which is not plausible";
        var meanings = new List<string>();
        if (QuantityText.Read(text, Dimension.Capacitance, UnitPrint.Old, out var old).Step is QuantityStep.Done)
            meanings.Add(QuantityText.Format(old));
        if (QuantityText.Read(text, Dimension.Capacitance, UnitPrint.International, out var si).Step is QuantityStep.Done && si != old)
            meanings.Add(QuantityText.Format(si));
        return Fault(
            ParseFaultKind.Ambiguous,
            unitStart,
            2,
            $"'{unit}' is microfarad on old print and {other}",
            meanings.Count == 0 ? null : Or(meanings)
        );
    }

    /// <summary>Something other than nothing or the base unit stands behind a marking code.</summary>
    private static Parsed<Quantity> AfterCode(ReadOnlySpan<char> text, int codeEnd, int index, Dimension expected)
    {
        if (LookAlike(text, expected, out var fault))
            return fault;
        var code = text[..codeEnd].ToString();
        var rest = text[index..];
        return rest.Length == 1 && char.IsAsciiLetterUpper(rest[0])
            ? Fault(
                ParseFaultKind.NotUnderstood,
                index,
                1,
                $"'{rest}' after '{code}' is a tolerance letter, expected the {DimensionFacts.Name(expected)} alone",
                Offer(expected, code)
            )
            : Fault(
                ParseFaultKind.NotUnderstood,
                codeEnd,
                text.Length - codeEnd,
                $"'{Excerpt.From(text[codeEnd..])}' after the code '{code}' is not understood, expected nothing more"
            );
    }

    private static bool LookAlike(ReadOnlySpan<char> text, Dimension expected, out Parsed<Quantity> fault)
    {
        var any = LookAlikes.TryFindFirst(text, out var found);
        var meant = found.Meant is { Length: > 0 } ? $", expected '{found.Meant}'" : "";
        fault = any
            ? Fault(
                ParseFaultKind.LookAlike,
                found.Offset,
                found.Length,
                $"{found.Name} in '{Excerpt.From(text)}'{meant}",
                Offer(expected, LookAlikes.Plain(text))
            )
            : default;
        return any;
    }

    /// <summary>The units that fit, as the end of a message.</summary>
    private static string Expected(Dimension expected)
    {
        var usual = UnitTable.Usual(expected);
        return usual.Count == 0 ? DimensionFacts.One(expected) : $"{DimensionFacts.One(expected)} in {Or(usual)}";
    }

    /// <summary>The texts that can be read as they stand, as a choice; null when there is none. What cannot be read is never
    /// offered.</summary>
    private static string? Offer(Dimension expected, params IEnumerable<string> texts)
    {
        var good = texts.Where(text => QuantityText.Read(text, expected, UnitPrint.Unstated, out _).Step is QuantityStep.Done).ToList();
        return good.Count == 0 ? null : Or(good);
    }

    private static string Or(IReadOnlyList<string> words) =>
        words.Count == 1 ? words[0] : $"{string.Join(", ", words.Take(words.Count - 1))} or {words[^1]}";

    private static Parsed<Quantity> Fault(ParseFaultKind kind, int offset, int length, string message, string? next = null) =>
        Parsed<Quantity>.Failed(new ParseFault(kind, offset, length, message, next));
}
