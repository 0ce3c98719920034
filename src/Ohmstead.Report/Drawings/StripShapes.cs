using Ohmstead.Report.Html;

namespace Ohmstead.Report.Drawings;

/// <summary>
/// The shapes that the strips of a page share, drawn once: limits and the room between them, and one shape for each thing a reading can
/// say. A disc is inside, a standing diamond outside, a hollow square too close to call, a dotted ring proves
/// nothing, a small ring has no limit, a cross is the part that sat there before.
/// </summary>
internal static class StripShapes
{
    private const string Below = "M0 2h72v10H0z";
    private const string Above = "M24 2h72v10h-72z";
    private const string Decades = "M0 4v6M24 4v6M48 4v6M72 4v6M96 4v6";

    /// <summary>Writes the shapes; nothing of them is seen there.</summary>
    public static void Write(HtmlWriter html)
    {
        using var shapes = html.Open(Tag.Svg, ClassName.Shapes).With(FixedAttribute.AriaHidden);
        Room(html, SharedShape.Between, "M24 2h48v10h-48z", "M24 7h48M24 0v14M72 0v14");
        Room(html, SharedShape.AtMost, Below, "M0 7h72M72 0v14");
        Room(html, SharedShape.AtLeast, Above, "M24 7h72M24 0v14");
        Room(html, SharedShape.AtMostInDecades, Below, "M0 7h72M72 0v14" + Decades);
        Room(html, SharedShape.AtLeastInDecades, Above, "M24 7h72M24 0v14" + Decades);
        One(html, SharedShape.Inside, "M-3.5 7a3.5 3.5 0 1 1 7 0a3.5 3.5 0 1 1-7 0z", ClassName.Full);
        One(html, SharedShape.Outside, "M0 1l4.5 6l-4.5 6l-4.5-6z", ClassName.Full);
        One(html, SharedShape.Undecided, "M-3.5 3.5h7v7h-7z", ClassName.Hollow);
        One(html, SharedShape.Silent, "M-3.5 7a3.5 3.5 0 1 1 7 0a3.5 3.5 0 1 1-7 0z", ClassName.Dotted);
        One(html, SharedShape.Alone, "M-2.5 7a2.5 2.5 0 1 1 5 0a2.5 2.5 0 1 1-5 0z", ClassName.Hollow);
        One(html, SharedShape.Before, "M-3 3.5l6 7M-3 10.5l6-7", ClassName.Band);
    }

    private static void Room(HtmlWriter html, SharedShape shape, string room, string strokes)
    {
        using var symbol = html.Open(Tag.Symbol).Named(shape).With(ClassName.Shape);
        html.Open(Tag.Path, ClassName.Room).With(TextAttribute.PathData, room).Close();
        html.Open(Tag.Path, ClassName.Band).With(TextAttribute.PathData, strokes).Close();
    }

    private static void One(HtmlWriter html, SharedShape shape, string path, ClassName style)
    {
        using var symbol = html.Open(Tag.Symbol).Named(shape).With(ClassName.Shape);
        html.Open(Tag.Path, style).With(TextAttribute.PathData, path).Close();
    }
}
