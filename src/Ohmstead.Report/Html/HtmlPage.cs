namespace Ohmstead.Report.Html;

/// <summary>What every page has around its content.</summary>
/// <param name="Title">The title, shown by the browser outside the page.</param>
/// <param name="StyleSheet">The style sheet, seen from the page.</param>
/// <param name="Language">The language of the page, such as <c>en</c>.</param>
public sealed record HtmlPage(string Title, LocalLink StyleSheet, string Language = "en")
{
    /// <summary>What stands before the words of <see cref="Says"/> in the head of a page.</summary>
    public const string StartOfSays = "<meta name=description property=og:description content=\"";

    /// <summary>The script beside the pages, or null. The page is whole without it.</summary>
    public LocalLink? Script { get; init; }

    /// <summary>Files beside the pages that hold the same for programs.</summary>
    public IReadOnlyList<Alternate> Alternates { get; init; } = [];

    /// <summary>The page that this one leads on to, or null.</summary>
    public LocalLink? LeadsTo { get; init; }

    /// <summary>How many folders below the root of the report the page stands.</summary>
    public int LevelsUp { get; init; }

    /// <summary>The small picture that a browser shows beside the title, or null.</summary>
    public LocalLink? Icon { get; init; }

    /// <summary>The title where there is little room.</summary>
    public string ShortTitle { get; init; } = Title;

    /// <summary>One sentence of what the page says, for lists of results and messages in which its address stands; or null.</summary>
    public string? Says { get; init; }

    /// <summary>The whole address of the page, where its site is known; or null.</summary>
    public string? Address { get; init; }

    /// <summary>The whole address of a picture of what the page is about, or null.</summary>
    public string? Picture { get; init; }

    /// <summary>Writes the whole page. The page forbids itself frames, everything from elsewhere, and any script but the file beside
    /// it.</summary>
    /// <param name="buffer">Where to; it is emptied first.</param>
    /// <param name="content">What the page is about, handed to <paramref name="body"/>.</param>
    /// <param name="body">Writes what stands in the body.</param>
    public void Write<T>(PageBuffer buffer, T content, Action<HtmlWriter, T> body)
    {
        buffer.Clear();
        var html = new HtmlWriter(buffer);
        html.DocumentType();
        using (html.Open(Tag.Html).With(TextAttribute.Lang, Language).With(TextAttribute.Sheet, Title))
        {
            WriteHead(html);
            using (html.Open(Tag.Body))
            {
                body(html, content);
            }
        }

        html.Finish();
    }

    private void WriteHead(HtmlWriter html)
    {
        using var head = html.Open(Tag.Head);
        html.Open(Tag.Meta).With(FixedAttribute.Utf8).Close();
        html.Open(Tag.Meta).With(FixedAttribute.ContentPolicy).Close();
        html.Open(Tag.Meta).With(FixedAttribute.NoReferrer).Close();
        html.Open(Tag.Meta).With(FixedAttribute.Viewport).Close();
        html.Open(Tag.Meta).With(FixedAttribute.ColorScheme).Close();
        if (LeadsTo is not null)
        {
            html.Open(Tag.Meta).LeadingTo(LeadsTo).Close();
        }

        html.Open(Tag.Title).Text(Title);
        if (Says is not null)
        {
            html.About(Says, ShortTitle, Address, Picture);
        }

        if (Icon is not null)
        {
            html.Icon(Icon);
        }

        html.Open(Tag.Link).StyleSheet(StyleSheet).Close();
        for (var other = 0; other < Alternates.Count; other++)
        {
            html.Alternate(Alternates[other], LevelsUp);
        }

        if (Script is not null)
        {
            html.Script(Script);
        }
    }
}
