using Ohmstead.Assessment.Boards;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>What would fit a place: out of the drawer, and else what to look for.</summary>
/// <param name="Board">The board.</param>
/// <param name="Reference">The place.</param>
/// <param name="What">What belongs there, in words.</param>
/// <param name="Assumptions">What was taken for granted because the record does not say it.</param>
/// <param name="Need">What to look for.</param>
/// <param name="Fitting">Lots that fit, the best first; those with doubts after those without.</param>
/// <param name="Together">Where no lot fits: two parts of a lot that together do.</param>
/// <param name="Refused">Lots that come near and do not fit, each with the reasons.</param>
public sealed record FitReport(
    string Board,
    string Reference,
    string What,
    IReadOnlyList<string> Assumptions,
    IReadOnlyList<NeedLine> Need,
    IReadOnlyList<FitCandidate> Fitting,
    IReadOnlyList<FitCandidate> Together,
    IReadOnlyList<FitCandidate> Refused)
{
    /// <summary>Looks through the drawer for a place of a board.</summary>
    public static FitReport Of(BoardAssessment board, PlaceHistory place, Drawer drawer) => Of(board.Board.Id.Value, place.Part.Ref.Value, FitPlace.Of(board, place), drawer);

    /// <summary>Looks through the drawer for a place, when the board is read no more.</summary>
    /// <param name="board">The number of the board.</param>
    /// <param name="reference">The place.</param>
    /// <param name="asked">What a part must fit.</param>
    /// <param name="drawer">What is left.</param>
    public static FitReport Of(string board, string reference, FitPlace asked, Drawer drawer)
    {
        FitCandidate[] judged = [.. drawer.Lots.Where(lot => FitJudge.MayFit(asked.Values, lot.Lot.Values)).Select(lot => One(asked, lot, drawer))];
        FitCandidate[] fitting = [.. Ranked(asked, judged.Where(one => one.Verdict.Outcome != ReasonWeight.Against))];
        return new(
            board,
            reference,
            PartWords.Describe(asked.Values),
            asked.Assumptions,
            PlaceNeed.Of(asked),
            fitting,
            fitting.Length > 0 ? [] : [.. Pairs(asked, drawer)],
            [.. Ranked(asked, judged.Where(one => one.Verdict.Outcome == ReasonWeight.Against))]);
    }

    private static FitCandidate One(FitPlace place, DrawerLot lot, Drawer drawer)
    {
        var verdict = FitJudge.Judge(place, drawer.Offer(lot));
        return new(lot.Doubts.Count == 0 ? verdict : new(verdict.Lot, FitJudge.Sorted([.. verdict.Reasons, .. lot.Doubts])), lot.Lot.Values, lot.Left);
    }

    // All of them have the voltage; the lowest that has it wastes least.
    private static IEnumerable<FitCandidate> Pairs(FitPlace place, Drawer drawer) => drawer.Lots
        .Where(lot => lot.Left >= 2 && lot.Doubts.All(doubt => doubt.Weight != ReasonWeight.Against) && PartKind.Family(lot.Lot.Values.Kind.Value) == PartFamily.Capacitor)
        .SelectMany(lot => TwoForOne.Of(place, drawer.Offer(lot)).Select(verdict => new FitCandidate(verdict, lot.Lot.Values, lot.Left)))
        .Where(pair => pair.Verdict.Outcome != ReasonWeight.Against)
        .OrderBy(pair => pair.Verdict.Doubts)
        .ThenBy(pair => pair.Values.RatedVoltage?.Value.Value ?? 0m)
        .ThenBy(pair => pair.Verdict.Lot, StringComparer.Ordinal);

    private static IEnumerable<FitCandidate> Ranked(FitPlace place, IEnumerable<FitCandidate> candidates) => FitJudge.Rank(place, candidates, one => one.Verdict, one => one.Values);
}
