using System.Globalization;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Drawings;

/// <summary>
/// A reading as a small drawing: its limits, its nominal value, its uncertainty, and itself by a shape that says what it says. The words
/// and numbers stand beside it.
/// </summary>
internal static class ReadingStrip
{
    /// <summary>Writes the strip of the reading that a verdict is about.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="verdict">The verdict.</param>
    /// <param name="before">The verdict on the part that sat there before, drawn as a cross on the same scale; or null.</param>
    /// <param name="isAlone">True where the reading does not stand in words beside it.</param>
    public static void Write(HtmlWriter html, Verdict verdict, Verdict? before = null, bool isAlone = false)
    {
        // A bound or a word has no place on a scale: its shape stands alone, without limits, and the words beside it tell the rest.
        var limits = verdict.Exact is null ? default : verdict.Limit?.Interval ?? default;
        var nominal = verdict.Limit?.Nominal?.Value;
        var drawing = StripScale.For(
            limits,
            verdict.Exact?.Value ?? 0m,
            verdict.Uncertainty?.Value,
            nominal,
            verdict.Outcome,
            before?.Exact?.Value
        );
        using var strip = html.Open(Tag.Svg);
        Title(html, strip, verdict, isAlone);
        var isNominalShown = Limits(html, drawing);
        if (drawing.Before is { } earlier)
        {
            html.Open(Tag.Use).Using(SharedShape.Before).With(NumberAttribute.X, earlier).Close();
        }

        Break(html, drawing);
        Span<char> strokes = stackalloc char[128];
        if (Strokes(drawing, strokes, isNominalShown) is > 0 and var length)
        {
            html.Open(Tag.Path).With(TextAttribute.PathData, strokes[..length]).Close();
        }

        html.Open(Tag.Use).Using(ShapeOf(verdict.Outcome)).With(NumberAttribute.X, drawing.At).Close();
    }

    // The limits, and with them the nominal value where it stands in one of its usual places.
    private static bool Limits(HtmlWriter html, StripDrawing drawing)
    {
        if (BandOf(drawing.Band, drawing.IsDecades) is not { } band)
        {
            return false;
        }

        var (shape, hasNominal) = drawing.Band == StripBand.Between ? StripShapes.Around(drawing.Nominal) : (band, false);
        html.Open(Tag.Use).Using(shape).Close();
        return hasNominal;
    }

    // Beyond the strip: two slanting strokes that break it.
    private static void Break(HtmlWriter html, StripDrawing drawing)
    {
        var end =
            drawing.IsBeyond ? drawing.At
            : drawing.IsBeforeBeyond ? drawing.Before
            : null;
        if (end is not null)
        {
            html.Open(Tag.Use).Using(end < StripScale.Lower ? SharedShape.BrokenBelow : SharedShape.BrokenAbove).Close();
        }
    }

    /// <summary>The shape of an outcome.</summary>
    public static SharedShape ShapeOf(VerdictOutcome outcome) =>
        outcome switch
        {
            VerdictOutcome.Inside => SharedShape.Inside,
            VerdictOutcome.Outside => SharedShape.Outside,
            VerdictOutcome.Undecided => SharedShape.Undecided,
            VerdictOutcome.ProvesNothing => SharedShape.Silent,
            _ => SharedShape.Alone,
        };

    // For those who hear the page, what no words near it say: all that a strip of a verdict shows stands in its line and in its working.
    private static void Title(HtmlWriter html, Element strip, Verdict verdict, bool isAlone)
    {
        if (verdict.Exact is not null && !isAlone)
        {
            strip.With(FixedAttribute.RoleNone);
            return;
        }

        strip.With(FixedAttribute.RoleImage);
        using var title = html.Open(Tag.Title);
        html.Text(
            verdict.Exact is null ? "no figure, so no place on a scale"
            : verdict.Uncertainty is { } band ? $"{verdict.Reading.Text} ± {QuantityText.Format(band, 3)}"
            : verdict.Reading.Text
        );
    }

    /// <summary>The shape of the limits there are.</summary>
    public static SharedShape? BandOf(StripBand band, bool isDecades = false) =>
        band switch
        {
            StripBand.Between => SharedShape.Between,
            StripBand.AtMost => isDecades ? SharedShape.AtMostInDecades : SharedShape.AtMost,
            StripBand.AtLeast => isDecades ? SharedShape.AtLeastInDecades : SharedShape.AtLeast,
            _ => null,
        };

    // Nominal value: a short stroke from below. Uncertainty: a line with ends.
    private static int Strokes(StripDrawing drawing, Span<char> room, bool isNominalShown)
    {
        var length = 0;
        if (!isNominalShown && drawing.Nominal is { } middle)
        {
            room.TryWrite(CultureInfo.InvariantCulture, $"M{middle} 10v4", out length);
        }

        if (drawing.High > drawing.Low)
        {
            room[length..].TryWrite(CultureInfo.InvariantCulture, $"M{drawing.Low} 7H{drawing.High}", out var line);
            length += line;
            length += drawing.Low > 0m ? Stop(drawing.Low, room[length..]) : 0;
            length += drawing.High < StripScale.Wide ? Stop(drawing.High, room[length..]) : 0;
        }

        return length;
    }

    private static int Stop(decimal place, Span<char> room)
    {
        room.TryWrite(CultureInfo.InvariantCulture, $"M{place} 4v6", out var length);
        return length;
    }
}
