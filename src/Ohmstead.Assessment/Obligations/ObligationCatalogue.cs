using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Obligations.Rules;

namespace Ohmstead.Assessment.Obligations;

/// <summary>All kinds of obligation, in the order in which they are told; a test compares the list with the types.</summary>
public static class ObligationCatalogue
{
    /// <summary>The rules: what can hurt first, then what sits there, what was done, what proves it, and the record itself.</summary>
    public static IReadOnlyList<IObligationRule> All { get; } =
    [
        new HazardGone(),
        new FindingAnswered(),
        new SpillWashed(),
        new ReadingAnswered(),
        new PlaceFilled(),
        new DecisionDone(),
        new FittedPartKnown(),
        new FittedWayRound(),
        new FittedPartFits(),
        new VoltageBorne(),
        new RippleBorne(),
        new PointReadingAnswered(),
        new WaitOver(),
        new BoardThere(),
        new LookedAt(),
        new NotMerelyTold(),
        new SafetyPartWhole(),
        new SafetyPartPassed(),
        new FittedPartMeasured(),
        new FittedPartFormed(),
        new LotTrusted(),
        new ReadingsAgree(),
        new WashDried(),
        new PointProved(),
        new BoardProved(),
        new ProvedSinceBack(),
        new DesignKept(),
        new RecordSound(),
    ];
}
