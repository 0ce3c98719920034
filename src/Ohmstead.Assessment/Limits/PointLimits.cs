using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The limits of one quantity at a test point: what the circuit must show there, whether it is read on the way or proves the board.</summary>
public static class PointLimits
{
    /// <summary>The limits that apply; none when the point says nothing about the quantity.</summary>
    public static IReadOnlyList<Limit> For(TestPoint point, Measured measured)
    {
        var origin = point.FromDesign is null ? "this board's record" : "the design";
        var source = point.Source?.Value ?? "the record of this board or design";
        if (measured == Measured.Ripple)
        {
            return point.RippleLimit is { } ripple
                ? [new Limit(LimitKind.Circuit, new Interval(null, ripple.Value), origin, $"ripple at most {ripple.Text}, as written", source)]
                : [];
        }

        if (measured == Measured.Hours)
        {
            return point.Hours is { } hours
                ? [new Limit(LimitKind.Circuit, new Interval(new Quantity(hours.Value, Dimension.Number), null), origin, $"at least {hours.Text} h, as written", source)]
                : [];
        }

        if (!IsWhatThePointMeasures(point, measured))
        {
            return [];
        }

        if (point.Low is not null || point.High is not null)
        {
            return [new Limit(LimitKind.Circuit, new Interval(point.Low?.Value, point.High?.Value), origin, $"{point.Low?.Text ?? "no lower limit"} … {point.High?.Text ?? "no upper limit"}, as written", source) { Nominal = point.Nominal?.Value }];
        }

        if (point.Nominal is { } nominal && point.Tolerance is { } tolerance)
        {
            var interval = tolerance.Value.Apply(nominal.Value);
            return [new Limit(LimitKind.Circuit, interval, origin, $"{nominal.Text} {tolerance.Text} allows {interval}", source) { Nominal = nominal.Value }];
        }

        return [];
    }

    private static bool IsWhatThePointMeasures(TestPoint point, Measured measured) => measured switch
    {
        Measured.Voltage => point.Measures == "voltage",
        Measured.Current => point.Measures == "current",
        Measured.Frequency => point.Measures == "frequency",
        Measured.Temperature => point.Measures == "temperature",
        _ => false,
    };
}
