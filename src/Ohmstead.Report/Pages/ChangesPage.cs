using System.Globalization;
using Ohmstead.Assessment.Changes;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>What changed since an earlier state of the collection, as for a release of it: what was rewritten of what was measured first,
/// then each board, then what boards share.</summary>
public static class ChangesPage
{
    // A hundred kilobytes is the most for a page; a board takes half of one in the mean.
    private const int MostBoards = 200;
    private const int MostLines = 40;

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, ChangesSince since) =>
        PageFrame.Write(
            buffer,
            context,
            new(SiteAddress.Changes, $"What changed since {since.Label}", ChangeLines.Counts(since.Changes) + "."),
            (context, since),
            static (html, asked) => Content(html, asked.context, asked.since)
        );

    /// <summary>Writes the line of the first page that leads to it.</summary>
    internal static void Mention(HtmlWriter html, ReportContext context)
    {
        if (context.Since is not { } since)
        {
            return;
        }

        using var line = html.Open(Tag.P);
        html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Changes)).Text($"What changed since {since.Label}");
        html.Text($": {ChangeLines.Counts(since.Changes)}.");
    }

    private static void Content(HtmlWriter html, ReportContext context, ChangesSince since)
    {
        var changes = since.Changes;
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            html.Open(Tag.H1).Text($"What changed since {since.Label}");
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(ChangeLines.Counts(changes) + ".");
            html.Open(Tag.P, ClassName.Fine).Text("Both states are judged on the day of this report, by the rules of this program.");
        }

        Part(html, "rewritten", "What was once measured and is not as it was", [.. ChangeLines.Rewritten(changes).Skip(1)]);
        for (var at = 0; at < Math.Min(MostBoards, changes.Boards.Length); at++)
        {
            Board(html, context, changes.Boards[at], at);
        }

        if (changes.Boards.Length > MostBoards)
        {
            html.Open(Tag.P)
                .Text(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{changes.Boards.Length - MostBoards} more boards differ and are not told here; the command that tells all is "
                            + $"ohmstead changes {since.Label}."
                    )
                );
        }

        Part(html, "shared", "What boards share", [.. ChangeLines.Shared(changes).Skip(1)]);
    }

    private static void Board(HtmlWriter html, ReportContext context, BoardChanges board, int at)
    {
        ChangeLine[] lines = [.. ChangeLines.Board(board)];
        var id = string.Create(CultureInfo.InvariantCulture, $"board-{at + 1}");
        // The heading says the number; what became of the board stands behind it.
        using var section = Section.Open(html, id, board.Number, lines[0].Text[board.Number.Length..].Trim());
        if (board.Now is not null && context.Boards.Contains(board.Number))
        {
            using var way = html.Open(Tag.P);
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Board(board.Number))).Text($"The page of {board.Number}");
        }

        List(html, lines.AsSpan(1));
    }

    private static void Part(HtmlWriter html, string id, string heading, ChangeLine[] lines)
    {
        if (lines.Length > 0)
        {
            using var section = Section.Open(html, id, heading);
            List(html, lines);
        }
    }

    private static void List(HtmlWriter html, ReadOnlySpan<ChangeLine> lines)
    {
        // What stands further in goes on with the line above it.
        var items = new List<string>();
        foreach (var line in lines)
        {
            if (line.Depth > 1 && items.Count > 0)
            {
                items[^1] += $"; {line.Text}";
            }
            else
            {
                items.Add(line.Text);
            }
        }

        if (items.Count == 0)
        {
            return;
        }

        using var list = html.Open(Tag.Ul);
        foreach (var item in items.Take(MostLines))
        {
            html.Open(Tag.Li).Text(item);
        }

        if (items.Count > MostLines)
        {
            html.Open(Tag.Li).Text(string.Create(CultureInfo.InvariantCulture, $"and {items.Count - MostLines} more"));
        }
    }
}
