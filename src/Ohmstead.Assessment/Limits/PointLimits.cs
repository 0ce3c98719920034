using System.Collections.Immutable;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The limits of one quantity at a test point: what the circuit must show there, whether it is read on the way or proves the
/// board.</summary>
public static class PointLimits
{
    private static readonly LazyText RippleConditions = RippleLimit.Conditions;
    private static readonly LazyText OfTheBoard = "this board's record";
    private static readonly LazyText OfTheDesign = "the design";
    private static readonly LazyText OfEither = "the record of this board or design";

    /// <summary>The limits that apply; none when the point says nothing about the quantity.</summary>
    public static ImmutableArray<Limit> For(TestPoint point, Measured measured)
    {
        var origin = point.FromDesign is null ? OfTheBoard : OfTheDesign;
        var source = point.Source is { } written ? (LazyText)written.Value : OfEither;
        if (measured == Measured.Ripple)
        {
            return point.RippleLimit is { } ripple
                ?
                [
                    new Limit(
                        LimitKind.Circuit,
                        new Interval(null, ripple.Value),
                        origin,
                        LazyText.For(ripple, static ripple => $"ripple at most {ripple.Text}, as written"),
                        source
                    ),
                ]
                : UsualRipple(point);
        }

        if (measured == Measured.Hours)
        {
            return point.Hours is { } hours
                ?
                [
                    new Limit(
                        LimitKind.Circuit,
                        new Interval(new Quantity(hours.Value, Dimension.Number), null),
                        origin,
                        LazyText.For(hours, static hours => $"at least {hours.Text} h, as written"),
                        source
                    ),
                ]
                : [];
        }

        if (!IsWhatThePointMeasures(point, measured))
        {
            return [];
        }

        if (point.Low is not null || point.High is not null)
        {
            return
            [
                new Limit(
                    LimitKind.Circuit,
                    new Interval(point.Low?.Value, point.High?.Value),
                    origin,
                    LazyText.For(point, static point =>
                        $"{point.Low?.Text ?? "no lower limit"} … {point.High?.Text ?? "no upper limit"}, as written"
                    ),
                    source
                )
                {
                    Nominal = point.Nominal?.Value,
                },
            ];
        }

        if (point.Nominal is { } nominal && point.Tolerance is { } tolerance)
        {
            return
            [
                new Limit(LimitKind.Circuit, tolerance.Value.Apply(nominal.Value), origin, new Allowed(nominal, tolerance), source)
                {
                    Nominal = nominal.Value,
                },
            ];
        }

        return UsualRange(point);
    }

    private static ImmutableArray<Limit> UsualRange(TestPoint point)
    {
        if (
            point is not { Measures: PointMeasure.Voltage, Nominal: { Value: var nominal } }
            || UsualRail.Range(point.Rail?.Value, nominal.Value) is not { } usual
        )
        {
            return [];
        }

        var interval = new Interval(new Quantity(usual.LowVolts, Dimension.Voltage), new Quantity(usual.HighVolts, Dimension.Voltage));
        return
        [
            new Limit(
                LimitKind.Circuit,
                interval,
                new(() => $"the usual limit ({usual.Family}), since no tolerance is written"),
                new(() => $"{usual.Family}: {QuantityText.Format(nominal)} allows {interval}, at the pin of the load"),
                new(() => usual.Source.Text)
            )
            {
                Nominal = nominal,
                Remarks = usual.Note is { } note ? [note] : [],
            },
        ];
    }

    private static ImmutableArray<Limit> UsualRipple(TestPoint point)
    {
        if (
            point is not { Measures: PointMeasure.Voltage, Nominal: { Value: var nominal } }
            || UsualRail.Ripple(point.Rail?.Value, nominal.Value) is not { } usual
        )
        {
            return [];
        }

        var upper = new Quantity(usual.UsualFor(nominal.Value), Dimension.Voltage);
        return
        [
            new Limit(
                LimitKind.Circuit,
                new Interval(null, upper),
                new(() => $"the usual limit ({usual.Rail}), since no ripple limit is written"),
                new(() =>
                    usual.UsualFraction is { } share
                        ? $"{QuantityText.FormatPercent(share)} of {QuantityText.Format(nominal)} = {QuantityText.Format(upper)} peak "
                            + "to peak"
                        : $"{QuantityText.Format(upper)} peak to peak"
                ),
                new(() => usual.Source.Text)
            )
            {
                Remarks = [RippleConditions],
            },
        ];
    }

    private static bool IsWhatThePointMeasures(TestPoint point, Measured measured) =>
        measured switch
        {
            Measured.Voltage => point.Measures == PointMeasure.Voltage,
            Measured.Current => point.Measures == PointMeasure.Current,
            Measured.Frequency => point.Measures == PointMeasure.Frequency,
            Measured.Temperature => point.Measures == PointMeasure.Temperature,
            _ => false,
        };

    private sealed class Allowed(Written<Quantity> nominal, Written<Tolerance> tolerance) : LazyText
    {
        protected override string Write() => $"{nominal.Text} {tolerance.Text} allows {tolerance.Value.Apply(nominal.Value)}";
    }
}
