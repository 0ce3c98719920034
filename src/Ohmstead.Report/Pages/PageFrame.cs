using System.Globalization;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>What stands above and below the content of every page.</summary>
public static class PageFrame
{
    /// <summary>The file name of the style sheet, at the root of the report.</summary>
    public const string StyleSheet = "report.css";

    /// <summary>Writes a page into a buffer.</summary>
    public static void Write<T>(PageBuffer buffer, ReportContext context, string title, int levelsUp, T content, Action<HtmlWriter, T> body) =>
        new HtmlPage(title, LocalLink.ToFile(StyleSheet, levelsUp)).Write(buffer, (context, levelsUp, content, body), static (html, all) =>
        {
            if (all.levelsUp > 0)
            {
                using var trail = html.Open(Tag.Nav, ClassName.Trail);
                html.Open(Tag.A).To(LocalLink.ToFile("index.html", all.levelsUp)).Text(all.context.Workshop.Collection.Name);
            }

            using (html.Open(Tag.Main))
            {
                all.body(html, all.content);
            }

            Foot(html, all.context);
        });

    /// <summary>A heading with an anchor.</summary>
    public static void Heading(HtmlWriter html, string id, string text) => html.Open(Tag.H2).With(ElementId.Of(IdPrefix.Section, id)).Text(text);

    /// <summary>One row of a facts list, left out when there is nothing to say.</summary>
    public static void Fact(HtmlWriter html, string name, string? value)
    {
        if (!string.IsNullOrEmpty(value))
        {
            html.Open(Tag.Dt).Text(name);
            html.Open(Tag.Dd).Text(value);
        }
    }

    /// <summary>The head row of a table.</summary>
    public static void Head(HtmlWriter html, params ReadOnlySpan<string> columns)
    {
        using var head = html.Open(Tag.THead);
        using var row = html.Open(Tag.Tr);
        foreach (var column in columns)
        {
            html.Open(Tag.Th).With(FixedAttribute.ScopeColumn).Text(column);
        }
    }

    private static void Foot(HtmlWriter html, ReportContext context)
    {
        using var foot = html.Open(Tag.Footer, ClassName.Colophon);
        if (context.Workshop.Collection.IsInvented)
        {
            html.Open(Tag.P, ClassName.Invented).Text("Everything in this collection is invented: places, makers, part series, initials and readings.");
        }

        html.Open(Tag.P).Text(SafetyNotice.Defer);
        html.Open(Tag.P).Text(string.Create(CultureInfo.InvariantCulture, $"Written by Ohmstead {context.Version} as of {context.Today:yyyy-MM-dd}. Every verdict is computed from the records; open one to see its limit, its arithmetic and its source."));
    }
}
