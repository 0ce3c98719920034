using System.Collections.Immutable;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>
/// Whether a reading of an electrolytic may be compared with its limits at all: they hold near 20 °C, the marked value near 100 or 120 Hz. In the cold the
/// capacitance falls and the ESR rises; at a higher frequency the capacitance reads lower. What such a reading seems to break, it does not prove.
/// </summary>
public static class ConditionLimits
{
    // IEC 60384-4, from memory: 100 Hz, or 120 Hz where the mains have 60 Hz.
    private static readonly decimal MarkingHertz = MeasuringConditions.Aluminium.Hertz;

    /// <summary>The limits with what the conditions take from them.</summary>
    public static ImmutableArray<Limit> Adjust(List<Limit> limits, IMarkedPart part, Measured measured, ReadingConditions how)
    {
        if (limits.Count == 0 || !part.Kind.Value.IsElectrolytic || (IsAtUsualFrequency(measured, how) && how.AwayFrom20 is null))
        {
            return [.. limits];
        }

        for (var at = 0; at < limits.Count; at++)
        {
            limits[at] = Adjusted(limits[at], measured, how);
        }

        return [.. limits];
    }

    private static Limit Adjusted(Limit limit, Measured measured, ReadingConditions how)
    {
        var isCold = how.AwayFrom20 is { } read && read.Value < LowTemperatureImpedance.ReferenceCelsius;
        switch (measured)
        {
            case Measured.Leakage when WarmLeakage.Speaks(how):
                return limit;
            case Measured.Capacitance when !IsAtUsualFrequency(measured, how):
                return limit with { NothingBelow = new(() => $"it was read at {QuantityText.Format(how.Frequency!.Value)}, where an electrolytic shows less than near 100 or 120 Hz, where its value holds (IEC 60384-4, 4.3, from memory)") };
            case Measured.Capacitance when isCold:
                return limit with { NothingBelow = Cold(how, "the capacitance falls") };
            case Measured.Esr or Measured.LossFactor when isCold && limit.Kind != LimitKind.Circuit:
                return limit with { NothingAbove = Cold(how, "the ESR rises") };
            default:
                return how.AwayFrom20 is null ? limit : limit with { Remarks = [.. limit.Remarks, new LazyText(() => $"read at {QuantityText.Format(how.AwayFrom20!.Value)}; limits of an electrolytic hold at 20 °C, within 5 K")] };
        }
    }

    private static LazyText Cold(ReadingConditions how, string what) =>
        new(() => $"it was read at {QuantityText.Format(how.AwayFrom20!.Value)}, where {what}; the limit holds at 20 °C: warm it and read again ({LowTemperatureImpedance.Source.Text})");

    private static bool IsAtUsualFrequency(Measured measured, ReadingConditions how) =>
        measured != Measured.Capacitance || how.Frequency is not { } read || read.Value <= MarkingHertz || MeasuringConditions.Match(read.Value, MarkingHertz) != FrequencyMatch.Different;
}
