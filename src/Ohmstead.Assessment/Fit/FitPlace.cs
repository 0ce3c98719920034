using Ohmstead.Assessment.History;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>
/// A place on a board as something that a part must fit. Two are equal when they ask for the same, on whatever board and line.
/// </summary>
/// <param name="Values">What belongs there.</param>
/// <param name="IsAfterValve">True when a reservoir there stands after a valve rectifier, as far as the list of parts tells.</param>
public sealed record FitPlace(IFitPart Values, bool IsAfterValve = false)
{
    private const decimal UsualTolerance = 0.2m;

    /// <summary>The place as the rules for capacitors take it; null when it is none of theirs, or has no capacitance to go by.</summary>
    public CapacitorPlace? Capacitor { get; } = CapacitorOf(Values, IsAfterValve);

    /// <summary>What was taken for granted because the record does not say it; empty when everything is written.</summary>
    public IReadOnlyList<string> Assumptions =>
        [
            .. Capacitor is null || Values.Tolerance is not null
                ? []
                : new[] { "no tolerance is written: ±20 % is taken for the original" },
            .. IsAfterValve && Values.Role is { Value: PartRole.Reservoir }
                ? new[] { "the list has valves and no other rectifier: judged as after a valve rectifier" }
                : [],
            .. Capacitor is { Role: CapacitorRole.Other, IsOnMains: false } && Values.Role is null
                ? new[] { "no role is written: the value is held to the tolerance of the original" }
                : [],
        ];

    /// <summary>The place of a board.</summary>
    public static FitPlace From(BoardHistory board, PlaceHistory place) =>
        new(place.Part.Values, IsReservoirAfterValve(board, place.Part.Values));

    /// <inheritdoc/>
    public bool Equals(FitPlace? other) =>
        other is not null && IsAfterValve == other.IsAfterValve && FitComparer.Instance.Equals(Values, other.Values);

    /// <inheritdoc/>
    public override int GetHashCode() => FitComparer.Instance.GetHashCode(Values);

    private static bool IsReservoirAfterValve(BoardHistory board, PartValues values)
    {
        if (values.Role is not { Value: PartRole.Reservoir } || values.Kind.Value.Family != PartFamily.Capacitor)
        {
            return false;
        }

        var hasValve = false;
        for (var at = 0; at < board.Places.Length; at++)
        {
            var kind = board.Places[at].Part.Values.Kind.Value;
            if (kind == PartKinds.BridgeRectifier || kind == PartKinds.SeleniumRectifier || kind == PartKinds.Diode)
            {
                return false;
            }

            hasValve |= kind == PartKinds.Valve;
        }

        return hasValve;
    }

    private static CapacitorPlace? CapacitorOf(IFitPart values, bool isAfterValve)
    {
        if (values.Kind.Value.Capacitor is not { } kind || values.Capacitance is not { Value.Value: > 0 and var farads })
        {
            return null;
        }

        var (below, above) = Tolerance(values, farads);
        return new(CapacitorWords.Role(values.Role?.Value, isAfterValve), kind, farads, values.RatedVoltage?.Value.Value)
        {
            ToleranceBelow = below,
            ToleranceAbove = above,
            LeastFarads = Farads(values.Low),
            MostFarads = Farads(values.High),
            WorstVolts = values.WorkingVoltage?.Value.Value,
            CelsiusRating = values.Temperature?.Value.Value,
            RippleAmperes = values.RippleCurrent?.Value.Value,
            LargestEsrOhms = values.EsrLimit?.Value.Value,
            LeastEsrOhms = values.EsrLow?.Value.Value,
            IsBipolar = CapacitorWords.IsBipolar(values),
            SafetyClass = CapacitorWords.Safety(values.SafetyClass),
            Form = CapacitorWords.Form(values.Form?.Value),
            OriginalDiameter = CapacitorWords.Millimetres(values.Diameter),
            OriginalHeight = CapacitorWords.Millimetres(values.Height),
            Pitch = CapacitorWords.Millimetres(values.LeadPitch),
        };
    }

    private static (decimal Below, decimal Above) Tolerance(IFitPart values, decimal farads)
    {
        if (values.Tolerance is not { Value: var tolerance })
        {
            return (UsualTolerance, UsualTolerance);
        }

        var (lower, upper) =
            tolerance.IsRelative ? (tolerance.Lower, tolerance.Upper)
            : tolerance.AbsoluteIn == Dimension.Capacitance ? (tolerance.Lower / farads, tolerance.Upper / farads)
            : (-UsualTolerance, UsualTolerance);
        return (Math.Clamp(-lower, 0m, 1m), Math.Clamp(upper, 0m, 10m));
    }

    private static decimal? Farads(Written<Quantity>? limit) =>
        limit is { Value.Dimension: Dimension.Capacitance } ? limit.Value.Value : null;
}
