using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>
/// What a d.c. voltage across a capacitor does to its reading. Class 2 ceramic loses capacitance under it, by how much is a matter of its
/// make: its marking holds without, so the two cannot be compared, and only a reading above the marking proves anything. A place that needs
/// so much at its own voltage is judged by it.
/// </summary>
public static class BiasLimits
{
    private static readonly LazyText InPlace = "read under bias, as the place has it: common practice";

    /// <summary>The limits with what the bias takes from them.</summary>
    internal static List<Limit> Adjust(List<Limit> limits, IMarkedPart part, Measured measured, ReadingConditions how)
    {
        if (measured != Measured.Capacitance || how.Bias is not { Value: not 0m } bias || limits.Count == 0)
        {
            return limits;
        }

        for (var at = 0; at < limits.Count; at++)
        {
            limits[at] =
                part.Kind.Value == PartKinds.CeramicClass2 ? OfCeramic(limits[at], bias) : Usual(limits[at], part.Kind.Value, bias);
        }

        return limits;
    }

    private static Limit OfCeramic(Limit limit, Quantity bias)
    {
        if (limit.Kind == LimitKind.Circuit)
        {
            return limit with { Remarks = [.. limit.Remarks, InPlace] };
        }

        var why = new LazyText(() =>
            $"it was read under {QuantityText.Format(bias)} of bias, where class 2 ceramic loses capacitance, and its marking holds "
            + "without: read it without bias (common practice)"
        );
        return limit with { NothingBelow = why, ProvesOnlyOutside = why };
    }

    private static Limit Usual(Limit limit, PartKind kind, Quantity bias)
    {
        var conditions =
            kind == PartKinds.AluminiumElectrolytic ? MeasuringConditions.Aluminium
            : kind == PartKinds.Tantalum ? MeasuringConditions.Tantalum
            : null;
        return conditions is null || Math.Abs(bias.Value) <= conditions.LargestBiasVolts
            ? limit
            : limit with
            {
                Remarks =
                [
                    .. limit.Remarks,
                    new LazyText(() =>
                        $"read under {QuantityText.Format(bias)} of bias; its value holds under "
                        + $"{QuantityText.Format(new Quantity(conditions.LargestBiasVolts, Dimension.Voltage))} at most "
                        + $"({conditions.Source.Text})"
                    ),
                ],
            };
    }
}
