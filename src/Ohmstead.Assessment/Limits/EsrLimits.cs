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

    private static readonly LazyText NoFrequency = "the test frequency is not recorded";
    private static readonly LazyText NoFrequencyForLimit = "the test frequency is not recorded, so the reading cannot be held against a limit at 120 Hz";
    private static readonly LazyText NearFrequency = "read at 100 Hz against a limit at 120 Hz, or the other way: near enough to compare";

    /// <summary>The limit of ESR that applies, or null when none is known.</summary>
    public static Limit? Esr(PartValues part, string? place, ReadingConditions how)
    {
        if (part.EsrLimit is { } own)
        {
            return new Limit(
                place is null ? LimitKind.Delivery : LimitKind.Circuit, new Interval(part.EsrLow?.Value, own.Value), place ?? "the part's own limit", new(() => $"at most {own.Text}, as written"), "the record")
            {
                Remarks = how.Frequency is null ? [NoFrequency] : [],
            };
        }

        if (LossFactorOf(part) is not { } loss || part.Capacitance is not { } capacitance || capacitance.Value.Value <= 0)
        {
            return null;
        }

        var hertz = how.Frequency?.Value ?? loss.Hertz;
        var (compareAt, isHigh) = hertz > HighestComparableHertz ? (loss.Hertz, true) : (hertz, false);
        if (!LossFactor.EsrLimit(loss.Value, compareAt, capacitance.Value.Value).Is(out var worked, out _))
        {
            return null;
        }

        var factor = how.IsNew ? 1m : WornFactor;
        var upper = new Quantity(worked.Value * factor, Dimension.Resistance);
        return new Limit(
            how.IsNew ? LimitKind.Delivery : LimitKind.EndOfLife,
            new Interval(null, upper),
            loss.Origin,
            new(() => $"{loss.Arithmetic}; {worked.Arithmetic}" + (how.IsNew ? string.Empty : $"; worn part: 2 x = {QuantityText.Format(upper, 4)}")),
            new(() => $"{loss.Source}; {worked.Source.Text}" + (how.IsNew ? string.Empty : "; factor 2 for a worn part: common practice")))
        {
            ProvesOnlyOutside = how.Frequency is null ? NoFrequencyForLimit
                : isHigh ? new LazyText(() => $"ESR at {QuantityText.Format(how.Frequency!.Value)} is smaller than at {QuantityText.Format(new Quantity(loss.Hertz, Dimension.Frequency))}, where the limit holds")
                : null,
            ProvesOnlyInside = how.Frequency is null ? NoFrequency : null,
        };
    }

    /// <summary>The limit of dissipation factor that applies, or null when none is known.</summary>
    public static Limit? Loss(PartValues part, ReadingConditions how)
    {
        if (LossFactorOf(part) is not { } loss)
        {
            return null;
        }

        var factor = how.IsNew || !PartKind.IsElectrolytic(part.Kind.Value) ? 1m : WornFactor;
        var upper = new Quantity(loss.Value * factor, Dimension.Ratio);
        var match = how.Frequency is { } read ? MeasuringConditions.Match(read.Value, loss.Hertz) : FrequencyMatch.Different;
        LazyText? cannot = match != FrequencyMatch.Different ? null
            : how.Frequency is null ? NoFrequency
            : new(() => $"the limit holds at {QuantityText.Format(new Quantity(loss.Hertz, Dimension.Frequency))} and the reading was taken at {QuantityText.Format(how.Frequency!.Value)}");
        return new Limit(
            factor == 1m ? LimitKind.Delivery : LimitKind.EndOfLife,
            new Interval(null, upper),
            loss.Origin,
            factor == 1m ? loss.Arithmetic : new(() => $"{loss.Arithmetic}; worn part: 2 x = {QuantityText.Format(upper, 4)}"),
            factor == 1m ? loss.Source : new(() => $"{loss.Source}; factor 2 for a worn part: common practice"))
        {
            ProvesOnlyOutside = cannot,
            ProvesOnlyInside = cannot,
            Remarks = match == FrequencyMatch.Near ? [NearFrequency] : [],
        };
    }

    // The three readings of the +0.02 rule differ for some values; the strict one is used and the text says so.
    private static (decimal Value, decimal Hertz, LazyText Origin, LazyText Arithmetic, LazyText Source)? LossFactorOf(PartValues part)
    {
        if (part.LossFactorLimit is { } own)
        {
            var hertz = PartKind.IsElectrolytic(part.Kind.Value) ? 120m : Film(part.Kind.Value)?.Hertz ?? HighestComparableHertz;
            return (own.Value.Value, hertz, "the part's own dissipation factor limit", new LazyText(() => $"tan delta at most {own.Text}, as written"), "the record");
        }

        if (part.Capacitance is not { } capacitance)
        {
            return null;
        }

        switch (part.Kind.Value)
        {
            case "aluminium electrolytic" or "bipolar electrolytic" when part.RatedVoltage is { } rated:
                var series = LossFactorSeries.General105;
                var (_, above) = series.Neighbours(rated.Value.Value);
                var column = series.Columns.FirstOrDefault(c => c.RatedVolts == rated.Value.Value) ?? above;
                if (column is null)
                {
                    return null;
                }

                if (!series.LimitFrom(column.LossFactor, capacitance.Value.Value).Is(out var limit, out _))
                {
                    return null;
                }

                return (
                    limit.CompletedSteps,
                    limit.Hertz,
                    new(() => $"the type's usual limit ({series.Name}, {QuantityText.Format(new Quantity(column.RatedVolts, Dimension.Voltage))})"),
                    limit.Arithmetic,
                    new(() => limit.Source.Text));
            case "tantalum" when Tantalum.LossFactorLimit(capacitance.Value.Value).Is(out var tantalum, out _):
                return (tantalum.Value, 120m, "the type's usual limit (solid tantalum)", tantalum.Arithmetic, new LazyText(() => tantalum.Source.Text));
            default:
                return Film(part.Kind.Value);
        }
    }

    private static (decimal Value, decimal Hertz, LazyText Origin, LazyText Arithmetic, LazyText Source)? Film(string kind)
    {
        var figures = kind switch
        {
            "polyester film" => DielectricFigures.Polyester,
            "polypropylene film" => DielectricFigures.Polypropylene,
            "polystyrene film" => DielectricFigures.Polystyrene,
            "polycarbonate film" => DielectricFigures.Polycarbonate,
            "paper" => DielectricFigures.PaperInWaxOrOil,
            "metallised paper" => DielectricFigures.MetallisedPaper,
            _ => null,
        };
        return figures is null ? null
            : (
                figures.LossFactorLimit,
                figures.LossFactorHertz,
                new(() => $"the type's usual limit ({figures.Dielectric})"),
                new(() => $"tan delta at most {QuantityText.Format(new Quantity(figures.LossFactorLimit, Dimension.Number))} at {QuantityText.Format(new Quantity(figures.LossFactorHertz, Dimension.Frequency))}"),
                new(() => figures.Source.Text));
    }
}
