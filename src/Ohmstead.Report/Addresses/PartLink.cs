using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Addresses;

/// <summary>The reference of a part, leading to its row on the page of its board where there is one.</summary>
internal static class PartLink
{
    /// <summary>Writes it.</summary>
    public static void Write(HtmlWriter html, BoardAssessment board, string name)
    {
        if (board.Place(name) is not null)
        {
            html.Open(Tag.A).To(ElementId.For(IdPrefix.Part, name)).Text(name);
        }
        else
        {
            html.Text(name);
        }
    }
}
