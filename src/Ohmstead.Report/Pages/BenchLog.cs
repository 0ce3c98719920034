using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>The bench, day by day, in order: what was found, read, decided and done.</summary>
/// <param name="page">The board on its page.</param>
internal sealed class BenchLog(BoardOnPage page)
{
    private readonly HtmlWriter html = page.Html;
    private readonly BoardAssessment board = page.Board;
    private readonly HashSet<Observation> open = page
        .Board.Findings.Where(static finding => finding.IsOpen)
        .Select(static finding => finding.Finding)
        .ToHashSet<Observation>(ReferenceEqualityComparer.Instance);

    /// <summary>Writes the log; nothing where nobody has been at the bench with it.</summary>
    public void Write()
    {
        if (board.Visits.Length == 0)
        {
            return;
        }

        var visits = board.Visits.Length == 1 ? "one visit" : $"{board.Visits.Length} visits, the first one first";
        using var section = Section.Open(html, "bench", "At the bench", visits);
        if (
            board.Readings.Any(reading =>
                reading.VisitOrder >= 0 && reading.Verdicts.Any(verdict => SharedReasons.Stands(board, reading, verdict))
            )
        )
        {
            html.Open(Tag.P, ClassName.Fine)
                .Text("What holds of a part now is told here in one line, and in full in the row of the part, to which its name leads.");
        }

        var places = VisitAnchors.For(board.Visits);
        var readings = board.Readings.ToLookup(static reading => reading.VisitOrder);
        for (var order = 0; order < board.Visits.Length; order++)
        {
            Visit(places[order], order, [.. readings[order]]);
        }
    }

    private void Visit(ElementId place, int order, ImmutableArray<AssessedReading> readings)
    {
        var visit = board.Visits[order];
        using var section = html.Open(Tag.Section, ClassName.Visit).With(place);
        var instrument = visit.Instrument is { } named ? "with " + named.Value : null;
        html.Open(Tag.H3).Text(PageFrame.Joined(visit.Date.Text, visit.By?.Value, instrument, visit.RoomTemperature?.Text));
        if (visit.Note is { } note)
        {
            html.Open(Tag.P).Text(note.Value);
        }

        if (visit.Powered is { } powered)
        {
            html.Open(Tag.P).Text($"Powered: {powered.Value}");
        }

        Found(visit);
        Readings(visit, readings);
        Lines(visit);
        if (visit.Proofs.Length > 0)
        {
            html.Open(Tag.P).Text($"Proved or tried: {string.Join(", ", visit.Proofs.Select(proof => proof.Point.Value))}.");
        }

        foreach (var proof in board.Proofs)
        {
            if (proof.VisitOrder == order && CorrectionWords.Told(proof) is { } corrected)
            {
                html.Open(Tag.P).Text($"{proof.Proof.Point.Value}: {corrected}");
            }
        }
    }

    private void Found(BenchVisit visit)
    {
        if (visit.Found.Length == 0)
        {
            return;
        }

        using var found = html.Open(Tag.Ul);
        foreach (var finding in visit.Found)
        {
            using var item = html.Open(Tag.Li);
            html.Text("Found at ");
            page.Link(finding.At.Value);
            html.Text($": {finding.What.Value} ({finding.Severity.Text}{(IsOpen(finding) ? ", still open" : string.Empty)})");
        }
    }

    private bool IsOpen(Observation finding) =>
        finding.Severity.Value is ObservedSeverity.Major or ObservedSeverity.Safety && open.Contains(finding);

    private void Readings(BenchVisit visit, ImmutableArray<AssessedReading> readings)
    {
        if (readings.Length == 0)
        {
            return;
        }

        var how = HowTaken.From(readings);
        var reasons = SharedReasons.From(board, readings);
        how.WriteCommon(html);
        reasons.Write(html);
        ImmutableArray<AssessedReading> rows = [.. readings.Where(reading => !WithParts.Holds(board, reading))];
        WithParts.Write(page, how, readings.RemoveRange(rows));
        OpenTogether together = new(page, how, reasons);
        ImmutableArray<AssessedReading> figures = [.. rows.Where(together.Holds)];
        together.Write(figures);
        rows = rows.RemoveRange(figures);
        if (rows.Length == 0)
        {
            return;
        }

        Column<AssessedReading> subject = new("Of", (_, reading) => Subject(reading.Reading));
        Column<AssessedReading> taken = new("How", (cell, reading) => cell.Text(how.Own(reading.Reading))) { IsPlain = true };
        Column<AssessedReading> verdicts = new("Verdicts", (_, reading) => Told(reading, reasons)) { IsPlain = true };
        var isTaken = rows.Any(reading => how.HasOwn(reading.Reading));
        new Ledger<AssessedReading>(isTaken ? [subject, taken, verdicts] : [subject, verdicts])
        {
            Anchor = reading => page.Anchors.Find(reading.Reading),
        }.Write(html, "Readings of " + visit.Date.Text, rows);
    }

    private void Told(AssessedReading reading, SharedReasons reasons)
    {
        Verdicts(reading, reasons);
        NotesAndRemarks(reading);
    }

    // What was read.
    private void Subject(Reading reading)
    {
        if (reading.Part is { } part)
        {
            page.Link(part.Value);
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

    private void Verdicts(AssessedReading assessed, SharedReasons reasons)
    {
        var reading = assessed.Reading;
        var of = (reading.Part ?? reading.Point ?? reading.Lot)?.Value ?? string.Empty;
        foreach (var verdict in assessed.Verdicts)
        {
            // A verdict that still stands has its working in the row of its part, to which the head of this row leads.
            if (SharedReasons.Stands(board, assessed, verdict))
            {
                VerdictCell.Line(html, verdict);
            }
            else
            {
                var anchor = page.Anchors.Find(verdict);
                var here = anchor is null ? (PageAnchor?)null : new(of, anchor, assessed.Visit.Date.Text);
                if (verdict.Outcome == VerdictOutcome.ProvesNothing)
                {
                    VerdictCell.Open(html, page.Working, verdict, here, anchor, reasons.Tell(verdict));
                }
                else
                {
                    VerdictCell.Write(html, page.Working, verdict, here, anchor, isReasonTold: reasons.Tell(verdict));
                }
            }
        }

        if (assessed.Verdicts.Length == 0)
        {
            foreach (var value in reading.Values)
            {
                html.Open(Tag.P).Text($"{VerdictWords.Describe(value.Measured)} {value.Value.Text}");
            }
        }
    }

    // What is told beside the verdicts of a reading.
    private void NotesAndRemarks(AssessedReading assessed)
    {
        NoteLines.Write(html, page.Working, PointNotes.Compute(board, assessed));
        foreach (var verdict in assessed.Verdicts)
        {
            // What a frequency is off by stands in its own verdict.
            if (verdict.Measured != Measured.Frequency)
            {
                NoteLines.Write(html, page.Working, PartNotes.Compute(board, assessed, verdict));
            }
        }

        if (assessed.EmptiedOn is { } emptied)
        {
            html.Open(Tag.P).Text($"judged against nothing: the place was empty since {emptied.Date.Text}");
        }

        if (assessed.Reading.Result is { } result)
        {
            using var line = html.Open(Tag.P);
            VerdictMark.Test(html, result.Value == TestResult.Pass);
        }

        if (CorrectionWords.Told(assessed) is { } corrected)
        {
            html.Open(Tag.P).Text(corrected);
        }

        if (assessed.Reading.Note is { } note)
        {
            html.Open(Tag.P).Text(note.Value);
        }
    }

    private void Lines(BenchVisit visit)
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
                page.Link(place.Value);
            }

            html.Text($": {decision.What.Text}, because {decision.Because.Value}");
        }

        foreach (var work in visit.Work)
        {
            using var item = html.Open(Tag.Li);
            if ((work.Part ?? work.At) is { } at)
            {
                page.Link(at.Value);
                html.Text(" ");
            }

            html.Text(
                string.Join(
                    "; ",
                    new[]
                    {
                        work.Did.Text
                            + (work.With is { } with ? " with " + with.Value : null)
                            + (work.Lot is { } lot ? " from lot " + lot.Value : null),
                        work.Polarity.Length > 0
                            ? "way round by " + string.Join(" and ", work.Polarity.Select(evidence => evidence.Text))
                            : null,
                        work.Dry is { } dry ? "to dry for " + dry.Text : null,
                        work.Kept is { } kept ? "original: " + kept.Value : null,
                        work.IsIrreversible ? "cannot be undone" : null,
                        work.Note?.Value,
                    }.OfType<string>()
                )
            );
            OtherEnd("taken from", work.TakenFrom);
            OtherEnd("went to", work.WentTo);
        }
    }

    // The way to the other board; where it has no page, what is written.
    private void OtherEnd(string words, Written<string>? end)
    {
        if (end is null)
        {
            return;
        }

        html.Text($"; {words} ");
        if (BoardPlace.Parse(end.Value) is { } there && page.Context.Boards.Contains(there.Board))
        {
            html.Open(Tag.A, ClassName.Reference).To(LocalLink.ToFile(SiteAddress.Board(there.Board), 1)).Text(end.Value);
        }
        else
        {
            html.Text(end.Value);
        }
    }
}
