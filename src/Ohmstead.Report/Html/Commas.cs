namespace Ohmstead.Report.Html;

/// <summary>Puts commas between things that may be there or not.</summary>
/// <remarks><code>
/// var commas = new Commas(html);
/// commas.Next().Text("as found");
/// commas.Next("in circuit");
/// </code></remarks>
/// <param name="html">Where to.</param>
internal ref struct Commas(HtmlWriter html)
{
    private bool isLater;

    /// <summary>Writes words, with a comma before them unless they are the first; nothing where there are none.</summary>
    public void Next(string? words)
    {
        if (!string.IsNullOrEmpty(words))
        {
            Next().Text(words);
        }
    }

    /// <summary>Writes the comma, unless nothing came before, for what is written next.</summary>
    public HtmlWriter Next()
    {
        if (isLater)
        {
            html.Text(", ");
        }

        isLater = true;
        return html;
    }
}
