using System.Collections.Immutable;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>
/// The state of a board from evidence and dates. No board is fit to run while a failed reading stands unanswered, a safety item is open, work waits,
/// or its proof is older than its last work. A required point that was proved too close to call is not proved. A part read too close to call is not known
/// to be bad, and the board is proved by its points: the part is listed to be measured again and blocks nothing, unless people rely on it not to be hurt
/// (<see cref="PartKind.IsSafetyRelevant"/>) and nobody decided to keep it. A reading whose way of measuring can prove nothing is a note and no more.
/// Common practice.
/// </summary>
internal static class StateRules
{
    /// <summary>Every reason against 'fit to run', the weightiest first.</summary>
    internal static ImmutableArray<Reason> Reasons(BoardAssessment board, ImmutableArray<PointStanding> points, int lastWorkOrder)
    {
        if (board.Visits.Length == 0)
        {
            return WeightiestFirst(
                [.. Safety(board), .. Waits(board), new(BoardState.NotLookedAt, null, "nothing was looked at since it came", "inspect it, make it safe, measure as found")]);
        }

        return WeightiestFirst([.. Safety(board), .. Faults(board), .. Faults(points), .. Waits(board), .. Undecided(board), .. Proofs(board, lastWorkOrder)]);
    }

    // Those of one weight as they came.
    private static ImmutableArray<Reason> WeightiestFirst(ImmutableArray<Reason> reasons) => reasons.Length < 2 ? reasons : [.. reasons.OrderByDescending(reason => reason.State)];

    private static IEnumerable<Reason> Safety(BoardAssessment board) =>
        board.Hazards.Where(hazard => hazard.MustGo && hazard.MadeSafe is null)
            .Select(hazard => new Reason(BoardState.MakeSafe, hazard.Hazard.At?.Value, $"{hazard.Hazard.Kind.Text} not made safe", "remove it or make it safe, and record the work"))
            .Concat(board.OpenFindings.Where(finding => finding.Severity.Value == ObservedSeverity.Safety)
                .Select(finding => new Reason(BoardState.MakeSafe, finding.At.Value, finding.What.Value, "make it safe, and record the work there")));

    private static IEnumerable<Reason> Faults(BoardAssessment board)
    {
        foreach (var place in board.Places.Where(place => place.HasFailed && !place.IsKeptByDecision))
        {
            var failed = place.Standing.FirstOrDefault(verdict => verdict.Outcome == VerdictOutcome.Outside);
            yield return new(BoardState.FaultStands, place.Part.Ref.Value, failed?.Why ?? "its test failed", "replace it, measure it again, or decide with a reason");
        }

        foreach (var place in board.Places.Where(place => place.IsEmpty))
        {
            yield return new(BoardState.FaultStands, place.Part.Ref.Value, "the place is empty", "fit a part that was measured");
        }

        foreach (var finding in board.OpenFindings.Where(finding => finding.Severity.Value == ObservedSeverity.Major))
        {
            yield return new(BoardState.FaultStands, finding.At.Value, finding.What.Value, "answer it by work or by a decision with a reason");
        }

        foreach (var place in board.Places.Where(place => place is { IsToBeReplaced: true, HasFailed: false }))
        {
            yield return new(BoardState.FaultStands, place.Part.Ref.Value, $"decided to be replaced: {place.Decision!.Because.Value}", "replace it");
        }
    }

    private static IEnumerable<Reason> Faults(ImmutableArray<PointStanding> points) =>
        from point in points
        let fault = point.Fault
        where fault is not null
        select new Reason(BoardState.FaultStands, point.Name, fault, "find the fault, mend it, and measure it again there");

    private static IEnumerable<Reason> Undecided(BoardAssessment board) =>
        from place in board.Places
        where place is { IsUndecided: true, HasFailed: false, IsSafetyRelevant: true, IsKeptByDecision: false, IsToBeReplaced: false }
        let verdict = place.Standing.First(verdict => verdict.Outcome == VerdictOutcome.Undecided)
        select new Reason(
            BoardState.ProofDue, place.Part.Ref.Value, verdict.Why, "measure it so that it decides, or replace it; defer to local codes and licensed practice");

    private static IEnumerable<Reason> Waits(BoardAssessment board) =>
        board.OpenWaits.Select(wait => new Reason(
            BoardState.Waiting,
            null,
            $"waits since {wait.Since.Text} for {wait.For.Value}" + (wait.Blocks is { } blocks ? $", which blocks {blocks.Value}" : string.Empty),
            wait.Order is { } order ? $"see order {order.Value}" : "order it, or end the wait with a date"));

    private static IEnumerable<Reason> Proofs(BoardAssessment board, int lastWorkOrder)
    {
        var required = board.Points.Where(point => point.IsRequired).ToArray();
        foreach (var failed in FailedBesides(board, required, lastWorkOrder))
        {
            yield return failed;
        }

        if (required.Length == 0 && !board.Proofs.Any(proof => proof.Outcome == VerdictOutcome.Inside && proof.VisitOrder >= lastWorkOrder))
        {
            yield return new(BoardState.ProofDue, null, board.Proofs.Length == 0 ? "nothing proves it" : board.Proofs[^1].VisitOrder < lastWorkOrder ? Older(board) : "no proof passed", "prove it: supply voltages, ripple, a test of its function, hours of soak");
        }

        var latest = required.Select(point => (Point: point, Last: board.Proofs.LastOrDefault(proof => proof.Proof.Point.Value == point.Name.Value))).ToArray();
        var never = Names(latest.Where(pair => pair.Last is null));
        if (never.Length > 0)
        {
            yield return new(
                BoardState.ProofDue, Only(never), $"{Counted(never)} {(never.Length == 1 ? "was" : "were")} never proved", $"measure {never[0]} and record it under proof");
        }

        var older = latest.Where(pair => pair.Last is not null && pair.Last.VisitOrder < lastWorkOrder).ToArray();
        if (older.Length > 0)
        {
            var names = Names(older);
            var day = older.Max(pair => pair.Last!.Visit.Date.Value);
            yield return new(
                BoardState.ProofDue, Only(names), $"the proof of {string.Join(", ", names)} of {Iso(day)} is older than the last work of {Iso(board.LastWork)}", $"prove {names[0]} again");
        }

        foreach (var (point, last) in latest.Where(pair => pair.Last is not null && pair.Last.VisitOrder >= lastWorkOrder))
        {
            if (last!.Outcome == VerdictOutcome.Outside)
            {
                yield return Failed(last);
            }
            else if (last.Outcome != VerdictOutcome.Inside)
            {
                yield return new(BoardState.ProofDue, point.Name.Value, last.Verdicts.Length > 0 ? last.Verdicts[0].Why : $"{point.Name.Value} has no value and no result", "measure it so that it decides");
            }
        }
    }

    private static string[] Names(IEnumerable<(TestPoint Point, AssessedProof? Last)> pairs) => [.. pairs.Select(pair => pair.Point.Name.Value)];

    private static string? Only(string[] names) => names.Length == 1 ? names[0] : null;

    private static string Counted(string[] names) => (names.Length == 1 ? "point " : "points ") + string.Join(", ", names);

    // A failed test is a fault, whether the design asks for the test or not.
    private static IEnumerable<Reason> FailedBesides(BoardAssessment board, TestPoint[] required, int lastWorkOrder) =>
        board.Proofs.Where(proof => required.All(point => point.Name.Value != proof.Proof.Point.Value))
            .GroupBy(proof => proof.Proof.Point.Value, StringComparer.Ordinal)
            .Select(group => group.Last())
            .Where(last => last.Outcome == VerdictOutcome.Outside && last.VisitOrder >= lastWorkOrder)
            .Select(last => Failed(last));

    private static Reason Failed(AssessedProof last) => new(
        BoardState.FaultStands,
        last.Proof.Point.Value,
        last.Verdicts.FirstOrDefault(verdict => verdict.Outcome == VerdictOutcome.Outside)?.Why ?? $"{last.Proof.Point.Value} failed its test",
        "find the fault, mend it, prove it again");

    private static string Older(BoardAssessment board) => $"its proof is older than the last work of {Iso(board.LastWork)}";

    private static string Iso(DateOnly? date) => date is { } day ? IsoDate.Text(day) : "unknown";
}
