using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>Limits of ESR and dissipation factor: the part's own, the design's, or the type's.</summary>
/// <remarks>
/// tan delta = 2 pi f C ESR (IEC 60384-1). A worn electrolytic counts as failed above twice the delivery limit: common practice, within the
/// spread of published end-of-life criteria; no other part is given that. A limit holds at its own frequency, and a reading at another
/// proves what
/// <see cref="OtherFrequency"/> says: between the two it does not decide.
/// </remarks>
public static class EsrLimits
{
    private const decimal LeastShareOfCapacitance = 0.8m;

    private static readonly LazyText NoFrequency = "the test frequency is not recorded";
    private static readonly LazyText NoFrequencyForLimit =
        "the test frequency is not recorded, so the reading cannot be held against a limit at one";
    private static readonly LazyText NoFrequencyOfLimit =
        "the limit names no frequency, so it may hold at 120 Hz or at 100 kHz: write esr_frequency to decide";

    /// <summary>The limit of ESR that applies, or null when none is known.</summary>
    public static Limit? Esr(IMarkedPart part, string? place, ReadingConditions how)
    {
        if (part.EsrLimit is { } own)
        {
            return BesideIt(Own(part, own, place, how), part, how);
        }

        return OfTheLoss(part, how) is { } limit ? BesideIt(limit, part, how) : null;
    }

    // The limit that follows from the dissipation factor.
    private static Limit? OfTheLoss(IMarkedPart part, ReadingConditions how)
    {
        if (
            LossLimit.For(part) is not { } loss
            || part.Capacitance is not { Value.Value: > 0m and var farads }
            || !LossFactor.EsrOhms(loss.For(how.IsNew), loss.Hertz, farads).Is(out var ohms, out _)
        )
        {
            return null;
        }

        var upper = new Quantity(ohms, Dimension.Resistance);
        var limit = new Limit(
            how.IsNew || loss.IsForNewAlone ? LimitKind.Delivery : LimitKind.EndOfLife,
            new Interval(null, upper),
            LazyText.For(loss, static loss => loss.Origin),
            new EsrArithmetic(loss, farads, upper, how.IsNew),
            LazyText.For(
                loss,
                how.IsNew
                    ? static loss => $"{loss.Source}; {LossFactor.Source.Text}"
                    : static loss => $"{loss.SourceWorn}; {LossFactor.Source.Text}"
            )
        )
        {
            ProvesOnlyInside = loss.NoSourceAbove,
        };
        return how.Frequency is not { } read ? Unwritten(limit, OtherFrequency.EsrAtUnknown(ohms, loss.Hertz, null), NoFrequencyForLimit)
            : MeasuringConditions.Match(read.Value, loss.Hertz) == FrequencyMatch.Same ? limit
            : loss.IsStraight ? At(limit, OtherFrequency.Esr(ohms, loss.Hertz, read.Value), read, loss.Hertz)
            : OnlyAt(limit, read, loss.Hertz);
    }

    private static Limit Own(IMarkedPart part, Written<Quantity> own, string? place, ReadingConditions how)
    {
        var limit = new Limit(
            place is null ? LimitKind.Delivery : LimitKind.Circuit,
            new Interval(part.EsrLow?.Value, own.Value),
            place ?? "the part's own limit",
            new(() => $"at most {own.Text}, as written"),
            "the record"
        );
        var (held, read) = (part.EsrFrequency?.Value, how.Frequency);
        if (held is { } at && read is { } by)
        {
            return at.Value == by.Value
                ? limit
                : WithLow(At(limit, OtherFrequency.Esr(own.Value.Value, at.Value, by.Value), by, at.Value), part, at.Value, by);
        }

        var proved = OtherFrequency.EsrAtUnknown(own.Value.Value, held?.Value, read?.Value);
        if (read is null)
        {
            return Unwritten(limit, proved, NoFrequency);
        }

        if (!proved.Is(out var known, out _))
        {
            return limit;
        }

        // A part that breaks the usual limit of its type as well is bad by the one or by the other.
        var bound = known.Value.OutsideAbove;
        if (OfTheLoss(part, how)?.MayBeInside.Upper is { } most && most.Value < bound)
        {
            bound = Math.Max(most.Value, own.Value.Value);
        }

        return limit with
        {
            ProvesOnlyOutside = known.Value.InsideTo < own.Value.Value ? NoFrequencyOfLimit : null,
            Explained = bound > own.Value.Value ? (own.Value with { Value = bound }, NoFrequencyOfLimit) : null,
        };
    }

    // The least ESR that a place needs, the other way round.
    private static Limit WithLow(Limit limit, IMarkedPart part, decimal limitHertz, Quantity read) =>
        part.EsrLow is { } low && OtherFrequency.Esr(low.Value.Value, limitHertz, read.Value).Is(out var proved, out _)
            ? limit with
            {
                ProvedFrom = (low.Value with { Value = proved.Value.OutsideAbove }, Between(read, limitHertz, proved)),
                ExplainedBelow = (low.Value with { Value = proved.Value.InsideTo }, Between(read, limitHertz, proved)),
            }
            : limit;

    private static Limit At(Limit limit, Outcome<Worked<ProvedLimits>> known, Quantity read, decimal limitHertz) =>
        !known.Is(out var proved, out _)
            ? limit
            : limit with
            {
                ProvedTo = (limit.Interval.Upper!.Value with { Value = proved.Value.InsideTo }, Between(read, limitHertz, proved)),
                Explained = (limit.Interval.Upper!.Value with { Value = proved.Value.OutsideAbove }, Between(read, limitHertz, proved)),
            };

    // Where nobody wrote a frequency, a reading proves what it would prove at each that meters have, and else nothing.
    private static Limit Unwritten(Limit limit, Outcome<Worked<ProvedLimits>> known, LazyText why)
    {
        if (!known.Is(out var proved, out _) || limit.Interval.Upper is not { } upper)
        {
            return limit;
        }

        return limit with
        {
            ProvesOnlyOutside = proved.Value.InsideTo < upper.Value ? why : null,
            InsideHoweverTo = upper with { Value = proved.Value.InsideTo },
            NothingAbove = proved.Value.OutsideAbove > upper.Value ? why : null,
            NothingAboveTo = upper with { Value = proved.Value.OutsideAbove },
        };
    }

    private static Limit OnlyAt(Limit limit, Quantity read, decimal limitHertz) =>
        MeasuringConditions.Match(read.Value, limitHertz) != FrequencyMatch.Different
            ? limit
            : limit with
            {
                ProvesOnlyOutside = new OtherThanItsLimit(read, limitHertz),
                ProvesOnlyInside = new OtherThanItsLimit(read, limitHertz),
            };

    private static LazyText Between(Quantity read, decimal limitHertz, Worked<ProvedLimits> proved) =>
        new(() =>
            $"it was read at {QuantityText.Format(read)} and the limit holds at {QuantityText.Format(Hertz(limitHertz))}: a part on its "
            + $"limit reads {proved.Arithmetic} there, and how it divides is not known ({proved.Source.Text})"
        );

    private static Limit BesideIt(Limit limit, IMarkedPart part, ReadingConditions how) =>
        limit with
        {
            ReadAt = how.Frequency,
            LeastBesidePath = LeastCapacitance(part),
        };

    /// <summary>The least capacitance that a part inside its limits has: one with less has failed by that.</summary>
    internal static Quantity? LeastCapacitance(IMarkedPart part) =>
        part.Capacitance is not { Value: { Value: > 0m } mark } ? null
        : part.Tolerance is { } tolerance && tolerance.Value.Apply(mark).Lower is { Value: > 0m } least ? least
        : mark with { Value = mark.Value * LeastShareOfCapacitance };

    /// <summary>The limit of dissipation factor that applies, or null when none is known.</summary>
    public static Limit? Loss(IMarkedPart part, ReadingConditions how)
    {
        if (LossLimit.For(part) is not { } loss)
        {
            return null;
        }

        var upper = new Quantity(loss.For(how.IsNew), Dimension.Ratio);
        var isNew = how.IsNew || loss.IsForNewAlone;
        var limit = new Limit(
            isNew ? LimitKind.Delivery : LimitKind.EndOfLife,
            new Interval(null, upper),
            LazyText.For(loss, static loss => loss.Origin),
            isNew ? LazyText.For(loss, static loss => loss.Arithmetic) : new WornLoss(loss, upper),
            LazyText.For(loss, isNew ? static loss => loss.Source : static loss => loss.SourceWorn)
        )
        {
            ReadAt = how.Frequency,
            LeastBesidePath = LeastCapacitance(part),
            ProvesOnlyInside = loss.NoSourceAbove,
        };
        limit =
            loss.Borne is { } borne && borne.Value > upper.Value
                ? limit with
                {
                    Explained = (upper with { Value = borne.Value }, borne.Why),
                }
                : limit;
        return how.Frequency is not { } read ? limit with { ProvesOnlyOutside = NoFrequency, ProvesOnlyInside = NoFrequency }
            : MeasuringConditions.Match(read.Value, loss.Hertz) == FrequencyMatch.Same ? limit
            : loss.IsStraight ? At(limit, OtherFrequency.LossFactor(upper.Value, loss.Hertz, read.Value), read, loss.Hertz)
            : OnlyAt(limit, read, loss.Hertz);
    }

    private static Quantity Hertz(decimal hertz) => new(hertz, Dimension.Frequency);

    private sealed class EsrArithmetic(LossLimit loss, decimal farads, Quantity upper, bool isNew) : LazyText
    {
        protected override string Write() =>
            isNew || loss.IsForNewAlone
                ? $"{loss.Arithmetic}; {LossFactor.EsrLimit(loss.Value, loss.Hertz, farads).Value.Arithmetic}"
                : $"{loss.Arithmetic}; {LossFactor.EsrLimit(loss.Value, loss.Hertz, farads).Value.Arithmetic}; worn part: "
                    + $"{loss.WornWords} = {QuantityText.Format(upper, 4)}";
    }

    private sealed class WornLoss(LossLimit loss, Quantity upper) : LazyText
    {
        protected override string Write() => $"{loss.Arithmetic}; worn part: {loss.WornWords} = {QuantityText.Format(upper, 4)}";
    }

    private sealed class OtherThanItsLimit(Quantity read, decimal limitHertz) : LazyText
    {
        protected override string Write() =>
            $"the limit holds at {QuantityText.Format(Hertz(limitHertz))} and the reading was taken at {QuantityText.Format(read)}";
    }
}
