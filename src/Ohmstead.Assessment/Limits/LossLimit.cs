using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The largest dissipation factor that applies to a part, with what tells it in words when somebody reads them.</summary>
/// <param name="value">The factor.</param>
/// <param name="hertz">The frequency it holds at.</param>
internal abstract class LossLimit(decimal value, decimal hertz)
{
    private const decimal ElectrolyticHertz = 120m;
    private const decimal OthersHertz = 1_000m;

    /// <summary>The factor.</summary>
    internal decimal Value => value;

    /// <summary>The frequency it holds at.</summary>
    internal decimal Hertz => hertz;

    /// <summary>Where it comes from.</summary>
    internal abstract string Origin { get; }

    /// <summary>How it was reached.</summary>
    internal abstract string Arithmetic { get; }

    /// <summary>The paper behind it.</summary>
    internal abstract string Source { get; }

    /// <summary>The limit of a part: its own, or that of its type; null when none is known.</summary>
    internal static LossLimit? Of(IMarkedPart part)
    {
        var kind = part.Kind.Value;
        if (part.LossFactorLimit is { } own)
        {
            return new Own(own, HertzOf(kind));
        }

        if (part.Capacitance is not { Value.Value: var farads })
        {
            return null;
        }

        return kind.DriesOut ? part.RatedVoltage is { } rated ? OfSeries(LossFactorSeries.General105, rated.Value.Value, farads) : null
            : kind == PartKinds.Tantalum ? Tantalum.LossFactorLimit(farads).Is(out var tantalum, out _) ? new OfTantalum(tantalum) : null
            : FilmFigures.Of(kind) is { } film ? new OfFilm(film)
            : null;
    }

    private static decimal HertzOf(PartKind kind) => kind.IsElectrolytic ? ElectrolyticHertz : FilmFigures.Of(kind)?.LossFactorHertz ?? OthersHertz;

    // The three readings of the +0.02 rule differ for some values; the strict one is used and the text says so.
    private static ElectrolyticSeries? OfSeries(LossFactorSeries series, decimal ratedVolts, decimal farads) =>
        series.ColumnFrom(ratedVolts) is { } column && LossFactorSeries.StrictFrom(column.LossFactor, farads).Is(out var strict, out _) ? new(series, column, farads, strict) : null;

    private sealed class Own(Written<Quantity> own, decimal hertz) : LossLimit(own.Value.Value, hertz)
    {
        internal override string Origin => "the part's own dissipation factor limit";

        internal override string Arithmetic => $"tan delta at most {own.Text}, as written";

        internal override string Source => "the record";
    }

    private sealed class ElectrolyticSeries(LossFactorSeries series, LossFactorColumn column, decimal farads, decimal strict) : LossLimit(strict, series.Hertz)
    {
        internal override string Origin => $"the type's usual limit ({series.Name}, {QuantityText.Format(new Quantity(column.RatedVolts, Dimension.Voltage))})";

        internal override string Arithmetic => series.LimitFrom(column.LossFactor, farads).Value.Arithmetic;

        internal override string Source => series.Source.Text;
    }

    private sealed class OfTantalum(Worked<decimal> limit) : LossLimit(limit.Value, ElectrolyticHertz)
    {
        internal override string Origin => "the type's usual limit (solid tantalum)";

        internal override string Arithmetic => limit.Arithmetic;

        internal override string Source => limit.Source.Text;
    }

    private sealed class OfFilm(DielectricFigures figures) : LossLimit(figures.LossFactorLimit, figures.LossFactorHertz)
    {
        internal override string Origin => $"the type's usual limit ({figures.Dielectric})";

        internal override string Arithmetic => $"tan delta at most {QuantityText.Format(new Quantity(figures.LossFactorLimit, Dimension.Number))} at {QuantityText.Format(new Quantity(figures.LossFactorHertz, Dimension.Frequency))}";

        internal override string Source => figures.Source.Text;
    }
}
