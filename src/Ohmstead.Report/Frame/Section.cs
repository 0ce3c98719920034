using Ohmstead.Report.Html;

namespace Ohmstead.Report.Frame;

/// <summary>A section of a page: the heading in the margin, the content beside it.</summary>
internal readonly ref struct Section
{
    private readonly Element section;
    private readonly Element content;

    private Section(Element section, Element content)
    {
        this.section = section;
        this.content = content;
    }

    /// <summary>Starts a section.</summary>
    /// <param name="html">The page.</param>
    /// <param name="id">The name of its anchor.</param>
    /// <param name="heading">Its heading.</param>
    /// <param name="remark">A line under the heading, or null.</param>
    public static Section Open(HtmlWriter html, string id, string heading, string? remark = null)
    {
        var anchor = ElementId.For(IdPrefix.Section, id);
        var whole = html.Open(Tag.Section).LabelledBy(anchor);
        using (html.Open(Tag.Header))
        {
            html.Open(Tag.H2).With(anchor).Text(heading);
            if (remark is not null)
            {
                html.Open(Tag.P, ClassName.Fine).Text(remark);
            }
        }

        return new(whole, html.Open(Tag.Div, ClassName.Content));
    }

    /// <summary>Ends it.</summary>
    public void Dispose()
    {
        content.Dispose();
        section.Dispose();
    }
}
