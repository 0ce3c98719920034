using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf.Ages;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Life;

/// <summary>When the life of one fitted wet electrolytic may be used up: an estimate, not a promise, and never a verdict on the
/// part.</summary>
/// <param name="Place">The place.</param>
/// <param name="Start">When it began to be used, or null when that is not known.</param>
/// <param name="Estimate">The two dates with their working, or what is missing for them.</param>
public sealed record WearOutLife(PlaceHistory Place, LifeStart? Start, Outcome<RemainingLife> Estimate)
{
    /// <summary>What the estimate was made from, one line each.</summary>
    public ImmutableArray<LazyText> Inputs => From is null ? [] : GivenFor(Place, From, Start!);

    // How the board runs, where an estimate was made from it.
    private DutyWords? From { get; init; }

    /// <summary>The reference designator.</summary>
    public string Reference => Place.Part.Ref.Value;

    /// <summary>The last day on which what sits there was measured, or null.</summary>
    public DateOnly? LastRead =>
        Place
            .Readings.LastOrDefault(reading => !reading.IsNew && reading.EmptiedOn is null && ReferenceEquals(reading.Lot, Place.FittedLot))
            ?.Visit.Date.Value;

    /// <summary>The dates alone, or null where there is no estimate.</summary>
    public LifeDates? Dates => Estimate.Is(out var life, out _) ? new(Reference, life.Earliest, life.Latest, LastRead) : null;

    /// <summary>All wet electrolytics that sit on a board, in order of the parts list.</summary>
    /// <param name="places">The places of the board.</param>
    /// <param name="duty">How the board runs, or null when it is not known.</param>
    /// <param name="made">When the board was made, or its design; null when not known.</param>
    internal static ImmutableArray<WearOutLife> For(ImmutableArray<PlaceHistory> places, BoardDuty? duty, Written<RoughDate>? made)
    {
        List<WearOutLife>? lives = null;
        var known = duty is { Fault: null } ? new DutyWords(duty) : null;
        foreach (var place in places)
        {
            if (!place.IsEmpty && place.Values.Kind.Value.DriesOut)
            {
                (lives ??= []).Add(For(place, duty, known, LifeStart.For(place, made)));
            }
        }

        return lives is null ? [] : [.. lives];
    }

    private static WearOutLife For(PlaceHistory place, BoardDuty? duty, DutyWords? known, LifeStart? start)
    {
        var missing =
            place.FittedBy is not null && place.FittedLot is null ? "the lot that it was fitted from is not known"
            : place.Values.Life is null ? "its rated life is not written, as in life: 2000 h"
            : place.Values.Temperature is null ? "the temperature of its rated life is not written, as in temperature: 105 °C"
            : duty is null ? "neither the board nor the collection says its duty in hours a year and temperature"
            : duty.Fault is { } fault ? fault
            : start is null ? "neither the board nor its design says when it was made"
            : null;
        return missing is null ? Estimated(place, known!, start!) : new(place, start, Outcome<RemainingLife>.Refused(missing));
    }

    private static WearOutLife Estimated(PlaceHistory place, DutyWords known, LifeStart start)
    {
        var duty = known.Duty;
        var (life, rated) = (place.Values.Life!, place.Values.Temperature!);
        const decimal secondsPerHour = 3600m;
        var hours = (double)(life.Value.Value / secondsPerHour);
        var models = LifeModels.Estimate(
            hours,
            (double)rated.Value.Value,
            duty.Phases,
            RippleShare.Compute(place)?.Share,
            VoltageShare(place)
        );
        if (!models.Is(out var estimates, out var reason))
        {
            return new(place, start, Outcome<RemainingLife>.Refused(reason));
        }

        var remaining = RemainingLife.Between(estimates.Shortest, estimates.Longest, duty.HoursPerYear, start.First, start.Last);
        return new(place, start, remaining) { From = known };
    }

    // The share of its rated voltage that a part works at, where both are known.
    private static double? VoltageShare(PlaceHistory place) =>
        place.Part.Values.WorkingVoltage is { Value.Value: > 0 } working && place.Values.RatedVoltage is { Value.Value: > 0 } volts
            ? (double)(working.Value.Value / volts.Value.Value)
            : null;

    private static ImmutableArray<LazyText> GivenFor(PlaceHistory place, DutyWords known, LifeStart start)
    {
        var (life, rated) = (place.Values.Life!, place.Values.Temperature!);
        var given = new List<LazyText>(4)
        {
            new(() =>
                $"rated {life.Text} at {rated.Text} ({(place.FittedLot is { } lot ? "lot " + lot.Id.Value : "as listed for the place")}), "
                + $"{start.Words}"
            ),
            known.Taken,
        };
        if (RippleShare.Compute(place) is { } ripple)
        {
            given.Add(ripple.Working);
        }

        if (VoltageShare(place) is not null)
        {
            given.Add(new(() => $"works at {place.Part.Values.WorkingVoltage!.Text} of {place.Values.RatedVoltage!.Text}"));
        }

        if (known.Doubling is { } doubling)
        {
            given.Add(doubling);
        }

        if (place.FittedLot is { } old && ShelfBefore(old, start.First) is { } lain)
        {
            given.Add(lain);
        }

        return [.. given];
    }

    // Nobody states how much of its life a part loses on the shelf: it is told, not counted.
    private static LazyText? ShelfBefore(Lot lot, DateOnly fitted) =>
        lot.Values.DateCode is null || LotDates.Read(lot, fitted).Youngest is not { } made || made.AddYears(ShelfLife.UsualYears) > fitted
            ? null
            : new(() =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"made {LotDates.Read(lot, fitted).Words}, {(fitted.DayNumber - made.DayNumber) / 365} years or more before it was "
                        + $"fitted: not counted, but seals age on the shelf too"
                )
            );
}
