namespace Ohmstead.Electronics.Quantities;

/// <summary>Reads what a meter showed: a quantity, one side of a quantity, or one of three words.</summary>
/// <remarks>
/// <code>
/// indication = quantity  |  sign [ spaces ] quantity  |  "over range"  |  "open"  |  "short"
/// sign       = "&gt;"  |  "&lt;"  |  "≥"  |  "≤"  |  "&gt;="  |  "&lt;="
/// </code>
/// The quantity is that of <see cref="QuantityText"/>. What meters and people write besides (OL, inf, shorted) is told with the word to
/// write.
/// </remarks>
public static class IndicationText
{
    /// <summary>Above what the meter can show.</summary>
    public const string OverRange = "over range";

    /// <summary>Nothing passes.</summary>
    public const string Open = "open";

    /// <summary>It passes as a wire does.</summary>
    public const string Short = "short";

    private const int LongestWord = 16;

    /// <summary>The signs of one-sided readings as they are written, each before those that it begins with.</summary>
    private static readonly (string Sign, IndicationKind Kind)[] Signs =
    [
        (">=", IndicationKind.AtLeast),
        ("<=", IndicationKind.AtMost),
        (">", IndicationKind.Above),
        ("<", IndicationKind.Below),
        ("≥", IndicationKind.AtLeast),
        ("≤", IndicationKind.AtMost),
    ];

    /// <summary>Reads an indication of the dimension that is expected.</summary>
    public static Parsed<Indication> Parse(ReadOnlySpan<char> text, Dimension expected)
    {
        // Nearly all readings are figures.
        if (!text.IsEmpty && (char.IsAsciiDigit(text[0]) || text[0] is '-' or '.'))
        {
            return Exactly(text, expected);
        }

        if (SignOf(text) is var (kind, length))
        {
            return Bounded(text, length, kind, expected);
        }

        return WordOf(text) is { } word ? Parsed<Indication>.From(Indication.Word(word, expected))
            : Meant(text) is { } meant
                ? Parsed<Indication>.Failed(
                    new(
                        ParseFaultKind.NotUnderstood,
                        0,
                        text.Length,
                        $"'{Excerpt.From(text)}' is no reading; the word for it is '{meant}'",
                        meant
                    )
                )
            : Exactly(text, expected);
    }

    /// <summary>The sign at the start of a text, with its length; null where none stands there.</summary>
    public static (IndicationKind Kind, int Length)? SignOf(ReadOnlySpan<char> text)
    {
        foreach (var (sign, kind) in Signs)
        {
            if (text.StartsWith(sign, StringComparison.Ordinal))
            {
                return (kind, sign.Length);
            }
        }

        return null;
    }

    /// <summary>The sign as it is written: one character, a space behind it.</summary>
    public static string Sign(IndicationKind kind) =>
        kind switch
        {
            IndicationKind.Above => "> ",
            IndicationKind.AtLeast => "≥ ",
            IndicationKind.Below => "< ",
            IndicationKind.AtMost => "≤ ",
            _ => string.Empty,
        };

    /// <summary>The word as it is written; null where it is none.</summary>
    public static IndicationKind? WordOf(ReadOnlySpan<char> text) =>
        text switch
        {
            Open => IndicationKind.Open,
            Short => IndicationKind.Short,
            OverRange => IndicationKind.OverRange,
            _ => null,
        };

    private static Parsed<Indication> Exactly(ReadOnlySpan<char> text, Dimension expected) =>
        QuantityText.Parse(text, expected).Is(out var value, out var fault)
            ? Parsed<Indication>.From(Indication.From(value))
            : Parsed<Indication>.Failed(fault);

    private static Parsed<Indication> Bounded(ReadOnlySpan<char> text, int sign, IndicationKind kind, Dimension expected)
    {
        var start = sign;
        while (start < text.Length && QuantityText.IsSpace(text[start]))
        {
            start++;
        }

        if (QuantityText.Parse(text[start..], expected).Is(out var bound, out var fault))
        {
            return Parsed<Indication>.From(Indication.OneSided(kind, bound));
        }

        // The next step is a whole value to write, and the sign belongs before it.
        var next =
            fault.NextStep is not { } step ? null
            : step.Contains(" or ", StringComparison.Ordinal) ? $"{step}, each after {Sign(kind).TrimEnd()}"
            : Sign(kind) + step;
        return Parsed<Indication>.Failed(fault with { Offset = fault.Offset + start, NextStep = next });
    }

    // What stands on displays and in notes for the three words.
    private static string? Meant(ReadOnlySpan<char> text)
    {
        if (text.Length > LongestWord)
        {
            return null;
        }

        return text.ToString().ToUpperInvariant() switch
        {
            "OPEN" or "O/C" or "OC" or "OPEN CIRCUIT" => Open,
            "SHORT" or "SHORTED" or "S/C" or "SC" or "SHORT CIRCUIT" => Short,
            "OL"
            or "O.L"
            or "O.L."
            or "0L"
            or "OVL"
            or "OVLD"
            or "OFL"
            or "OVERLOAD"
            or "OVER-RANGE"
            or "OVERRANGE"
            or "OVER RANGE"
            or "INF"
            or "INF."
            or "INFINITE"
            or "INFINITY"
            or "∞" => OverRange,
            _ => null,
        };
    }
}
