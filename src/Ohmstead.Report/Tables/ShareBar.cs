using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>A share failed as a small drawing: a line from zero to all, a box where the true share may lie, a stroke at the share seen.
/// The words stand beside it.</summary>
internal static class ShareBar
{
    private const int Wide = 160;
    private const int High = 10;

    /// <summary>Writes the drawing.</summary>
    public static void Write(HtmlWriter html, FamilyStatistics family, ShareFailed share)
    {
        using var drawing = html.Open(Tag.Svg, ClassName.Bar).With(TextAttribute.ViewBox, "0 0 160 10").With(FixedAttribute.RoleImage);
        html.Open(Tag.Title).Text($"{family.Name.Text}: {FamilyWords.Share(family)}");
        html.Open(Tag.Desc).Text("A line from 0 to 100 % failed as found. The box is the 95 % interval, the stroke the share seen.");
        var (low, high) = (At(share.Low), At(share.High));
        html.Open(Tag.Rect)
            .With(NumberAttribute.X, low)
            .With(NumberAttribute.Y, 1)
            .With(NumberAttribute.Width, Math.Max(high - low, 1m))
            .With(NumberAttribute.Height, High - 2)
            .Close();
        html.Open(Tag.Line)
            .With(NumberAttribute.X1, 0)
            .With(NumberAttribute.Y1, High / 2)
            .With(NumberAttribute.X2, Wide)
            .With(NumberAttribute.Y2, High / 2)
            .Close();
        html.Open(Tag.Line)
            .With(NumberAttribute.X1, At(share.Share))
            .With(NumberAttribute.Y1, 0)
            .With(NumberAttribute.X2, At(share.Share))
            .With(NumberAttribute.Y2, High)
            .Close();
    }

    private static decimal At(double share) => Math.Round((decimal)share * Wide, 1);
}
