using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;
using Ohmstead.Report.Html;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Pages;

/// <summary>The bench, day by day, in order: what was found, read, decided and done.</summary>
internal static class BenchLog
{
    private static readonly Column[] Columns = ["Of", new("How", IsPlain: true), new("Verdicts", IsPlain: true)];

    /// <summary>Writes the log.</summary>
    public static void Write(HtmlWriter html, BoardAssessment board, SharedWorking working, ReadingAnchors anchors)
    {
        if (board.Visits.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "bench", "At the bench", board.Visits.Length == 1 ? "one visit" : $"{board.Visits.Length} visits, the first one first");
        var places = VisitAnchors.Of(board.Visits);
        for (var order = 0; order < board.Visits.Length; order++)
        {
            Visit(html, board, working, anchors, places[order], order);
        }
    }

    private static void Visit(HtmlWriter html, BoardAssessment board, SharedWorking working, ReadingAnchors anchors, ElementId place, int order)
    {
        var visit = board.Visits[order];
        using var section = html.Open(Tag.Section, ClassName.Visit).With(place);
        html.Open(Tag.H3).Text(PageFrame.Joined(visit.Date.Text, visit.By?.Value, visit.Instrument is { } instrument ? "with " + instrument.Value : null, visit.RoomTemperature?.Text));
        if (visit.Note is { } note)
        {
            html.Open(Tag.P).Text(note.Value);
        }

        if (visit.Powered is { } powered)
        {
            html.Open(Tag.P).Text($"Powered: {powered.Value}");
        }

        if (visit.Found.Length > 0)
        {
            using var found = html.Open(Tag.Ul);
            foreach (var finding in visit.Found)
            {
                using var item = html.Open(Tag.Li);
                html.Text("Found at ");
                BoardPage.Reference(html, board, finding.At.Value);
                html.Text($": {finding.What.Value} ({finding.Severity.Text}" + (finding.Severity.Value is ObservedSeverity.Major or ObservedSeverity.Safety && board.Findings.Any(known => known.IsOpen && ReferenceEquals(known.Finding, finding)) ? ", still open)" : ")"));
            }
        }

        var readings = board.Readings.Where(reading => reading.VisitOrder == order).ToArray();
        if (readings.Length > 0)
        {
            using var table = Ledger.Open(html, "Readings of " + visit.Date.Text, Columns);
            using var body = html.Open(Tag.TBody);
            foreach (var reading in readings)
            {
                Reading(html, table, board, working, anchors, reading);
            }
        }

        Lines(html, board, visit);
        if (visit.Proofs.Length > 0)
        {
            html.Open(Tag.P).Text($"Proved or tried: {string.Join(", ", visit.Proofs.Select(proof => proof.Point.Value))}.");
        }
    }

    private static void Reading(HtmlWriter html, Ledger table, BoardAssessment board, SharedWorking working, ReadingAnchors anchors, AssessedReading assessed)
    {
        var reading = assessed.Reading;
        var bare = anchors.Of(reading);
        using var row = bare is null ? html.Open(Tag.Tr) : html.Open(Tag.Tr).With(bare);
        using (table.Head())
        {
            if (reading.Part is { } part)
            {
                BoardPage.Reference(html, board, part.Value);
            }

            if (reading.Point is { } point)
            {
                html.Text($" {point.Value}");
            }

            if (reading.Lot is { } lot)
            {
                html.Text($" lot {lot.Value}");
            }

            if (reading.Piece is { } piece)
            {
                html.Text($" piece {piece.Value}");
            }
        }

        How(html, table, reading);
        using var cell = table.Cell(2);
        // A verdict that still stands has its working in the row of its part: once is enough on a page.
        var standing = assessed.Place is { } place && board.Place(place.Ref.Value) is { } history ? history.Standing : [];
        foreach (var verdict in assessed.Verdicts)
        {
            if (Stands(standing, verdict))
            {
                VerdictCell.Line(html, verdict, assessed.Place!.Ref.Value, anchors.Of(verdict));
            }
            else
            {
                var anchor = anchors.Of(verdict);
                VerdictCell.Write(html, working, verdict, anchor is null ? null : new((reading.Part ?? reading.Point ?? reading.Lot)?.Value ?? string.Empty, anchor, assessed.Visit.Date.Text), anchor);
            }
        }

        NoteLines.Write(html, working, PointNotes.Of(board, assessed));
        foreach (var verdict in assessed.Verdicts)
        {
            // What a frequency is off by stands in its own verdict.
            if (verdict.Measured != Measured.Frequency)
            {
                NoteLines.Write(html, working, PartNotes.Of(board, assessed, verdict));
            }
        }

        if (assessed.Verdicts.Length == 0)
        {
            foreach (var value in reading.Values)
            {
                html.Open(Tag.P).Text($"{VerdictWords.Of(value.Measured)} {value.Value.Text}");
            }
        }

        if (assessed.EmptiedOn is { } emptied)
        {
            html.Open(Tag.P).Text($"judged against nothing: the place was empty since {emptied.Date.Text}");
        }

        if (reading.Result is { } result)
        {
            using var line = html.Open(Tag.P);
            VerdictMark.Test(html, result.Value == TestResult.Pass);
        }

        if (reading.Note is { } note)
        {
            html.Open(Tag.P).Text(note.Value);
        }
    }

    private static bool Stands(ImmutableArray<Verdict> standing, Verdict verdict)
    {
        for (var i = 0; i < standing.Length; i++)
        {
            if (ReferenceEquals(standing[i], verdict))
            {
                return true;
            }
        }

        return false;
    }

    // How it was taken. The ordinary way goes without saying.
    private static void How(HtmlWriter html, Ledger table, Reading reading)
    {
        using var cell = table.Cell(1);
        var commas = new Commas(html);
        commas.Next(reading.StateWord);
        commas.Next(reading.Circuit is { Value: var circuit } ? Words(circuit) : null);
        commas.Next(reading.Frequency?.Text);
        commas.Next(reading.Temperature?.Text);
        if (reading.Instrument is { } instrument)
        {
            commas.Next().Text($"with {instrument.Value}");
        }

        if (reading.AtVoltage is { } at)
        {
            commas.Next().Text($"at {at.Text}");
        }

        if (reading.Bias is { } bias)
        {
            commas.Next().Text($"under {bias.Text} of bias");
        }

        if (reading.After is { } after)
        {
            commas.Next().Text($"after {after.Text}");
        }

        commas.Next(reading.Method?.Value);
    }

    private static void Lines(HtmlWriter html, BoardAssessment board, BenchVisit visit)
    {
        if (visit.Decided.Length + visit.Work.Length == 0)
        {
            return;
        }

        using var list = html.Open(Tag.Ol);
        foreach (var decision in visit.Decided)
        {
            using var item = html.Open(Tag.Li);
            html.Text("Decided");
            if (decision.Place is { } place)
            {
                html.Text(" for ");
                BoardPage.Reference(html, board, place.Value);
            }

            html.Text($": {decision.What.Text}, because {decision.Because.Value}");
        }

        foreach (var work in visit.Work)
        {
            using var item = html.Open(Tag.Li);
            if ((work.Part ?? work.At) is { } at)
            {
                BoardPage.Reference(html, board, at.Value);
                html.Text(" ");
            }

            html.Text(string.Join("; ", new[]
            {
                work.Did.Text + (work.With is { } with ? " with " + with.Value : string.Empty) + (work.Lot is { } lot ? " from lot " + lot.Value : string.Empty),
                work.Polarity.Length > 0 ? "way round by " + string.Join(" and ", work.Polarity.Select(evidence => evidence.Text)) : null,
                work.Dry is { } dry ? "to dry for " + dry.Text : null,
                work.Kept is { } kept ? "original: " + kept.Value : null,
                work.IsIrreversible ? "cannot be undone" : null,
                work.Note?.Value,
            }.OfType<string>()));
        }
    }

    private static string Words(Circuit circuit) => circuit switch { Circuit.In => "in circuit", Circuit.Out => "out of circuit" };
}
