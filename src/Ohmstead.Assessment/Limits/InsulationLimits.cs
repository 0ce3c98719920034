using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>
/// The least insulation resistance of a capacitor: what its own leakage limit comes to at the voltage it was read at, else what is usual of
/// its dielectric, or of a capacitor that stands on the mains. What passes through it at a voltage is the same fact
/// (<see cref="LeakageLimits"/>).
/// </summary>
/// <remarks>
/// Insulation rises for a minute after the voltage is put on: one read earlier can only keep its limit. Old paper breaks down at its
/// working voltage, and an ohmmeter with its volt or less says little of any: one read at less than the voltage of the test can only break
/// the limit. It falls by a decade in 60 K.
/// </remarks>
public static class InsulationLimits
{
    private const decimal LeastVoltsOnTheMains = 100m;

    private static readonly LazyText OlderParts =
        "today's makers promise more, and what an older part had to keep is in no source at hand: only under 1 GΩ is it a fault by all "
        + "of them, so replace it where people rely on it";

    private static readonly LazyText NoVoltage = "the record does not say at which voltage it was read";
    private static readonly LazyText ByOhmmeter =
        "an ohmmeter reads at a volt or so, and insulation is proved at the voltage of the part: write at_voltage";
    private static readonly LazyText NoMinute =
        "the record does not say after how long it was read, and insulation rises for a minute: a sound part may show a sixtieth of it "
        + "after a second";

    /// <summary>The limit that applies, or null when none is known.</summary>
    /// <param name="part">What the part is.</param>
    /// <param name="how">How it was read.</param>
    /// <param name="measured">Insulation, or the resistance that an ohmmeter shows of it.</param>
    public static Limit? For(IMarkedPart part, ReadingConditions how, Measured measured = Measured.Insulation) =>
        Known(part, how) is { } limit ? With(limit, part, how, measured) : null;

    private static Limit? Known(IMarkedPart part, ReadingConditions how)
    {
        if (part.LeakageLimit is { Value.Value: > 0m } own && (how.AtVoltage ?? part.RatedVoltage?.Value) is { Value: > 0m } volts)
        {
            var ohms = new Quantity(volts.Value / own.Value.Value, Dimension.Resistance);
            return new Limit(
                LimitKind.Delivery,
                new Interval(ohms, null),
                "the part's own leakage limit",
                new(() => $"{QuantityText.Format(volts)} / {own.Text} = {QuantityText.Format(ohms, 4)}"),
                "the record; Ohm's law"
            );
        }

        return OfTheType(part, how);
    }

    /// <summary>What is usual of the dielectric, whatever the way of measuring; null when nothing is known.</summary>
    internal static Limit? OfTheType(IMarkedPart part, ReadingConditions how)
    {
        if (part.Capacitance is not { Value.Value: > 0m and var farads })
        {
            return null;
        }

        if (SuppressorFigures.For(part) is { } mains)
        {
            return !mains.LeastOhms(farads, how.IsNew).Is(out var ohms, out _)
                ? null
                : new Limit(
                    how.IsNew ? LimitKind.Delivery : LimitKind.EndOfLife,
                    new Interval(new Quantity(ohms.Value, Dimension.Resistance), null),
                    new(() => $"the usual limit of a capacitor on the mains ({mains.Dielectric})"),
                    ohms.Arithmetic,
                    new(() => ohms.Source.Text)
                )
                {
                    ExplainedBelow =
                        ohms.Value > SuppressionFigures.FaultBelowOhms && mains != SuppressionFigures.CeramicDisc
                            ? (new Quantity(SuppressionFigures.FaultBelowOhms, Dimension.Resistance), OlderParts)
                            : null,
                };
        }

        if (DryFigures.For(part) is not { } figures || !figures.LeastInsulationOhms(farads).Is(out var least, out _))
        {
            return null;
        }

        var lower = new Quantity(how.IsNew ? least.Value : least.Value * figures.WornShare, Dimension.Resistance);
        return new Limit(
            how.IsNew ? LimitKind.Delivery : LimitKind.EndOfLife,
            new Interval(lower, null),
            new(() => $"the type's usual limit ({figures.Dielectric})"),
            how.IsNew
                ? least.Arithmetic
                : new(() =>
                    $"{least.Arithmetic}; worn part: {QuantityText.Format(new Quantity(figures.WornShare, Dimension.Number))} of it = "
                    + $"{QuantityText.Format(lower, 4)}"
                ),
            new(() => how.IsNew ? least.Source.Text : $"{least.Source.Text}; worn: {figures.WornSource.Text}")
        )
        {
            Remarks = [new LazyText(() => figures.Note)],
        };
    }

    // What the way of measuring takes from a limit.
    private static Limit With(Limit limit, IMarkedPart part, ReadingConditions how, Measured measured)
    {
        var judged = Warm(limit, how) with { ProvesOnlyOutside = TooLow(part, how, measured) };
        if (how.After is { } after && after.Value >= InsulationConditions.SettledSeconds)
        {
            return judged;
        }

        var share = InsulationConditions.ShareAfter(how.After?.Value).Value;
        return how.After is not { } early
            ? judged.MayReadLess(share, NoMinute)
            : judged with
            {
                NothingBelow = new(() =>
                    $"it was read after {QuantityText.Format(early)}, the limit holds after a minute, and insulation still rises"
                ),
                NothingBelowTo = new Quantity(
                    (judged.ExplainedBelow?.DownTo ?? judged.Interval.Lower!.Value).Value * share,
                    Dimension.Resistance
                ),
            };
    }

    private static Limit Warm(Limit limit, ReadingConditions how)
    {
        if (how.AwayFrom20 is not { } read || !InsulationConditions.Share(read.Value).Is(out var share, out _))
        {
            return limit;
        }

        LazyText why = new(() =>
            $"it was read at {QuantityText.Format(read)}, where insulation is {share.Arithmetic} of that at 20 °C ({share.Source.Text})"
        );
        return share.Value < 1m ? limit.MayReadLess(share.Value, why) : limit.ProvedFromTimes(share.Value, why);
    }

    private static LazyText? TooLow(IMarkedPart part, ReadingConditions how, Measured measured)
    {
        if (how.AtVoltage is not { } at)
        {
            return measured == Measured.Resistance ? ByOhmmeter : NoVoltage;
        }

        if (part.VoltageOfPaper is { } volts && at.Value < volts.Value.Value)
        {
            return new(() => $"it was read at {QuantityText.Format(at)}, and old paper is tested at its voltage of {volts.Text}");
        }

        var least = InsulationConditions.LeastVolts(part.RatedVoltage?.Value.Value);
        least = !SuppressorFigures.Stands(part) ? least : Math.Max(least, LeastVoltsOnTheMains);
        return at.Value >= least
            ? null
            : new(() =>
                $"it was read at {QuantityText.Format(at)}, and its insulation is proved at "
                + $"{QuantityText.Format(new Quantity(least, Dimension.Voltage))} or more ({InsulationConditions.Voltage.Text})"
            );
    }
}
