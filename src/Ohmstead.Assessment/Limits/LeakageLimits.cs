using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>Limits of leakage current: the part's own, or the type's. Of a dry capacitor that is its insulation, told as what passes at a
/// voltage.</summary>
/// <remarks>
/// Leakage falls with the minutes and with the voltage: a reading taken too early can only keep the limit, one taken at a lower voltage can
/// only break it. Where the minute or the voltage is not written, what hangs on it is not proved.
/// </remarks>
public static class LeakageLimits
{
    private const decimal SecondsInMinute = 60m;

    // The sheets of the general rule end here; cans above it are rated as computer-grade ones are.
    private const decimal LargestGeneralVolts = 450m;

    private static readonly LazyText NoVoltage =
        "the record does not say at which voltage it was read, and leakage falls with the voltage: write at_voltage";
    private static readonly LazyText NoMinute =
        "the record does not say after how long it was read, and leakage falls for minutes: write after";

    /// <summary>The limit that applies, or null when none is known.</summary>
    public static Limit? For(IMarkedPart part, ReadingConditions how)
    {
        if (part.Kind.Value.IsElectrolytic)
        {
            return OfElectrolytic(part, how) is { } known ? LeakageWarmth.Adjust(known, part, how) : null;
        }

        return part.Kind.Value.Family == PartFamily.Capacitor ? OfDry(part, how)
            : part.LeakageLimit is { } own ? Own(own)
            : null;
    }

    private static Limit Own(Written<Quantity> own) =>
        new(
            LimitKind.Delivery,
            new Interval(null, own.Value),
            "the part's own limit",
            LazyText.For(own, static own => $"at most {own.Text}, as written"),
            "the record"
        );

    // A limit of the part's own holds at its rated voltage and after the minutes of its type, as data sheets have it.
    private static Limit? OfElectrolytic(IMarkedPart part, ReadingConditions how)
    {
        var rule = RuleFor(part.Kind.Value, part.RatedVoltage?.Value.Value);
        Worked<decimal>? worked = null;
        if (part.LeakageLimit is null)
        {
            if (part.Capacitance is not { } capacitance || part.RatedVoltage is not { } volts || rule is null)
            {
                return null;
            }

            if (!rule.LimitMicroAmperes(capacitance.Value.Value, volts.Value.Value).Is(out worked, out _))
            {
                return null;
            }
        }

        var limit = part.LeakageLimit is { } own
            ? Own(own)
            : new Limit(
                LimitKind.Delivery,
                new Interval(null, new Quantity(worked!.Value / 1_000_000m, Dimension.Current)),
                LazyText.For(rule!, static rule => $"the type's usual limit ({rule.Name})"),
                worked.Arithmetic,
                LazyText.For(worked.Source, static source => source.Text)
            )
            {
                Remarks = [.. worked.Remarks],
            };
        var seconds = (rule?.Minutes ?? 1m) * SecondsInMinute;
        return limit with
        {
            ProvesOnlyInside = how.After is { } after && after.Value < seconds ? ReadEarly(after, seconds) : null,
            DoubtsOutside = how.After is null ? NoMinute : null,
            ProvesOnlyOutside =
                how.AtVoltage is not { } at ? NoVoltage
                : part.RatedVoltage is { } rated && at.Value < rated.Value.Value ? ReadLow(at, rated)
                : null,
        };
    }

    // U / R: each bound of the insulation is one of the current, the other way round.
    private static Limit? OfDry(IMarkedPart part, ReadingConditions how)
    {
        if ((how.AtVoltage ?? part.RatedVoltage?.Value) is not { Value: > 0m } volts)
        {
            return part.LeakageLimit is { } written
                ? Own(written) with
                {
                    ProvesOnlyOutside = NoVoltage,
                    DoubtsOutside = how.After is null ? NoMinute : null,
                }
                : null;
        }

        if (InsulationLimits.For(part, how) is not { Interval.Lower: { Value: > 0m } lower } insulation)
        {
            return null;
        }

        var limit = part.LeakageLimit is { } own
            ? Own(own)
            : insulation with
            {
                Interval = new Interval(null, Current(volts, lower)),
                Arithmetic = new(() =>
                    $"{insulation.Arithmetic}; {QuantityText.Format(volts)} / {QuantityText.Format(lower, 4)} = "
                    + $"{QuantityText.Format(Current(volts, lower), 4)}"
                ),
                Source = new(() => $"{insulation.Source}; Ohm's law"),
            };
        return limit with
        {
            ProvesOnlyOutside = how.AtVoltage is null ? NoVoltage : insulation.ProvesOnlyOutside,
            NothingAbove = insulation.NothingBelow,
            NothingAboveTo = insulation.NothingBelowTo is { } down ? Current(volts, down) : null,
            NothingBelow = null,
            NothingBelowTo = null,
            Explained = insulation.ExplainedBelow is { } explained ? (Current(volts, explained.DownTo), explained.Why) : null,
            ExplainedBelow = null,
            ProvedTo = insulation.ProvedFrom is { } proved ? (Current(volts, proved.From), proved.Why) : null,
            ProvedFrom = null,
        };
    }

    private static Quantity Current(Quantity volts, Quantity ohms) => new(volts.Value / ohms.Value, Dimension.Current);

    private static LazyText ReadEarly(Quantity after, decimal seconds) =>
        new(() =>
            $"it was read after {QuantityText.Format(after)}, the limit holds after "
            + $"{QuantityText.Format(new Quantity(seconds, Dimension.Duration))}, and leakage still falls"
        );

    private static LazyText ReadLow(Quantity volts, Written<Quantity> rated) =>
        new(() => $"it was read at {QuantityText.Format(volts)}, the limit holds at {rated.Text}");

    private static LeakageRule? RuleFor(PartKind kind, decimal? ratedVolts) =>
        kind == PartKinds.AluminiumElectrolytic ? OfVoltage(ratedVolts)
        : kind == PartKinds.BipolarElectrolytic ? LeakageRules.Bipolar
        : kind == PartKinds.Tantalum ? LeakageRules.SolidTantalum
        : kind == PartKinds.PolymerElectrolytic ? LeakageRules.Polymer
        : null;

    private static LeakageRule? OfVoltage(decimal? ratedVolts) =>
        ratedVolts is not { } volts ? null
        : volts <= LeakageRules.GeneralLowVoltage.ToVolts ? LeakageRules.GeneralLowVoltage
        : volts <= LargestGeneralVolts ? LeakageRules.GeneralHighVoltage
        : LeakageRules.ComputerGradeCan;
}
