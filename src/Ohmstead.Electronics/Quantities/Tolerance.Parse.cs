using Ohmstead.Electronics.Markings;

namespace Ohmstead.Electronics.Quantities;

/// <content>Reading.</content>
public readonly partial record struct Tolerance
{
    /// <summary>Reads a tolerance: 20 %, ±20 %, +-20 %, +/-20 %, -10/+50 %, 0/+100 %, ±0.5 pF, or one letter of IEC 60062.</summary>
    /// <remarks>The sign before a side says which side it is, so -0/+100 % is taken too. A letter with more than one meaning in use is a fault that names them.</remarks>
    /// <param name="text">The text.</param>
    /// <param name="dimension">The dimension of the value that the tolerance belongs to.</param>
    /// <param name="nominal">The value, when known: the letters B, C, D, F and G need it on a capacitor.</param>
    public static Parsed<Tolerance> Parse(ReadOnlySpan<char> text, Dimension dimension, Quantity? nominal = null)
    {
        if (text.IsEmpty) return Failed(ParseFaultKind.Empty, 0, 0, "nothing is written where a tolerance is expected", "±20 %");
        var read = text.Length == 1 && char.IsAsciiLetter(text[0]) ? ToleranceLetters.Read(text[0], dimension, nominal) : ParseSides(text, dimension);
        if (!read.Is(out var tolerance, out _)) return read;
        if (tolerance.IsRelative && tolerance.Lower < -1m)
            return Failed(ParseFaultKind.OutOfRange, 0, text.Length, $"'{Excerpt.Of(text)}' allows less than nothing, expected at most 100 % below", null);
        return tolerance.IsRelative && nominal is { Value: 0m }
            ? Failed(ParseFaultKind.OutOfRange, 0, text.Length, $"'{Excerpt.Of(text)}' of a nominal value of 0 has no meaning, expected a tolerance with a unit", null)
            : read;
    }

    private static Parsed<Tolerance> ParseSides(ReadOnlySpan<char> text, Dimension dimension)
    {
        var both = text.StartsWith("+/-") || text.StartsWith("-/+") ? 3 : text.StartsWith("+-") || text.StartsWith("-+") ? 2 : text[0] == '±' ? 1 : 0;
        var slash = both == 0 ? text.IndexOf('/') : -1;
        if (slash < 0)
        {
            while (both > 0 && both < text.Length && QuantityText.IsSpace(text[both])) both++;
            if (both == 0 && text[0] is '-' or '+')
                return Failed(ParseFaultKind.NotUnderstood, 0, text.Length, $"'{Excerpt.Of(text)}' has one side only, expected both", $"±{text[1..]} or {(text[0] == '-' ? $"{text}/+" : "-")}…");
            return Side(text, both, text.Length, dimension, out var width, out var relative) is { } fault
                ? Parsed<Tolerance>.Failed(fault)
                : Parsed<Tolerance>.Of(new Tolerance(-width, width, relative ? null : dimension));
        }

        return ParseTwoSides(text, slash, dimension);
    }

    private static Parsed<Tolerance> ParseTwoSides(ReadOnlySpan<char> text, int slash, Dimension dimension)
    {
        var unit = UnitStart(text);
        var leftEnd = slash;
        while (leftEnd > 0 && QuantityText.IsSpace(text[leftEnd - 1])) leftEnd--;
        var rightStart = slash + 1;
        while (rightStart < text.Length && QuantityText.IsSpace(text[rightStart])) rightStart++;
        if (leftEnd == 0 || rightStart == text.Length)
            return Failed(ParseFaultKind.NotUnderstood, 0, text.Length, $"'{Excerpt.Of(text)}' has one side only, expected both", "-10/+50 %");
        var leftSign = Sign(text, 0);
        var rightSign = Sign(text, rightStart);

        // -10/+50 % writes its unit once: the left side borrows it.
        ReadOnlySpan<char> left = UnitStart(text[..leftEnd]) == leftEnd ? string.Concat(text[..leftEnd], text[unit..]) : text[..leftEnd];
        if (Side(left, leftSign == 0 ? 0 : 1, left.Length, dimension, out var first, out var leftRelative) is { } leftFault)
            return Parsed<Tolerance>.Failed(leftFault with { Length = Math.Max(1, Math.Min(leftFault.Length, text.Length - leftFault.Offset)) });
        if (Side(text, rightSign == 0 ? rightStart : rightStart + 1, text.Length, dimension, out var second, out var rightRelative) is { } rightFault)
            return Parsed<Tolerance>.Failed(rightFault);
        if (leftRelative != rightRelative || leftSign * rightSign > 0 || (leftSign == 0 && first != 0m) || (rightSign == 0 && second != 0m))
            return Failed(ParseFaultKind.NotUnderstood, 0, text.Length, $"'{Excerpt.Of(text)}' has no lower and upper side, expected one with - and one with +", "-10/+50 %");

        var (lower, upper) = leftSign < 0 || rightSign > 0 ? (-first, second) : (-second, first);
        return Parsed<Tolerance>.Of(new Tolerance(lower, upper, leftRelative ? null : dimension));
    }

    private static int Sign(ReadOnlySpan<char> text, int index) => text[index] switch { '-' => -1, '+' => 1, _ => 0 };

    /// <summary>Where the unit at the end of the text begins, counted back over everything that is no digit.</summary>
    private static int UnitStart(ReadOnlySpan<char> text)
    {
        var start = text.Length;
        while (start > 0 && !char.IsAsciiDigit(text[start - 1])) start--;
        return start;
    }

    /// <summary>One side without its sign: a percentage (or ppm) or a quantity of the dimension.</summary>
    private static ParseFault? Side(ReadOnlySpan<char> text, int start, int end, Dimension dimension, out decimal width, out bool relative)
    {
        var side = text[start..end];
        relative = side.EndsWith("%") || side.EndsWith("ppm") || dimension is Dimension.Ratio or Dimension.Number;
        width = 0m;
        if (side is ['-' or '+', ..] or [])
            return new ParseFault(ParseFaultKind.NotUnderstood, Math.Min(start, text.Length), side.Length, $"'{Excerpt.Of(text)}' has no number after its sign, expected one such as 20 %", null);
        if (char.IsAsciiDigit(side[^1]))
            return new ParseFault(ParseFaultKind.UnitMissing, start, side.Length, $"'{Excerpt.Of(text)}' has no unit, expected a tolerance in % or in the unit of the value", $"{text} %");
        if (!QuantityText.Parse(side, relative ? Dimension.Ratio : dimension).Is(out var quantity, out var fault))
            return fault with { Offset = fault.Offset + start };
        width = quantity.Value;
        return null;
    }

    private static Parsed<Tolerance> Failed(ParseFaultKind kind, int offset, int length, string message, string? next) =>
        Parsed<Tolerance>.Failed(new ParseFault(kind, offset, length, message, next));
}
