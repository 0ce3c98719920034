using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>Readings of a visit that still stand and of which the row of the part tells everything: named together, with their
/// figures.</summary>
internal static class WithParts
{
    /// <summary>Whether nothing has to be told of a reading but what the row of its part tells.</summary>
    public static bool Holds(BoardAssessment board, AssessedReading assessed)
    {
        var reading = assessed.Reading;
        return assessed.Verdicts.Length > 0
            && reading is { Part: not null, Point: null, Piece: null, Result: null, Note: null }
            && assessed.EmptiedOn is null
            && assessed.Verdicts.All(verdict =>
                verdict.Outcome == assessed.Verdicts[0].Outcome && SharedReasons.Stands(board, assessed, verdict)
            )
            && CorrectionWords.Told(assessed) is null
            && PointNotes.Compute(board, assessed).Count == 0
            && assessed.Verdicts.All(verdict => PartNotes.Compute(board, assessed, verdict).Count == 0);
    }

    /// <summary>Writes a line for those that say the same of the same quantities and were taken in the same way.</summary>
    public static void Write(BoardOnPage page, HowTaken how, ImmutableArray<AssessedReading> readings)
    {
        var html = page.Html;
        foreach (
            var alike in readings.GroupBy(reading =>
                (
                    reading.Verdicts[0].Outcome,
                    string.Join(", ", reading.Verdicts.Select(verdict => VerdictWords.Describe(verdict.Measured))),
                    how.Own(reading.Reading)
                )
            )
        )
        {
            var (outcome, measured, taken) = alike.Key;
            using var line = html.Open(Tag.P).Toned(ClassName.Told, outcome);
            html.Text($"{VerdictWords.Describe(outcome)} {measured}{(taken.Length == 0 ? string.Empty : $" ({taken})")}: ");
            var between = string.Empty;
            foreach (var reading in alike)
            {
                html.Text(between);
                page.Link(reading.Reading.Part!.Value);
                html.Text(reading.Reading.Lot is { } lot ? $" from lot {lot.Value}" : string.Empty);
                html.Text($" {string.Join(", ", reading.Verdicts.Select(verdict => verdict.Reading.Text))}");
                between = "; ";
            }
        }
    }
}
