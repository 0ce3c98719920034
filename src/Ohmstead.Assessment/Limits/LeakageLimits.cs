using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>Limits of leakage current: the part's own, or the type's.</summary>
/// <remarks>Leakage falls with the minutes and with the voltage: a reading taken too early can only keep the limit, one taken at a lower voltage can only break it.</remarks>
public static class LeakageLimits
{
    /// <summary>The limit that applies, or null when none is known.</summary>
    public static Limit? For(IMarkedPart part, ReadingConditions how) => Known(part, how) is { } limit ? WarmLeakage.Adjust(limit, part, how) : null;

    private static Limit? Known(IMarkedPart part, ReadingConditions how)
    {
        if (part.LeakageLimit is { } own)
        {
            return new Limit(LimitKind.Delivery, new Interval(null, own.Value), "the part's own limit", LazyText.Of(own, static own => $"at most {own.Text}, as written"), "the record");
        }

        if (part.Capacitance is not { } capacitance || part.RatedVoltage is not { } rated || RuleFor(part.Kind.Value, rated.Value.Value) is not { } rule
            || !rule.LimitMicroAmperes(capacitance.Value.Value, rated.Value.Value).Is(out var worked, out _))
        {
            return null;
        }

        var early = how.After is { } after && after.Value < rule.Minutes * 60m;
        var low = how.AtVoltage is { } at && at.Value < rated.Value.Value;
        return new Limit(
            LimitKind.Delivery, new Interval(null, new Quantity(worked.Value / 1_000_000m, Dimension.Current)), LazyText.Of(rule, static rule => $"the type's usual limit ({rule.Name})"), worked.Arithmetic, LazyText.Of(worked.Source, static source => source.Text))
        {
            ProvesOnlyInside = early ? ReadEarly(how.After!.Value, rule) : null,
            ProvesOnlyOutside = low ? ReadLow(how.AtVoltage!.Value, rated) : null,
            Remarks = [.. worked.Remarks, .. (how.After is null ? ["the record does not say after how long it was read"] : Array.Empty<string>())],
        };
    }

    private static LazyText ReadEarly(Quantity after, LeakageRule rule) => new(() =>
        $"it was read after {QuantityText.Format(after)}, the limit holds after {QuantityText.Format(new Quantity(rule.Minutes * 60m, Dimension.Duration))}, and leakage still falls");

    private static LazyText ReadLow(Quantity volts, Written<Quantity> rated) => new(() => $"it was read at {QuantityText.Format(volts)}, the limit holds at {rated.Text}");

    private static LeakageRule? RuleFor(PartKind kind, decimal ratedVolts) =>
        kind == PartKinds.AluminiumElectrolytic ? ratedVolts <= LeakageRules.GeneralLowVoltage.ToVolts ? LeakageRules.GeneralLowVoltage : LeakageRules.GeneralHighVoltage
        : kind == PartKinds.BipolarElectrolytic ? LeakageRules.Bipolar
        : kind == PartKinds.Tantalum ? LeakageRules.SolidTantalum
        : null;
}
