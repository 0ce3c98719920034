using Ohmstead.Report.Html;

namespace Ohmstead.Report.Addresses;

/// <summary>A place of a page at which something is told once, for those who are led there.</summary>
/// <param name="Name">What was read there: C12.</param>
/// <param name="Id">Its anchor.</param>
/// <param name="Day">The day of the reading, or null when the place stands for a part and not for one of its readings.</param>
internal readonly record struct PageAnchor(string Name, ElementId Id, string? Day = null)
{
    /// <summary>Writes the way there.</summary>
    public void Link(HtmlWriter html)
    {
        using var link = html.Open(Tag.A).To(Id);
        html.Text(Name);
        if (Day is not null)
        {
            html.Text($" of {Day}");
        }
    }
}
