namespace Ohmstead.Report.Html;

/// <summary>What a page has around its content when it stands alone in one file: its style is inside, and it loads nothing.</summary>
/// <param name="Title">The title, shown by the browser outside the page.</param>
/// <param name="Style">The style.</param>
/// <param name="Language">The language of the page, such as <c>en</c>.</param>
public sealed record LonePage(string Title, InlineStyle Style, string Language = "en")
{
    /// <summary>Writes the whole page.</summary>
    /// <param name="buffer">Where to; it is emptied first.</param>
    /// <param name="content">What the page is about, handed to <paramref name="body"/>.</param>
    /// <param name="body">Writes what stands in the body.</param>
    public void Write<T>(PageBuffer buffer, T content, Action<HtmlWriter, T> body)
    {
        buffer.Clear();
        var html = new HtmlWriter(buffer);
        html.DocumentType();
        using (html.Open(Tag.Html).With(TextAttribute.Lang, Language))
        {
            using (html.Open(Tag.Head))
            {
                html.Open(Tag.Meta).With(FixedAttribute.Utf8).Close();
                html.Open(Tag.Meta).Allowing(Style).Close();
                html.Open(Tag.Meta).With(FixedAttribute.NoReferrer).Close();
                html.Open(Tag.Meta).With(FixedAttribute.Viewport).Close();
                html.Open(Tag.Title).Text(Title);
                html.Open(Tag.Style).Rules(Style);
            }

            using (html.Open(Tag.Body))
            {
                body(html, content);
            }
        }

        html.Finish();
    }
}
