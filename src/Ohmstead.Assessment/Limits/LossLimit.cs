using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The largest dissipation factor that applies to a part, with what tells it in words when somebody reads them.</summary>
/// <param name="value">The factor of a new part.</param>
/// <param name="worn">The factor that a worn part may reach.</param>
/// <param name="hertz">The frequency it holds at.</param>
internal abstract class LossLimit(decimal value, decimal worn, decimal hertz)
{
    private const decimal ElectrolyticHertz = 120m;
    private const decimal OthersHertz = 1_000m;
    private const decimal WornFactor = 2m;
    private const decimal LargestSeriesVolts = 450m;
    private const string WornSource = "; factor 2 for a worn part: common practice";

    /// <summary>The factor of a new part.</summary>
    internal decimal Value => value;

    /// <summary>The frequency it holds at.</summary>
    internal decimal Hertz => hertz;

    /// <summary>Whether a worn part must keep what a new one must.</summary>
    internal bool IsForNewAlone => worn == value;

    /// <summary>Whether the loss goes with frequency as that of foils and film does, so that a reading at another frequency can still
    /// decide.</summary>
    internal virtual bool IsStraight => true;

    /// <summary>Up to where some kinds of the type may go, and why a reading there does not decide; null where all are alike.</summary>
    internal virtual (decimal Value, LazyText Why)? Borne => null;

    /// <summary>Why a reading above it does not decide at all, where what the part may be of has no source; null where it does.</summary>
    internal virtual LazyText? NoSourceAbove => null;

    /// <summary>How a worn part's factor comes about.</summary>
    internal virtual string WornWords => "2 x";

    /// <summary>Where it comes from.</summary>
    internal abstract string Origin { get; }

    /// <summary>How it was reached.</summary>
    internal abstract string Arithmetic { get; }

    /// <summary>The paper behind it.</summary>
    internal abstract string Source { get; }

    /// <summary>The paper behind it for a worn part.</summary>
    internal virtual string SourceWorn => IsForNewAlone ? Source : Source + WornSource;

    /// <summary>The factor that applies.</summary>
    internal decimal For(bool isNew) => isNew ? value : worn;

    /// <summary>The limit of a part: its own, or that of its type; null when none is known.</summary>
    internal static LossLimit? For(IMarkedPart part)
    {
        if (part.LossFactorLimit is { } own)
        {
            return new Own(own, part.Kind.Value.IsElectrolytic ? WornFactor : 1m, OwnHertz(part), DryFigures.IsCeramicOrMica(part));
        }

        if (part.Capacitance is not { Value.Value: > 0m and var farads })
        {
            return null;
        }

        var kind = part.Kind.Value;
        if (kind.DriesOut)
        {
            return part.RatedVoltage is not { } rated
                ? null
                : OfSeries(
                    rated.Value.Value > LargestSeriesVolts ? LossFactorSeries.Above450Volts : LossFactorSeries.General105,
                    rated.Value.Value,
                    farads
                );
        }

        if (kind == PartKinds.Tantalum)
        {
            return Tantalum.LossFactorLimit(farads).Is(out var tantalum, out _) ? new OfTantalum(tantalum) : null;
        }

        if (SuppressorFigures.For(part) is { } figures)
        {
            return
                figures.LargestLossFactor(farads, isNew: true).Is(out var delivered, out _)
                && figures.LargestLossFactor(farads, isNew: false).Is(out var last, out _)
                ? new OfSuppressor(figures, delivered, last)
                : null;
        }

        return DryFigures.For(part) is { } dry && dry.LossFor(farads) is { } loss
            ? new OfDielectric(dry, loss, DryFigures.IsCeramicOrMica(part))
            : null;
    }

    private static decimal OwnHertz(IMarkedPart part) =>
        part.Kind.Value.IsElectrolytic ? ElectrolyticHertz
        : part.Capacitance is { } farads && DryFigures.For(part)?.LossFor(farads.Value.Value) is { } loss ? loss.Hertz
        : OthersHertz;

    // The three readings of the +0.02 rule differ for some values; the strict one is used and the text says so.
    private static ElectrolyticSeries? OfSeries(LossFactorSeries series, decimal ratedVolts, decimal farads) =>
        series.ColumnFrom(ratedVolts) is { } column && LossFactorSeries.StrictFrom(column.LossFactor, farads).Is(out var strict, out _)
            ? new(series, column, farads, strict)
            : null;

    private sealed class Own(Written<Quantity> own, decimal wornFactor, decimal hertz, bool isCeramicOrMica)
        : LossLimit(own.Value.Value, own.Value.Value * wornFactor, hertz)
    {
        internal override bool IsStraight => !isCeramicOrMica;

        internal override string Origin => "the part's own dissipation factor limit";

        internal override string Arithmetic => $"tan delta at most {own.Text}, as written";

        internal override string Source => "the record";
    }

    private sealed class ElectrolyticSeries(LossFactorSeries series, LossFactorColumn column, decimal farads, decimal strict)
        : LossLimit(strict, strict * WornFactor, series.Hertz)
    {
        internal override string Origin =>
            $"the type's usual limit ({series.Name}, {QuantityText.Format(new Quantity(column.RatedVolts, Dimension.Voltage))})";

        internal override string Arithmetic => series.LimitFrom(column.LossFactor, farads).Value.Arithmetic;

        internal override string Source => series.Source.Text;
    }

    private sealed class OfTantalum(Worked<decimal> limit) : LossLimit(limit.Value, limit.Value * WornFactor, ElectrolyticHertz)
    {
        internal override string Origin => "the type's usual limit (solid tantalum)";

        internal override string Arithmetic => limit.Arithmetic;

        internal override string Source => limit.Source.Text;
    }

    private sealed class OfSuppressor(SuppressionFigures figures, Worked<decimal> delivered, Worked<decimal> last)
        : LossLimit(delivered.Value, last.Value, SuppressionFigures.LossHertz)
    {
        private static readonly LazyText MayBePaper = "it is or may be of paper, whose loss is in no source at hand";

        internal override bool IsStraight => figures != SuppressionFigures.CeramicDisc;

        internal override LazyText? NoSourceAbove => figures.MayBePaper ? MayBePaper : null;

        internal override string WornWords => last.Arithmetic;

        internal override string Origin => $"the usual limit of a capacitor on the mains ({figures.Dielectric})";

        internal override string Arithmetic => $"tan delta at most {delivered.Arithmetic}";

        internal override string Source => delivered.Source.Text;

        internal override string SourceWorn => last.Source.Text;
    }

    private sealed class OfDielectric(DielectricFigures figures, DielectricLoss loss, bool isCeramicOrMica)
        : LossLimit(loss.Factor, figures.WornLossFactor ?? loss.Factor, loss.Hertz)
    {
        private static readonly LazyText SomeClassTwo = "discs of the Z5U and Y5V kind may have up to 0.09: write material: to decide";

        internal override bool IsStraight => !isCeramicOrMica;

        internal override (decimal Value, LazyText Why)? Borne =>
            figures == DielectricFigures.CeramicClass2 ? (DielectricFigures.CeramicZ5U.LossFactorLimit, SomeClassTwo) : null;

        internal override string WornWords => "by the test of endurance";

        internal override string Origin => $"the type's usual limit ({figures.Dielectric})";

        internal override string Arithmetic => $"tan delta at most {loss.Arithmetic}";

        internal override string Source => figures.Source.Text;

        internal override string SourceWorn => Source;
    }
}
