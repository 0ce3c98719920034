using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Report.Pictures;

/// <summary>
/// The scale of the strip of one reading. Limits stand at the same place on every strip, so that strips below each other can be compared. Between two
/// limits the scale is linear. With one limit it is linear from nought, as long as the reading can be drawn so; else a step is a factor of ten.
/// </summary>
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

    private const decimal Decade = 24m;
    private const decimal Middle = 48m;

    // Half the width of a shape: nearer to the end it would be cut.
    private const decimal Half = 5m;

    // A shape inside never touches the stroke of a limit, and one outside neither: the two never look alike.
    private const decimal Clear = 5m;

    /// <summary>Places a reading.</summary>
    /// <param name="limits">The limits that govern; none is allowed.</param>
    /// <param name="reading">The reading, in the unit of the limits.</param>
    /// <param name="uncertainty">Its expanded uncertainty, or null when it is not known.</param>
    /// <param name="nominal">The nominal value, or null.</param>
    /// <param name="outcome">What the reading says.</param>
    /// <param name="before">The reading of the part that sat there before, or null; it has a say in the scale.</param>
    public static StripDrawing Of(Interval limits, decimal reading, decimal? uncertainty, decimal? nominal, VerdictOutcome outcome, decimal? before = null)
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
            return new(band, Middle, Middle, Middle, null, false, false);
        }

        var scale = new Placing(band, limits.Lower?.Value ?? 0m, limits.Upper?.Value ?? 0m, reading, before ?? reading);
        var exact = scale.At(reading);
        var isBeyond = exact is < 0m or > Wide;
        var at = Short(Apart(band, outcome, Math.Clamp(exact, Half, Wide - Half)));
        var (low, high) = uncertainty is { } u && !isBeyond ? (Short(Math.Clamp(scale.At(reading - u), 0m, Wide)), Short(Math.Clamp(scale.At(reading + u), 0m, Wide))) : (at, at);
        if (high - low <= 2m * Half)
        {
            (low, high) = (at, at);
        }

        return new(band, at, low, high, nominal is { } wanted && scale.At(wanted) is var mark and >= 0m and <= Wide ? Short(mark) : null, scale.IsDecades, isBeyond)
        {
            Before = before is { } earlier ? Short(Math.Clamp(scale.At(earlier), Half, Wide - Half)) : null,
            IsBeforeBeyond = before is { } far && scale.At(far) is (< 0m or > Wide),
        };
    }

    /// <summary>A place on a drawing as it is written: to a tenth of a pixel, without a nought at the end.</summary>
    public static decimal Short(decimal place) => Math.Round(place, 1) / 1.0000000000000000000000000000m;

    private static decimal Apart(StripBand band, VerdictOutcome outcome, decimal at) => (outcome, band) switch
    {
        (VerdictOutcome.Inside, StripBand.Between) => Math.Clamp(at, Lower + Clear, Upper - Clear),
        (VerdictOutcome.Inside, StripBand.AtMost) => Math.Min(at, Upper - Clear),
        (VerdictOutcome.Inside, StripBand.AtLeast) => Math.Max(at, Lower + Clear),
        (VerdictOutcome.Outside, StripBand.AtMost) => Math.Max(at, Upper + Clear),
        (VerdictOutcome.Outside, StripBand.AtLeast) => Math.Min(at, Lower - Clear),
        (VerdictOutcome.Outside, _) => at < Middle ? Math.Min(at, Lower - Clear) : Math.Max(at, Upper + Clear),
        _ => at,
    };

    private readonly struct Placing
    {
        private readonly decimal from;
        private readonly decimal place;
        private readonly decimal unit;
        private readonly decimal pixels;

        internal Placing(StripBand band, decimal lower, decimal upper, decimal reading, decimal before)
        {
            (from, place) = band == StripBand.AtMost ? (upper, Upper) : (lower, Lower);
            (unit, pixels) = band switch
            {
                StripBand.Between => (upper - lower, Upper - Lower),
                StripBand.AtMost => (Math.Abs(upper), Upper),
                _ => (Math.Abs(lower), Lower),
            };
            if (unit <= 0m)
            {
                unit = Math.Abs(reading - from);
            }

            IsDecades = from > 0m && reading > 0m && before > 0m && (WantsDecades(band, reading) || WantsDecades(band, before));
        }

        internal bool IsDecades { get; }

        private bool WantsDecades(StripBand band, decimal value) => band switch
        {
            StripBand.AtMost => value < from / 10m || value > 1.25m * from,
            StripBand.AtLeast => value > 4m * from,
            _ => false,
        };

        internal decimal At(decimal value)
        {
            if (IsDecades)
            {
                return value <= 0m ? -Wide : place + (Decade * (decimal)Math.Clamp(Math.Log10((double)value) - Math.Log10((double)from), -10, 10));
            }

            // The ends first: what lies far beyond would not fit into a number when divided.
            const decimal ends = 8m;
            return unit <= 0m ? place
                : value <= from - (ends * unit) ? -Wide
                : value >= from + (ends * unit) ? 2m * Wide
                : place + (pixels * ((value - from) / unit));
        }
    }
}
