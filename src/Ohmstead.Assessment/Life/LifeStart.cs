using Ohmstead.Assessment.History;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Life;

/// <summary>When what sits in a place began to be used.</summary>
/// <param name="First">The first day that can be meant.</param>
/// <param name="Last">The last day that can be meant; the same when the day is known.</param>
/// <param name="Words">How it is known: fitted 2026-03-14, made 1978.</param>
public sealed record LifeStart(DateOnly First, DateOnly Last, string Words)
{
    /// <summary>The day a part was fitted; for an original, when the board was made. Null when neither is written.</summary>
    public static LifeStart? For(PlaceHistory place, Written<RoughDate>? made) =>
        place.FittedOn is { Date: var date } ? new(date.Value, date.Value, "fitted " + date.Text)
        : made is not null ? new(made.Value.Earliest, made.Value.Latest, "made " + made.Text)
        : null;
}
