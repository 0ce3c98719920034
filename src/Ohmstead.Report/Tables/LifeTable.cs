using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Life;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Electronics.Life;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>When the lives of the wet electrolytics of a board may be used up, each with its working behind a fold.</summary>
/// <param name="page">The board on its page.</param>
internal sealed class LifeTable(BoardOnPage page)
{
    // What stands between the steps of an estimate.
    private const string Between = "; ";
    private readonly HtmlWriter html = page.Html;
    private readonly BoardAssessment board = page.Board;

    /// <summary>Writes the section, where at least one life can be estimated.</summary>
    public void Write()
    {
        var known = board.Lives.Count(life => life.Estimate.Is(out _, out _));
        if (known == 0)
        {
            return;
        }

        using var section = Section.Open(html, "life", "Life ahead", "estimates, not promises");
        html.Open(Tag.P).Text($"{RemainingLife.Meaning}.");
        var common = Common(board.Lives);
        var step = common.Count > 0 ? FirstStep(board.Lives) : null;
        if (common.Count > 0)
        {
            html.Open(Tag.P, ClassName.Fine).Text($"For all of them: {string.Join("; ", step is null ? common : [.. common, step])}.");
        }

        var scale = Scale(board.Lives, page.Context.Today);
        using (html.Open(Tag.P, ClassName.Fine))
        {
            html.Text($"The calendar runs from {PageFrame.Iso(scale.First)} to {PageFrame.Iso(scale.Last)}");
            html.Text(": a line while in use, a box where the life may be used up, a pointer at today.");
        }

        new Ledger<EstimatedLife[]>(
            new("Place", (_, row) => Places(row)),
            new("Since", row => row[0].Life.Start!.Words) { IsShort = true },
            new("Earliest", row => PageFrame.Iso(row[0].Estimate.Earliest)),
            new("Latest", row => PageFrame.Iso(row[0].Estimate.Latest)),
            new("On the calendar", (_, row) => Bar(scale, row)) { IsPlain = true },
            new("How it was reached", (_, row) => Working(row, common, step)) { IsPlain = true }
        ).Write(html, "Life ahead", Together());
        if (known < board.Lives.Length)
        {
            var without = string.Join(", ", board.Lives.Where(life => !life.Estimate.Is(out _, out _)).Select(life => life.Reference));
            using var line = html.Open(Tag.P, ClassName.Fine);
            html.Text($"{board.Lives.Length - known} of {board.Lives.Length} wet electrolytics here have no estimate, ");
            html.Text($"for want of a rated life or a date: {without}. What is measured of them is all that is known.");
        }
    }

    private IEnumerable<EstimatedLife> Estimated()
    {
        foreach (var life in board.Lives)
        {
            if (life.Estimate.Is(out var estimate, out _))
            {
                yield return new(life, estimate);
            }
        }
    }

    // Parts that went in on one day and have one span share a row: their calendars are the same.
    private IEnumerable<EstimatedLife[]> Together() =>
        Estimated()
            .GroupBy(row => (row.Life.Start!.Words, row.Life.Start.First, row.Estimate.Earliest, row.Estimate.Latest))
            .Select(same => same.ToArray());

    private static string[] Names(EstimatedLife[] row) => [.. row.Select(one => one.Life.Reference)];

    private void Places(EstimatedLife[] row)
    {
        var commas = new Commas(html);
        foreach (var (first, last) in PlaceRuns.Join(Names(row)))
        {
            commas.Next();
            page.Link(first);
            if (last != first)
            {
                html.Text(" to ");
                page.Link(last);
            }
        }
    }

    private void Bar(TimeScale scale, EstimatedLife[] row) =>
        LifeBar.Write(
            html,
            scale,
            PlaceRuns.Words(Names(row)),
            row[0].Life.Start!.First,
            row[0].Estimate.Earliest,
            row[0].Estimate.Latest,
            page.Context.Today
        );

    private static TimeScale Scale(ImmutableArray<WearOutLife> lives, DateOnly today)
    {
        var (first, last) = (today, today);
        foreach (var life in lives)
        {
            if (life.Estimate.Is(out var estimate, out _))
            {
                first = life.Start!.First < first ? life.Start.First : first;
                last = estimate.Latest > last ? estimate.Latest : last;
            }
        }

        return LifeBar.Scale(first, last);
    }

    // What every estimate was made from is told once.
    private static List<string> Common(ImmutableArray<WearOutLife> lives)
    {
        List<string>? common = null;
        var count = 0;
        foreach (var life in lives)
        {
            if (!life.Estimate.Is(out var estimate, out _))
            {
                continue;
            }

            count++;
            if (common is null)
            {
                common = [.. life.Inputs.Select(line => line.Text).Concat(estimate.Remarks).Distinct(StringComparer.Ordinal)];
            }
            else
            {
                common.RemoveAll(line => !Tells(life, estimate, line));
            }
        }

        return count > 1 ? common! : [];
    }

    // Where all of them begin with the same step, what it is; each still tells what follows, and names the source of both.
    private static string? FirstStep(ImmutableArray<WearOutLife> lives)
    {
        string? first = null;
        foreach (var life in lives)
        {
            if (!life.Estimate.Is(out var estimate, out _))
            {
                continue;
            }

            var end = estimate.Arithmetic.Text.IndexOf(Between, StringComparison.Ordinal);
            if (end < 0 || (first is not null && !estimate.Arithmetic.Text.AsSpan(..end).SequenceEqual(first)))
            {
                return null;
            }

            first ??= estimate.Arithmetic.Text[..end];
        }

        return first;
    }

    private static bool Tells(WearOutLife life, RemainingLife estimate, string line) =>
        life.Inputs.Any(given => given.Text == line) || estimate.Remarks.Contains(line, StringComparer.Ordinal);

    private void Working(EstimatedLife[] rows, List<string> common, string? step)
    {
        using var fold = html.Open(Tag.Details, ClassName.Working);
        html.Open(Tag.Summary).Text("arithmetic and source");
        using var list = html.Open(Tag.Ul);
        if (rows.Length == 1)
        {
            foreach (var line in Inputs(rows[0], common))
            {
                html.Open(Tag.Li).Text(line);
            }

            using (html.Open(Tag.Li))
            {
                html.Text(Steps(rows[0], step));
                page.Working.Sources.Cite(html, rows[0].Source);
            }
        }
        else
        {
            Several(rows, common, step);
        }

        foreach (var remark in rows.SelectMany(row => row.Estimate.Remarks).Distinct(StringComparer.Ordinal))
        {
            if (!common.Contains(remark))
            {
                html.Open(Tag.Li).Text(remark);
            }
        }
    }

    // A line for each part; how all of them end is told once, and so is the source that they share.
    private void Several(EstimatedLife[] rows, List<string> common, string? step)
    {
        var end = End(rows);
        var isOneSource = rows.All(row => row.Source == rows[0].Source);
        foreach (var row in rows)
        {
            using var item = html.Open(Tag.Li);
            html.Text($"{row.Life.Reference}: ");
            foreach (var line in Inputs(row, common))
            {
                html.Text($"{line}{Between}");
            }

            html.Text(Steps(row, step)[..^end]);
            if (!isOneSource)
            {
                page.Working.Sources.Cite(html, row.Source);
            }
        }

        if (end > 0 || isOneSource)
        {
            using var item = html.Open(Tag.Li);
            html.Text("each");
            html.Text(rows[0].Estimate.Arithmetic.Text.AsSpan(^end..));
            if (isOneSource)
            {
                page.Working.Sources.Cite(html, rows[0].Source);
            }
        }
    }

    // How long the common end of all workings is, from the hours a year on; nothing where they end in different ways.
    private static int End(EstimatedLife[] rows)
    {
        const string hours = ", at ";
        var first = rows[0].Estimate.Arithmetic.Text;
        var at = first.LastIndexOf(hours, StringComparison.Ordinal);
        return at > 0 && rows.All(row => row.Estimate.Arithmetic.Text.EndsWith(first[at..], StringComparison.Ordinal))
            ? first.Length - at
            : 0;
    }

    private static IEnumerable<string> Inputs(EstimatedLife row, List<string> common) =>
        row.Life.Inputs.Select(line => line.Text).Where(line => !common.Contains(line));

    private static ReadOnlySpan<char> Steps(EstimatedLife row, string? step) =>
        row.Estimate.Arithmetic.Text.AsSpan(step is null ? 0 : step.Length + Between.Length);

    private readonly record struct EstimatedLife(WearOutLife Life, RemainingLife Estimate)
    {
        public string Source => Estimate.Source.Text + (Estimate.OtherSource is { } other ? "; " + other.Text : string.Empty);
    }
}
