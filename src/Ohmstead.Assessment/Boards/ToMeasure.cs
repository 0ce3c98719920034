using System.Collections.Immutable;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>One thing to measure, with the limit that will govern, known before the reading is taken.</summary>
/// <param name="Measured">What is to be measured.</param>
/// <param name="Limit">The limit that governs, or null when none is known.</param>
/// <param name="How">How it is to be measured for that limit to hold.</param>
public sealed record Expected(Measured Measured, Limit? Limit, ReadingConditions How);

/// <summary>What a bench usually measures of a part or at a test point, with the limits worked out beforehand.</summary>
/// <remarks>The test frequency is that at which makers state dissipation factors: 120 Hz for electrolytics (MIL-C-62F, 4.5.4), 1 kHz for
/// others (IEC 60384-1, from memory; MIL-PRF-11693E, 4.7.6: 60 Hz for film above 1 µF).</remarks>
public static class ToMeasure
{
    /// <summary>What to measure of what sits in a place.</summary>
    public static IReadOnlyList<Expected> At(PlaceHistory place) => At(place.Values, PartWords.ListedIn(place.Part), isNew: false);

    /// <summary>What to measure of a part.</summary>
    /// <param name="part">What the part is.</param>
    /// <param name="place">Where a circuit limit comes from, or null for a part that lies in the drawer.</param>
    /// <param name="isNew">True for a part that has not been fitted yet.</param>
    public static IReadOnlyList<Expected> At(PartValues part, string? place, bool isNew)
    {
        var how = new ReadingConditions(isNew, Frequency(part), null, part.RatedVoltage?.Value);
        return
        [
            .. part
                .Kind.Value.UsuallyMeasured.Select(measured => new Expected(
                    measured,
                    First(PartLimits.For(part, place, measured, how)),
                    how
                ))
                .Where(expected =>
                    expected.Limit is not null
                    || (MarkingLimits.Nominal(part) is not null && expected.Measured == part.Kind.Value.MainQuantity)
                ),
        ];
    }

    /// <summary>What to measure at a test point.</summary>
    public static IReadOnlyList<Expected> At(TestPoint point)
    {
        var how = new ReadingConditions(IsNew: false, null, null, null);
        return
        [
            .. new[] { Measured.Voltage, Measured.Current, Measured.Frequency, Measured.Temperature, Measured.Hours, Measured.Ripple }
                .Select(measured => new Expected(measured, First(PointLimits.For(point, measured)), how))
                .Where(expected => expected.Limit is not null),
        ];
    }

    private static Limit? First(ImmutableArray<Limit> limits) => limits.Length > 0 ? limits[0] : null;

    private static Quantity? Frequency(PartValues part) =>
        part.Kind.Value.Family != PartFamily.Capacitor
            ? null
            : new Quantity(part.Kind.Value.IsElectrolytic ? 120m : 1000m, Dimension.Frequency);
}
