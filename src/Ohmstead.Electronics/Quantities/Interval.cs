namespace Ohmstead.Electronics.Quantities;

/// <summary>The values between two limits, the limits themselves included. A limit that is null is none: the interval is open that
/// way.</summary>
/// <remarks>Both limits, where present, have the same dimension. The default value has no limits and contains everything.</remarks>
/// <param name="Lower">The least value inside, or null for no lower limit.</param>
/// <param name="Upper">The greatest value inside, or null for no upper limit.</param>
public readonly record struct Interval(Quantity? Lower, Quantity? Upper)
{
    /// <summary>True when no value can be inside, because the lower limit is above the upper one.</summary>
    public bool IsEmpty => Lower is { } lower && Upper is { } upper && lower.Value > upper.Value;

    /// <summary>Whether the value is inside; exactly on a limit is inside. A value of another dimension than a limit is not.</summary>
    public bool Contains(Quantity value) =>
        (Lower is not { } lower || (lower.Dimension == value.Dimension && value.Value >= lower.Value))
        && (Upper is not { } upper || (upper.Dimension == value.Dimension && value.Value <= upper.Value));

    /// <summary>The limits as text: 376 µF … 564 µF, from 376 µF, up to 564 µF.</summary>
    public override string ToString() =>
        (Lower, Upper) switch
        {
            ({ } lower, { } upper) => $"{QuantityText.Format(lower)} … {QuantityText.Format(upper)}",
            ({ } lower, null) => $"from {QuantityText.Format(lower)}",
            (null, { } upper) => $"up to {QuantityText.Format(upper)}",
            _ => "no limits",
        };
}
