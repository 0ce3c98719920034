using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Html;
using Ohmstead.Report.Script;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Frame;

/// <summary>What stands above and below the content of every page.</summary>
public static class PageFrame
{
    /// <summary>Writes a page into a buffer.</summary>
    /// <param name="buffer">Where to.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="head">What the page says of itself.</param>
    /// <param name="content">What the page is about.</param>
    /// <param name="body">Writes it.</param>
    /// <param name="leadsTo">The page that this one leads on to, or null.</param>
    public static void Write<T>(
        PageBuffer buffer,
        ReportContext context,
        PageHead head,
        T content,
        Action<HtmlWriter, T> body,
        LocalLink? leadsTo = null
    ) =>
        (
            Page(context, head, StyleSheet.FileName) with
            {
                Script = LocalLink.ToFile(PageScript.FileName, head.LevelsUp),
                Alternates = [.. context.ForPrograms.Where(other => other.IsOnEveryPage)],
                LeadsTo = leadsTo,
            }
        ).Write(buffer, (context, head, content, body), static (html, all) =>
        {
            html.Open(Tag.A, ClassName.Skip).To(Main).Text("To what this page says");
            Trail(html, all.context, all.head);
            using (html.Open(Tag.Main).With(Main))
            {
                all.body(html, all.content);
            }

            Foot(html, all.context, all.head.LevelsUp);
        });

    /// <summary>What stands around the content of any page of the report, with what it says of itself.</summary>
    /// <param name="context">What every page knows.</param>
    /// <param name="head">What the page says of itself.</param>
    /// <param name="style">The file of its style, from the root of the report.</param>
    internal static HtmlPage Page(ReportContext context, PageHead head, string style) =>
        new(head.Title, LocalLink.ToFile(style, head.LevelsUp))
        {
            LevelsUp = head.LevelsUp,
            Icon = LocalLink.ToFile(PlateIcon.FileName, head.LevelsUp),
            ShortTitle = head.ShortTitle,
            Says = head.ShortSentence,
            // Nobody can follow a path without its site.
            Address = context.Published?.Of(LocalLink.ToFile(head.Path)),
            Picture = head.Picture is { } picture ? context.Published?.Of(LocalLink.ToFile(picture)) : null,
        };

    /// <summary>The heading of a page about one thing: its name as on a plate, then what it is.</summary>
    internal static void PlateHeading(HtmlWriter html, string name, string title)
    {
        using var heading = html.Open(Tag.H1);
        html.Open(Tag.Span, ClassName.Plate).Text(name);
        html.Text(" ");
        html.Open(Tag.Span).Text(title);
    }

    /// <summary>One row of a facts list, left out when there is nothing to say.</summary>
    internal static void Fact(HtmlWriter html, string name, string? value)
    {
        if (!string.IsNullOrEmpty(value))
        {
            using var pair = html.Open(Tag.Div);
            html.Open(Tag.Dt).Text(name);
            html.Open(Tag.Dd).Text(value);
        }
    }

    /// <summary>A number and its unit, set so that points stand below each other.</summary>
    internal static void Aligned(HtmlWriter html, Tag tag, string number) =>
        html.Open(tag, ClassName.Whole(number) ?? ClassName.Whole4).Text(number);

    internal static string Iso(DateOnly? date) => date is { } day ? IsoDate.Text(day) : string.Empty;

    /// <summary>The words that are there, with commas between.</summary>
    internal static string Joined(params ReadOnlySpan<string?> words)
    {
        var there = new List<string>(words.Length);
        foreach (var word in words)
        {
            if (!string.IsNullOrEmpty(word))
            {
                there.Add(word);
            }
        }

        return string.Join(", ", there);
    }

    // Where the words of the page begin, behind what is the same on all pages.
    private static ElementId Main { get; } = ElementId.For(IdPrefix.Section, "main");

    // The way to all pages is the same everywhere; the one that is shown is told.
    private static void Trail(HtmlWriter html, ReportContext context, PageHead head)
    {
        using var trail = html.Open(Tag.Nav, ClassName.Trail);
        html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Collection, head.LevelsUp)).Text(context.Workshop.Collection.Name);
        foreach (var (path, words) in SitePages.All)
        {
            html.Text(" ");
            var link = html.Open(Tag.A).To(LocalLink.ToFile(path, head.LevelsUp));
            (path == head.Path ? link.With(FixedAttribute.CurrentPage) : link).Text(words);
        }
    }

    private static void Foot(HtmlWriter html, ReportContext context, int levelsUp)
    {
        using var foot = html.Open(Tag.Footer, ClassName.Colophon);
        if (context.Workshop.Collection.IsInvented)
        {
            html.Open(Tag.P, ClassName.Invented)
                .Text("Everything in this collection is invented: places, makers, part series, initials and readings.");
        }

        html.Open(Tag.P).Text(SafetyNotice.Defer);
        if (context.ForPrograms.Count > 0)
        {
            using var line = html.Open(Tag.P);
            html.Open(Tag.A)
                .To(LocalLink.ToFile(SiteAddress.About, levelsUp, SiteAddress.ForPrograms))
                .Text("The same for programs: feed, tables, badges");
            html.Text(".");
        }

        html.Open(Tag.P)
            .Text(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Written by Ohmstead {context.Version} as of {context.Today:yyyy-MM-dd}. Every verdict is computed from the "
                        + $"records; open one to see its limit, its arithmetic and its source."
                )
            );
    }
}
