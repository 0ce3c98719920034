namespace Ohmstead.Electronics.Quantities;

/// <summary>How much an indication says about the value: the value itself, or on which side of a figure it lies, or a word of the
/// meter.</summary>
public enum IndicationKind
{
    /// <summary>The figure is the value.</summary>
    Exact,

    /// <summary>The value lies above the figure: <c>&gt; 20 MΩ</c>.</summary>
    Above,

    /// <summary>The value is the figure or lies above it: <c>≥ 20 MΩ</c>.</summary>
    AtLeast,

    /// <summary>The value lies below the figure: <c>&lt; 0.1 Ω</c>.</summary>
    Below,

    /// <summary>The value is the figure or lies below it: <c>≤ 0.1 Ω</c>.</summary>
    AtMost,

    /// <summary>Above what the meter can show, and no figure is known.</summary>
    OverRange,

    /// <summary>Nothing passes.</summary>
    Open,

    /// <summary>It passes as a wire does.</summary>
    Short,
}

/// <summary>
/// What a measuring instrument showed (an indication, JCGM 200:2012, 4.1, from memory): a figure, the side of a figure on which the value
/// lies, or a word.
/// A part that reads open gives no figure, and one beyond the meter's range gives a bound: neither may ever be averaged, drawn or compared
/// as if it were the value, so the figure of an indication that is no value is not to be had by the same name.
/// </summary>
public readonly record struct Indication
{
    private readonly Quantity figure;

    private Indication(IndicationKind kind, Quantity figure) => (Kind, this.figure) = (kind, figure);

    /// <summary>What it says about the value.</summary>
    public IndicationKind Kind { get; }

    /// <summary>What was measured.</summary>
    public Dimension Dimension => figure.Dimension;

    /// <summary>The value, or null where only a bound or a word is known.</summary>
    public Quantity? Exact => Kind == IndicationKind.Exact ? figure : null;

    /// <summary>The figure that the value lies above or below, or null where the value itself or only a word is known.</summary>
    public Quantity? Bound =>
        Kind is IndicationKind.Above or IndicationKind.AtLeast or IndicationKind.Below or IndicationKind.AtMost ? figure : null;

    /// <summary>The value itself.</summary>
    public static Indication From(Quantity value) => new(IndicationKind.Exact, value);

    /// <summary>One side of a figure.</summary>
    public static Indication OneSided(IndicationKind kind, Quantity bound) =>
        kind is IndicationKind.Above or IndicationKind.AtLeast or IndicationKind.Below or IndicationKind.AtMost
            ? new(kind, bound)
            : throw new ArgumentOutOfRangeException(nameof(kind), kind, "This kind has no bound.");

    /// <summary>A word of the meter.</summary>
    public static Indication Word(IndicationKind kind, Dimension dimension) =>
        kind is IndicationKind.OverRange or IndicationKind.Open or IndicationKind.Short
            ? new(kind, new Quantity(0m, dimension))
            : throw new ArgumentOutOfRangeException(nameof(kind), kind, "This kind is no word.");
}
