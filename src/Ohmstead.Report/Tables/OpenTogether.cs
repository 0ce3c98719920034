using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>Readings of a visit that prove nothing for one reason, which stands above, and whose limits are worked out elsewhere on the
/// page: named together, each with its figures and its own address.</summary>
/// <param name="page">The board on its page.</param>
/// <param name="how">How the readings of the visit were taken.</param>
/// <param name="reasons">The reasons that stand above.</param>
internal sealed class OpenTogether(BoardOnPage page, HowTaken how, SharedReasons reasons)
{
    private readonly BoardAssessment board = page.Board;

    /// <summary>Whether nothing has to be told of a reading but its figures.</summary>
    public bool Holds(AssessedReading assessed)
    {
        var reading = assessed.Reading;
        return assessed is { EmptiedOn: null, Verdicts: [{ Outcome: VerdictOutcome.ProvesNothing } verdict] }
            && reading is { Part: not null, Point: null, Lot: null, Piece: null, Result: null, Note: null }
            && reasons.Tell(verdict)
            && !SharedReasons.Stands(board, assessed, verdict)
            && page.Working.IsOnlyFigures(verdict)
            && PartNotes.Frequency(verdict) is null
            && CorrectionWords.Told(assessed) is null
            && PointNotes.Compute(board, assessed).Count == 0
            && PartNotes.Compute(board, assessed, verdict).Count == 0;
    }

    /// <summary>Writes a line for those that read the same quantity in the same way.</summary>
    public void Write(ImmutableArray<AssessedReading> readings)
    {
        var html = page.Html;
        foreach (
            var alike in readings.GroupBy(reading =>
                (reading.Verdicts[0].Measured, UncertaintyWords.Of(reading.Verdicts[0])!.Value.Error, how.Own(reading.Reading))
            )
        )
        {
            var (measured, error, taken) = alike.Key;
            using var line = html.Open(Tag.P).Toned(ClassName.Told, VerdictOutcome.ProvesNothing);
            html.Text($"{VerdictWords.Describe(VerdictOutcome.ProvesNothing)}: {VerdictWords.Describe(measured)} (");
            html.Text(taken.Length == 0 ? string.Empty : $"{taken}; ");
            html.Text($"a = {error}; limits worked out with the parts unless told): ");
            var between = string.Empty;
            foreach (var reading in alike)
            {
                html.Text(between);
                One(html, reading.Reading.Part!.Value, reading.Verdicts[0]);
                between = "; ";
            }
        }
    }

    private void One(HtmlWriter html, string part, Verdict verdict)
    {
        using (var link = html.Open(Tag.A).To(ElementId.For(IdPrefix.Part, part)))
        {
            if (page.Anchors.Find(verdict) is { } anchor)
            {
                link.With(anchor);
            }

            html.Text(part);
        }

        html.Text($" {verdict.Reading.Text}, ");
        VerdictCell.InShort(html, verdict.LimitInWords!);
        if (page.Working.WorkedOut(verdict.Limit!) is { } place && (place.Name != part || place.Day is not null))
        {
            html.Text(" as at ");
            place.Link(html);
        }

        html.Text($", {SharedWorking.Room(verdict.Margin!.Value)}, U = {UncertaintyWords.Of(verdict)!.Value.Expanded}");
    }
}
