using Ohmstead.Report.Html;

namespace Ohmstead.Report.Drawings;

/// <summary>What drawings with two scales have in common: a frame with what it shows in words, strokes, labels and rooms.</summary>
internal static class Plot
{
    /// <summary>Starts a drawing that is read as one picture.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="viewBox">What it covers.</param>
    /// <param name="title">Its name.</param>
    /// <param name="description">What it shows, in words that do without it.</param>
    public static Element Open(HtmlWriter html, string viewBox, string title, string description)
    {
        var drawing = html.Open(Tag.Svg, ClassName.Plot).With(TextAttribute.ViewBox, viewBox).With(FixedAttribute.RoleImage);
        html.Open(Tag.Title).Text(title);
        html.Open(Tag.Desc).Text(description);
        return drawing;
    }

    /// <summary>Writes a label that starts at a point.</summary>
    public static void Label(HtmlWriter html, decimal x, decimal y, string words) =>
        html.Open(Tag.Text).With(NumberAttribute.X, x).With(NumberAttribute.Y, y).Text(words);

    /// <summary>Writes a label that ends at a point.</summary>
    public static void LabelBefore(HtmlWriter html, decimal x, decimal y, string words) =>
        html.Open(Tag.Text, ClassName.End).With(NumberAttribute.X, x).With(NumberAttribute.Y, y).Text(words);

    /// <summary>Writes strokes.</summary>
    public static void Strokes(HtmlWriter html, string path, ClassName? style = null)
    {
        var strokes = html.Open(Tag.Path);
        if (style is not null)
        {
            strokes.With(style);
        }

        strokes.With(TextAttribute.PathData, path).Close();
    }

    /// <summary>Writes a rectangle between two corners, given in any order; at least a stroke wide.</summary>
    public static void Room(HtmlWriter html, decimal x1, decimal y1, decimal x2, decimal y2) =>
        html.Open(Tag.Rect, ClassName.Room)
            .With(NumberAttribute.X, Math.Min(x1, x2))
            .With(NumberAttribute.Y, Math.Min(y1, y2))
            .With(NumberAttribute.Width, Math.Max(1m, Math.Abs(x2 - x1)))
            .With(NumberAttribute.Height, Math.Max(1m, Math.Abs(y2 - y1)))
            .Close();
}
