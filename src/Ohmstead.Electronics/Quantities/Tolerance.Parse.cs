namespace Ohmstead.Electronics.Quantities;

/// <content>Reading.</content>
public readonly partial record struct Tolerance
{
    private const string Examples = "±20 %, -10/+50 % or a value with its unit";

    /// <summary>Reads a tolerance: 20 %, ±20 %, +-20 %, +/-20 %, -10/+50 %, 0/+100 %, ±0.5 pF, or one letter of IEC 60062.</summary>
    /// <remarks>The sign before a side says which side it is, so -0/+100 % is taken too. A letter with more than one meaning in use is a
    /// fault that names them.</remarks>
    /// <param name="text">The text.</param>
    /// <param name="dimension">The dimension of the value that the tolerance belongs to.</param>
    /// <param name="nominal">The value, when known: the letters B, C, D, F and G need it on a capacitor.</param>
    public static Parsed<Tolerance> Parse(ReadOnlySpan<char> text, Dimension dimension, Quantity? nominal = null)
    {
        if (text.IsEmpty)
            return Parsed<Tolerance>.Failed(
                new ParseFault(ParseFaultKind.Empty, 0, 0, "nothing is written where a tolerance is expected", null)
            );
        var read =
            text.Length == 1 && char.IsAsciiLetter(text[0]) ? ToleranceLetters.Read(text[0], dimension, nominal)
            : text.Length > 100
                ? Failed(
                    text,
                    ParseFaultKind.OutOfRange,
                    $"'{Excerpt.From(text)}' is too long for a tolerance, expected 100 characters at most"
                )
            : ParseSides(text, dimension);
        if (!read.Is(out var tolerance, out _))
            return LookAlikes.TryFindFirst(text, out var found) ? LookAlike(text, found.Offset, found.Length, found.Name, dimension) : read;
        if (tolerance.IsRelative && tolerance.Lower < -1m)
            return Failed(
                text,
                ParseFaultKind.OutOfRange,
                $"'{Excerpt.From(text)}' allows less than nothing, expected at most 100 % below"
            );
        return tolerance.IsRelative && nominal is { Value: 0m }
            ? Failed(
                text,
                ParseFaultKind.OutOfRange,
                $"'{Excerpt.From(text)}' of a nominal value of 0 has no meaning, expected a tolerance with a unit"
            )
            : read;
    }

    private static Parsed<Tolerance> ParseSides(ReadOnlySpan<char> text, Dimension dimension)
    {
        var both =
            text.StartsWith("+/-") || text.StartsWith("-/+") ? 3
            : text.StartsWith("+-") || text.StartsWith("-+") ? 2
            : text[0] == '±' ? 1
            : 0;
        var slash = both == 0 ? text.IndexOf('/') : -1;
        if (slash >= 0)
            return ParseTwoSides(text, slash, dimension);

        while (both > 0 && both < text.Length && QuantityText.IsSpace(text[both]))
            both++;
        if (both == 0 && text[0] is '-' or '+')
            return OneSided(text, dimension);
        if (Side(text[both..], dimension, out var width, out var relative) is { } fault)
            return Failed(InWords(Placed(fault, both, text), Meant(text[both..])));
        return Parsed<Tolerance>.From(new Tolerance(-width, width, relative ? null : dimension));
    }

    // A number alone is a percentage nearly always, and so it is in words.
    private static string? Meant(ReadOnlySpan<char> width)
    {
        var end = width.IndexOfAnyExcept(OtherUnits.OfNumbers) is >= 0 and var at ? at : width.Length;
        var rest = width[end..].Trim();
        return end > 0 && (rest.IsEmpty || OtherUnits.Meant("1", rest, Dimension.Ratio) is not null) ? $"±{width[..end]} %" : null;
    }

    private static ParseFault InWords(ParseFault fault, string? meant) =>
        meant is not null && fault.Kind == ParseFaultKind.WrongDimension
            ? fault with
            {
                Message = "a percentage is written with %, not in words",
                NextStep = meant,
            }
            : fault with
            {
                NextStep = meant,
            };

    // +50%-10% has both sides and nothing between them.
    private static Parsed<Tolerance> OneSided(ReadOnlySpan<char> text, Dimension dimension)
    {
        var second = text[1..].IndexOfAny('-', '+') + 1;
        if (second == 0)
            return Failed(
                text,
                ParseFaultKind.NotUnderstood,
                $"'{Excerpt.From(text)}' has one side only, expected both, such as {Examples}"
            );
        var joined = $"{text[..second].Trim()}/{text[second..].Trim()}";
        var isRead = ParseTwoSides(joined, joined.IndexOf('/', StringComparison.Ordinal), dimension).Fault is null;
        return Failed(
            new ParseFault(
                ParseFaultKind.NotUnderstood,
                0,
                text.Length,
                $"'{Excerpt.From(text)}' has no / between its two sides, expected one",
                isRead ? joined : null
            )
        );
    }

    private static Parsed<Tolerance> ParseTwoSides(ReadOnlySpan<char> text, int slash, Dimension dimension)
    {
        var left = text[..slash].TrimEnd();
        var right = text[(slash + 1)..].TrimStart();
        if (left.IsEmpty || right.IsEmpty)
            return Failed(
                text,
                ParseFaultKind.NotUnderstood,
                $"'{Excerpt.From(text)}' has one side only, expected both, such as {Examples}"
            );
        var (leftSign, rightSign) = (Sign(left), Sign(right));
        var leftStart = leftSign == 0 ? 0 : 1;
        var rightStart = text.Length - right.Length + (rightSign == 0 ? 0 : 1);

        // -10/+50 % writes its unit once: the left side borrows it.
        ReadOnlySpan<char> whole = char.IsAsciiDigit(left[^1]) ? string.Concat(left, text[UnitStart(text)..]) : left;
        if (Side(whole[leftStart..], dimension, out var first, out var leftRelative) is { } leftFault)
            return Failed(Placed(leftFault, leftStart, text));
        if (Side(text[rightStart..], dimension, out var second, out var rightRelative) is { } rightFault)
            return Failed(Placed(rightFault, rightStart, text));
        if (leftRelative != rightRelative || leftSign * rightSign > 0 || (leftSign == 0 && first != 0m) || (rightSign == 0 && second != 0m))
            return Failed(
                text,
                ParseFaultKind.NotUnderstood,
                $"'{Excerpt.From(text)}' has no lower and upper side, expected one with - and one with +"
            );

        var (lower, upper) = leftSign < 0 || rightSign > 0 ? (-first, second) : (-second, first);
        return Parsed<Tolerance>.From(new Tolerance(lower, upper, leftRelative ? null : dimension));
    }

    private static int Sign(ReadOnlySpan<char> side) =>
        side[0] switch
        {
            '-' => -1,
            '+' => 1,
            _ => 0,
        };

    /// <summary>Where the unit at the end of the text begins, counted back over everything that is no digit.</summary>
    private static int UnitStart(ReadOnlySpan<char> text)
    {
        var start = text.Length;
        while (start > 0 && !char.IsAsciiDigit(text[start - 1]))
            start--;
        return start;
    }

    /// <summary>One side without its sign: a percentage (or ppm) or a quantity of the dimension. The fault's place is in the
    /// side.</summary>
    private static ParseFault? Side(ReadOnlySpan<char> side, Dimension dimension, out decimal width, out bool relative)
    {
        relative = side.EndsWith("%") || side.EndsWith("ppm") || dimension is Dimension.Ratio or Dimension.Number;
        width = 0m;
        if (side is [] or ['-' or '+', ..])
            return new ParseFault(
                ParseFaultKind.NotUnderstood,
                0,
                side.Length,
                $"no number where a tolerance is expected, such as {Examples}",
                null
            );
        if (char.IsAsciiDigit(side[^1]) && QuantityText.Read(side, Dimension.Number, UnitPrint.Unstated, out _).Step is QuantityStep.Done)
            return new ParseFault(
                ParseFaultKind.UnitMissing,
                0,
                side.Length,
                $"'{Excerpt.From(side)}' has no unit, expected % or the unit of the value",
                null
            );
        if (QuantityText.Parse(side, relative ? Dimension.Ratio : dimension).Is(out var quantity, out var fault))
        {
            width = quantity.Value;
            return null;
        }

        return fault.Kind switch
        {
            ParseFaultKind.UnitUnknown => fault with
            {
                Message = $"unit of '{Excerpt.From(side)}' is not known, expected % or the unit of the value",
            },
            ParseFaultKind.NotUnderstood => fault with { Message = $"'{Excerpt.From(side)}' is no tolerance, expected {Examples}" },
            _ => fault,
        };
    }

    /// <summary>The fault of a side as one of the whole text. What to write instead was said of the side alone, so it is left
    /// out.</summary>
    private static ParseFault Placed(ParseFault fault, int start, ReadOnlySpan<char> text)
    {
        var offset = Math.Min(fault.Offset + start, text.Length - 1);
        return fault with { Offset = offset, Length = Math.Clamp(fault.Length, 1, text.Length - offset), NextStep = null };
    }

    private static Parsed<Tolerance> LookAlike(ReadOnlySpan<char> text, int offset, int length, string name, Dimension dimension)
    {
        var plain = LookAlikes.Plain(text);
        var good =
            plain.Length > 0
            && (plain.Length > 1 ? ParseSides(plain, dimension) : ToleranceLetters.Read(plain[0], dimension)).Fault is null;
        return Failed(new ParseFault(ParseFaultKind.LookAlike, offset, length, $"{name} in '{Excerpt.From(text)}'", good ? plain : null));
    }

    private static Parsed<Tolerance> Failed(ReadOnlySpan<char> text, ParseFaultKind kind, string message) =>
        Failed(new ParseFault(kind, 0, text.Length, message, null));

    private static Parsed<Tolerance> Failed(ParseFault fault) => Parsed<Tolerance>.Failed(fault);
}
