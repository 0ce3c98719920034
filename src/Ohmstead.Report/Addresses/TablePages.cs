using System.Globalization;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Addresses;

/// <summary>Something long that is told on several pages: what their files are called, and the links between them.</summary>
internal static class TablePages
{
    /// <summary>The file of a page, counted from 0. A tilde is in no name of a record, so a page can be mistaken for that of nothing
    /// else.</summary>
    public static string PathOf(string path, int page) =>
        page == 0 ? path + ".html" : string.Create(CultureInfo.InvariantCulture, $"{path}~{page + 1}.html");

    /// <summary>Writes the links; nothing where there is one page. A page is named by what it begins with: that is where somebody who looks
    /// for a name or a date would open it.</summary>
    /// <param name="html">The page.</param>
    /// <param name="path">The file of the first page without its ending, from the root of the report.</param>
    /// <param name="name">What the links are called, for those who do not see them.</param>
    /// <param name="labels">What each page begins with.</param>
    /// <param name="here">The page that is written.</param>
    public static void Links(HtmlWriter html, string path, string name, string[] labels, int here)
    {
        if (labels.Length == 1)
        {
            return;
        }

        using var nav = html.Open(Tag.Nav, ClassName.Pages).With(TextAttribute.AriaLabel, name);
        html.Text("From ");
        for (var page = 0; page < labels.Length; page++)
        {
            html.Text(page == 0 ? string.Empty : " ");
            if (page == here)
            {
                html.Open(Tag.B).Text(labels[page]);
            }
            else
            {
                html.Open(Tag.A).To(LocalLink.ToFile(PathOf(path, page), path.Count(c => c == '/'))).Text(labels[page]);
            }
        }
    }
}
