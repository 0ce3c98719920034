using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Report.Drawings;

/// <summary>
/// The scale of the strip of one reading. Limits stand at the same place on every strip, so that strips below each other can be compared.
/// Between two limits the scale is linear. With one limit it is linear from zero, as long as the reading can be drawn so; else a step is
/// a factor of ten.
/// </summary>
/// <remarks>Places are worked out in floating point: they end up at a tenth of a pixel and decide nothing. What a reading says was decided
/// before.</remarks>
public static class StripScale
{
    /// <summary>How wide a strip is.</summary>
    public const decimal Wide = 96m;

    /// <summary>How high.</summary>
    public const int High = 14;

    /// <summary>Where a lower limit stands.</summary>
    public const decimal Lower = 24m;

    /// <summary>Where an upper limit stands.</summary>
    public const decimal Upper = 72m;

    private const double Decade = 24;
    private const double Middle = 48;
    private const double End = (double)Wide;
    private const double LowerPlace = (double)Lower;
    private const double UpperPlace = (double)Upper;

    // What floating point may be off by.
    private const double Sliver = 1e-9;

    // How wide a shape is. Nearer to the end than half of that it would be cut.
    private const decimal Shape = 10m;
    private const double Half = (double)Shape / 2;

    // A shape inside never touches the stroke of a limit, and one outside neither: the two never look alike.
    private const double Clear = 5;

    /// <summary>Places a reading.</summary>
    /// <param name="limits">The limits that govern; none is allowed.</param>
    /// <param name="reading">The reading, in the unit of the limits.</param>
    /// <param name="uncertainty">Its expanded uncertainty, or null when it is not known.</param>
    /// <param name="nominal">The nominal value, or null.</param>
    /// <param name="outcome">What the reading says.</param>
    /// <param name="before">The reading of the part that sat there before, or null; it has a say in the scale.</param>
    public static StripDrawing For(
        Interval limits,
        decimal reading,
        decimal? uncertainty,
        decimal? nominal,
        VerdictOutcome outcome,
        decimal? before = null
    )
    {
        var band = (limits.Lower, limits.Upper) switch
        {
            ({ }, { }) => StripBand.Between,
            (null, { }) => StripBand.AtMost,
            ({ }, null) => StripBand.AtLeast,
            _ => StripBand.None,
        };
        if (band == StripBand.None)
        {
            return new(band, Wide / 2m, Wide / 2m, Wide / 2m, null, false, false);
        }

        var scale = new Placing(
            band,
            (double)(limits.Lower?.Value ?? 0m),
            (double)(limits.Upper?.Value ?? 0m),
            (double)reading,
            (double)(before ?? reading)
        );
        var exact = scale.At((double)reading);
        var isBeyond = exact is < -Sliver or > End + Sliver;
        var at = Apart(band, outcome, Math.Clamp(exact, Half, End - Half));
        var (low, high) =
            uncertainty is { } u && !isBeyond
                ? (Math.Clamp(scale.At((double)(reading - u)), 0, End), Math.Clamp(scale.At((double)(reading + u)), 0, End))
                : (at, at);
        var earlier = before is { } value ? scale.At((double)value) : (double?)null;
        var isWide = Short(high) - Short(low) > Shape;
        return new(
            band,
            Short(at),
            Short(isWide ? low : at),
            Short(isWide ? high : at),
            nominal is { } wanted && scale.At((double)wanted) is var mark and >= -Sliver and <= End + Sliver ? Short(mark) : null,
            scale.IsDecades,
            isBeyond
        )
        {
            Before = earlier is { } cross ? Short(Math.Clamp(cross, Half, End - Half)) : null,
            IsBeforeBeyond = earlier is < -Sliver or > End + Sliver,
        };
    }

    /// <summary>A place on a drawing as it is written: to a tenth of a pixel, without a zero at the end.</summary>
    public static decimal Short(decimal place) => Math.Round(place, 1) / 1.0000000000000000000000000000m;

    // The same of a place on the strip, made out of whole tenths: a page has some hundred.
    private static decimal Short(double place) =>
        (int)Math.Round(place * 10) is var tenths && tenths % 10 == 0
            ? tenths / 10
            : new decimal(lo: Math.Abs(tenths), mid: 0, hi: 0, isNegative: tenths < 0, scale: 1);

    private static double Apart(StripBand band, VerdictOutcome outcome, double at) =>
        (outcome, band) switch
        {
            (VerdictOutcome.Inside, StripBand.Between) => Math.Clamp(at, LowerPlace + Clear, UpperPlace - Clear),
            (VerdictOutcome.Inside, StripBand.AtMost) => Math.Min(at, UpperPlace - Clear),
            (VerdictOutcome.Inside, StripBand.AtLeast) => Math.Max(at, LowerPlace + Clear),
            (VerdictOutcome.Outside, StripBand.AtMost) => Math.Max(at, UpperPlace + Clear),
            (VerdictOutcome.Outside, StripBand.AtLeast) => Math.Min(at, LowerPlace - Clear),
            (VerdictOutcome.Outside, _) => at < Middle ? Math.Min(at, LowerPlace - Clear) : Math.Max(at, UpperPlace + Clear),
            _ => at,
        };

    private readonly struct Placing
    {
        private readonly double from;
        private readonly double place;
        private readonly double unit;
        private readonly double pixels;

        internal Placing(StripBand band, double lower, double upper, double reading, double before)
        {
            (from, place) = band == StripBand.AtMost ? (upper, UpperPlace) : (lower, LowerPlace);
            (unit, pixels) = band switch
            {
                StripBand.Between => (upper - lower, UpperPlace - LowerPlace),
                StripBand.AtMost => (Math.Abs(upper), UpperPlace),
                _ => (Math.Abs(lower), LowerPlace),
            };
            if (unit <= 0)
            {
                unit = Math.Abs(reading - from);
            }

            IsDecades = from > 0 && reading > 0 && before > 0 && (WantsDecades(band, reading) || WantsDecades(band, before));
        }

        internal bool IsDecades { get; }

        private bool WantsDecades(StripBand band, double value) =>
            band switch
            {
                StripBand.AtMost => value < from / 10 || value > 1.25 * from,
                StripBand.AtLeast => value > 4 * from,
                _ => false,
            };

        internal double At(double value)
        {
            if (IsDecades)
            {
                return value <= 0 ? -End : place + (Decade * Math.Clamp(Math.Log10(value) - Math.Log10(from), -10, 10));
            }

            // The ends first: what lies far beyond may lie as far as it likes.
            const double ends = 8;
            return unit <= 0 ? place
                : value <= from - (ends * unit) ? -End
                : value >= from + (ends * unit) ? 2 * End
                : place + (pixels * ((value - from) / unit));
        }
    }
}
