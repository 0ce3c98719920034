using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>Limits of ESR and dissipation factor: the part's own, the design's, or the type's.</summary>
/// <remarks>
/// tan delta = 2 pi f C ESR (IEC 60384-1). A worn electrolytic counts as failed above twice the delivery limit: common practice, within the
/// spread of published end-of-life criteria. A dissipation factor limit holds at its own frequency; ESR at a high frequency is the smaller, so such
/// a reading can break the limit but not keep it.
/// </remarks>
public static class EsrLimits
{
    private const decimal WornFactor = 2m;
    private const decimal HighestComparableHertz = 1_000m;
    private const string WornSource = "; factor 2 for a worn part: common practice";

    private static readonly LazyText NoFrequency = "the test frequency is not recorded";
    private static readonly LazyText NoFrequencyForLimit = "the test frequency is not recorded, so the reading cannot be held against a limit at 120 Hz";
    private static readonly LazyText NearFrequency = "read at 100 Hz against a limit at 120 Hz, or the other way: near enough to compare";

    /// <summary>The limit of ESR that applies, or null when none is known.</summary>
    public static Limit? Esr(IMarkedPart part, string? place, ReadingConditions how)
    {
        if (part.EsrLimit is { } own)
        {
            return Own(own, part.EsrLow?.Value, place, how);
        }

        if (LossLimit.Of(part) is not { } loss || part.Capacitance is not { Value.Value: > 0m and var farads })
        {
            return null;
        }

        var hertz = how.Frequency?.Value ?? loss.Hertz;
        var (compareAt, isHigh) = hertz > HighestComparableHertz ? (loss.Hertz, true) : (hertz, false);
        if (!LossFactor.EsrOhms(loss.Value, compareAt, farads).Is(out var ohms, out _))
        {
            return null;
        }

        var upper = new Quantity(ohms * (how.IsNew ? 1m : WornFactor), Dimension.Resistance);
        return new Limit(
            how.IsNew ? LimitKind.Delivery : LimitKind.EndOfLife,
            new Interval(null, upper),
            LazyText.Of(loss, static loss => loss.Origin),
            new EsrArithmetic(loss, compareAt, farads, upper, how.IsNew),
            how.IsNew ? LazyText.Of(loss, static loss => $"{loss.Source}; {LossFactor.Source.Text}") : LazyText.Of(loss, static loss => $"{loss.Source}; {LossFactor.Source.Text}{WornSource}"))
        {
            ProvesOnlyOutside = how.Frequency is not { } read ? NoFrequencyForLimit : isHigh ? new ReadHigh(read, loss.Hertz) : null,
            ProvesOnlyInside = how.Frequency is null ? NoFrequency : null,
        };
    }

    private static Limit Own(Written<Quantity> own, Quantity? low, string? place, ReadingConditions how) => new(
        place is null ? LimitKind.Delivery : LimitKind.Circuit, new Interval(low, own.Value), place ?? "the part's own limit", new(() => $"at most {own.Text}, as written"), "the record")
    {
        Remarks = how.Frequency is null ? [NoFrequency] : [],
    };

    /// <summary>The limit of dissipation factor that applies, or null when none is known.</summary>
    public static Limit? Loss(IMarkedPart part, ReadingConditions how)
    {
        if (LossLimit.Of(part) is not { } loss)
        {
            return null;
        }

        var factor = how.IsNew || !part.Kind.Value.IsElectrolytic ? 1m : WornFactor;
        var upper = new Quantity(loss.Value * factor, Dimension.Ratio);
        var match = how.Frequency is { } read ? MeasuringConditions.Match(read.Value, loss.Hertz) : FrequencyMatch.Different;
        LazyText? cannot = match != FrequencyMatch.Different ? null
            : how.Frequency is null ? NoFrequency
            : new OtherFrequency(how.Frequency!.Value, loss.Hertz);
        return new Limit(
            factor == 1m ? LimitKind.Delivery : LimitKind.EndOfLife,
            new Interval(null, upper),
            LazyText.Of(loss, static loss => loss.Origin),
            factor == 1m ? LazyText.Of(loss, static loss => loss.Arithmetic) : new WornLoss(loss, upper),
            factor == 1m ? LazyText.Of(loss, static loss => loss.Source) : LazyText.Of(loss, static loss => loss.Source + WornSource))
        {
            ProvesOnlyOutside = cannot,
            ProvesOnlyInside = cannot,
            Remarks = match == FrequencyMatch.Near ? [NearFrequency] : [],
        };
    }

    private sealed class EsrArithmetic(LossLimit loss, decimal hertz, decimal farads, Quantity upper, bool isNew) : LazyText
    {
        protected override string Write() =>
            $"{loss.Arithmetic}; {LossFactor.EsrLimit(loss.Value, hertz, farads).Value.Arithmetic}" + (isNew ? string.Empty : $"; worn part: 2 x = {QuantityText.Format(upper, 4)}");
    }

    private sealed class ReadHigh(Quantity read, decimal limitHertz) : LazyText
    {
        protected override string Write() =>
            $"ESR at {QuantityText.Format(read)} is smaller than at {QuantityText.Format(new Quantity(limitHertz, Dimension.Frequency))}, where the limit holds";
    }

    private sealed class WornLoss(LossLimit loss, Quantity upper) : LazyText
    {
        protected override string Write() => $"{loss.Arithmetic}; worn part: 2 x = {QuantityText.Format(upper, 4)}";
    }

    private sealed class OtherFrequency(Quantity read, decimal limitHertz) : LazyText
    {
        protected override string Write() =>
            $"the limit holds at {QuantityText.Format(new Quantity(limitHertz, Dimension.Frequency))} and the reading was taken at {QuantityText.Format(read)}";
    }
}
