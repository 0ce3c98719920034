using Ohmstead.Report.Html;

namespace Ohmstead.Report.Drawings;

/// <summary>
/// The shapes that the strips of a page share, drawn once: limits and the room between them, and one shape for each thing a reading can
/// say. A disc is inside, a standing diamond outside, a hollow square too close to call, a dotted ring proves
/// nothing, a small ring has no limit, a cross is the part that sat there before.
/// </summary>
internal static class StripShapes
{
    private const string Decades = "M0 4v6M24 4v6M48 4v6M72 4v6M96 4v6";

    // What limits leave, with its strokes; then the stroke of the nominal value, which is as dark as the reading. What a shape begins with
    // may be another one.
    private static readonly (SharedShape Shape, SharedShape? On, (ClassName? Style, string Path)[] Strokes)[] All =
    [
        (SharedShape.Between, null, [(ClassName.Room, "M24 2h48v10h-48z"), (ClassName.Band, "M24 7h48M24 0v14M72 0v14")]),
        (SharedShape.AroundNominal, SharedShape.Between, [(null, "M48 10v4")]),
        (SharedShape.AroundTenFifty, SharedShape.Between, [(null, "M32 10v4")]),
        (SharedShape.AroundTwentyEighty, SharedShape.Between, [(null, "M33.6 10v4")]),
        (SharedShape.AtMost, null, [(ClassName.Room, "M0 2h72v10H0z"), (ClassName.Band, "M0 7h72M72 0v14")]),
        (SharedShape.AtLeast, null, [(ClassName.Room, "M24 2h72v10h-72z"), (ClassName.Band, "M24 7h72M24 0v14")]),
        (SharedShape.AtMostInDecades, SharedShape.AtMost, [(ClassName.Band, Decades)]),
        (SharedShape.AtLeastInDecades, SharedShape.AtLeast, [(ClassName.Band, Decades)]),
        (SharedShape.Inside, null, [(ClassName.Full, "M-3.5 7a3.5 3.5 0 1 1 7 0a3.5 3.5 0 1 1-7 0z")]),
        (SharedShape.Outside, null, [(ClassName.Full, "M0 1l4.5 6l-4.5 6l-4.5-6z")]),
        (SharedShape.Undecided, null, [(ClassName.Hollow, "M-3.5 3.5h7v7h-7z")]),
        (SharedShape.Silent, null, [(ClassName.Dotted, "M-3.5 7a3.5 3.5 0 1 1 7 0a3.5 3.5 0 1 1-7 0z")]),
        (SharedShape.Alone, null, [(ClassName.Hollow, "M-2.5 7a2.5 2.5 0 1 1 5 0a2.5 2.5 0 1 1-5 0z")]),
        (SharedShape.Before, null, [(ClassName.Band, "M-3 3.5l6 7M-3 10.5l6-7")]),
        (SharedShape.BrokenBelow, null, [(null, "M12 12l2-10M15 12l2-10")]),
        (SharedShape.BrokenAbove, null, [(null, "M78 12l2-10M81 12l2-10")]),
    ];

    /// <summary>Writes the shapes that the page has shown; nothing of them is seen there. Comes last.</summary>
    public static void WriteShown(HtmlWriter html) => Write(html, html.HasShown);

    /// <summary>Writes all shapes, for what was written before; nothing of them is seen there.</summary>
    public static void Write(HtmlWriter html) => Write(html, static _ => true);

    /// <summary>The shape of two limits with their nominal value, where it stands in one of its usual places; else of the limits
    /// alone.</summary>
    public static (SharedShape Shape, bool HasNominal) Around(decimal? nominal) =>
        nominal switch
        {
            48m => (SharedShape.AroundNominal, true),
            32m => (SharedShape.AroundTenFifty, true),
            33.6m => (SharedShape.AroundTwentyEighty, true),
            _ => (SharedShape.Between, false),
        };

    private static void Write(HtmlWriter html, Func<SharedShape, bool> isWanted)
    {
        using var shapes = html.Open(Tag.Svg, ClassName.Shapes).With(FixedAttribute.AriaHidden);
        // Shapes that begin with another one come first.
        foreach (var (shape, on, strokes) in All.OrderBy(static one => one.On is null))
        {
            if (!isWanted(shape))
            {
                continue;
            }

            using var symbol = html.Open(Tag.Symbol).Named(shape);
            if (on is not null)
            {
                html.Open(Tag.Use).Using(on).Close();
            }

            foreach (var (style, path) in strokes)
            {
                Plot.Strokes(html, path, style);
            }
        }
    }
}
