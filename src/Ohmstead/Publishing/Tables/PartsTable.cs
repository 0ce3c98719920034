using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using static Ohmstead.Publishing.Tables.SharedKeys;

namespace Ohmstead.Publishing.Tables;

/// <summary>Every place of every board.</summary>
internal static class PartsTable
{
    private static readonly string[] OutcomeWords = [.. Enum.GetValues<VerdictOutcome>().Select(VerdictWords.Describe)];

    /// <summary>Its columns.</summary>
    public static DataColumns<(string Board, PlaceHistory Place)> Columns { get; } =
        new(
            "part row",
            "One place of a board, and what sits there.",
            "{ board: SP-0007, part: C12, what: tantalum 10 µF, value: 0.00001, unit: F, sits: original }",
            new(Board, row => row.Board),
            new(Key.Id("part", "The reference designator.", "C12").Needed(), row => row.Place.Part.Ref.Value),
            new(Key.Text("what", "What belongs there.", "tantalum 10 µF ±10 % 35 V").Needed(), row => row.Place.What),
            new(Figures.Marked, row => Figures.Of(MarkingLimits.Nominal(row.Place.Part.Values))),
            new(Figures.Unit, row => Figures.UnitOf(MarkingLimits.Nominal(row.Place.Part.Values)?.Dimension)),
            new(Figures.Low, row => Figures.Limit(Marked(row.Place.Part.Values)?.Lower)),
            new(Figures.High, row => Figures.Limit(Marked(row.Place.Part.Values)?.Upper)),
            new(Word("sits", ["original", "replacement", "empty"], "What sits there now.").Needed(), row => row.Place.IsEmpty ? "empty"
                : row.Place.FittedBy is null ? "original"
                : "replacement"),
            new(Key.Id("lot", "The lot that sits there.", "L-031"), row => row.Place.IsEmpty ? null : row.Place.FittedBy?.Lot?.Value),
            new(Key.Date("changed", "The day on which the place was last changed.", "2026-03-14"), row =>
                Day(row.Place.FittedOn?.Date.Value)
            ),
            new(Word("outcome", OutcomeWords, "What the readings of what sits there say together; absent when there are none."), row =>
                Outcome(row.Place)
            ),
            new(Key.Text("decided", "What a person decided about it.", "keep"), row => row.Place.Decision?.What.Text),
            new(Key.Text("because", "Why.", "inside its limit at working temperature"), row => row.Place.Decision?.Because.Value),
            new(
                Key.Text(
                    "decision_doubt",
                    "Why the decision does not hold, where it does not.",
                    "decided before the reading of 2026-10-03, which it does not answer"
                ),
                row => DecisionWords.Doubt(row.Place)
            )
        );

    /// <summary>The places of a board.</summary>
    public static IEnumerable<(string Board, PlaceHistory Place)> Rows(BoardAssessment board) =>
        board.Places.Select(place => (board.Board.Id.Value, place));

    /// <summary>What the marked tolerance allows of the marked value.</summary>
    internal static Interval? Marked(IMarkedPart part) => MarkingLimits.Delivery(part, MarkingLimits.Nominal(part))?.Interval;

    private static string? Outcome(PlaceHistory place) =>
        place.Standing.Length == 0 && place.PassedTest is null
            ? null
            : VerdictWords.Describe(
                Outcomes.Together(place.Standing, null) is var together && place.PassedTest == false ? VerdictOutcome.Outside
                : place is { PassedTest: true, Standing.Length: 0 } ? VerdictOutcome.Inside
                : together
            );
}
