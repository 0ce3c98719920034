using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Assessment.Fit;

/// <summary>Lots that are alike, judged for a place.</summary>
internal sealed class JudgedLots
{
    private readonly IReadOnlyList<FitReason> reasons;

    /// <summary>Judges them.</summary>
    internal JudgedLots(FitPlace place, AlikeLots alike)
    {
        reasons = FitJudge.Judge(place, alike.Offer).Reasons;
        Lots = alike.Lots;
        var verdict = VerdictOn(Lots[0]);
        Rank = FitRank.For(place, verdict, alike.Offer.Values);
        IsUnknown = verdict.IsUnknown;
    }

    /// <summary>The lots, in order of name.</summary>
    internal IReadOnlyList<DrawerLot> Lots { get; }

    /// <summary>Where each of them stands.</summary>
    internal FitRank Rank { get; }

    /// <summary>True when a rating of theirs is not written, and nothing else speaks against them.</summary>
    internal bool IsUnknown { get; }

    /// <summary>One of them, with all reasons.</summary>
    internal FitCandidate CandidateFor(DrawerLot lot) => new(VerdictOn(lot), lot.Lot.Values, lot.Left);

    private FitVerdict VerdictOn(DrawerLot lot) =>
        new(lot.Lot.Id.Value, lot.Doubts.Count == 0 ? reasons : FitJudge.Sorted([.. reasons, .. lot.Doubts]));
}
