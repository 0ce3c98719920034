using Ohmstead.Assessment.History;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>What would fit a place: out of the drawer, and else what to look for.</summary>
/// <param name="What">What belongs there, in words.</param>
/// <param name="Assumptions">What was taken for granted because the record does not say it.</param>
/// <param name="Need">What to look for.</param>
/// <param name="Fitting">Lots that fit, the best first; those with doubts after those without.</param>
/// <param name="Together">Where no lot fits: two parts of a lot that together do.</param>
/// <param name="Unknown">Lots of which a rating is not written: nobody can say whether they fit.</param>
/// <param name="Refused">Lots that come near and do not fit, each with the reasons.</param>
public sealed record FitReport(
    string What,
    IReadOnlyList<string> Assumptions,
    IReadOnlyList<NeedLine> Need,
    IReadOnlyList<FitCandidate> Fitting,
    IReadOnlyList<FitCandidate> Together,
    IReadOnlyList<FitCandidate> Unknown,
    IReadOnlyList<FitCandidate> Refused
)
{
    /// <summary>Looks through the drawer for a place of a board.</summary>
    public static FitReport For(BoardHistory board, PlaceHistory place, Drawer drawer) => For(FitPlace.From(board, place), drawer);

    /// <summary>Looks through the drawer for a place. The answer is the same for all places that are equal.</summary>
    /// <param name="asked">What a part must fit.</param>
    /// <param name="drawer">What is left.</param>
    public static FitReport For(FitPlace asked, Drawer drawer)
    {
        JudgedLots[] judged =
        [
            .. drawer.LotGroups.Where(lots => FitJudge.MayFit(asked.Values, lots.Offer.Values)).Select(lots => new JudgedLots(asked, lots)),
        ];
        var fitting = new RankedLots(judged.Where(one => one.Rank.Outcome != ReasonWeight.Against && !one.IsUnknown));
        return new(
            PartWords.Describe(asked.Values),
            asked.Assumptions,
            PlaceNeed.Describe(asked),
            fitting,
            fitting.Count > 0 ? [] : [.. Pairs(asked, drawer)],
            new RankedLots(judged.Where(one => one.IsUnknown)),
            new RankedLots(judged.Where(one => one.Rank.Outcome == ReasonWeight.Against))
        );
    }

    // All of them have the voltage; the lowest that has it wastes least.
    private static IEnumerable<FitCandidate> Pairs(FitPlace place, Drawer drawer) =>
        drawer
            .LotGroups.Where(alike =>
                alike.Lots[0].Doubts.All(doubt => doubt.Weight != ReasonWeight.Against)
                && alike.Offer.Values.Kind.Value.Family == PartFamily.Capacitor
            )
            .SelectMany(alike =>
                TwoForOne
                    .Combine(place, alike.Offer)
                    .SelectMany(two =>
                        alike
                            .Lots.Where(lot => lot.Left >= 2)
                            .Select(lot => new FitCandidate(two.VerdictFor(lot.Lot.Id.Value), lot.Lot.Values, lot.Left))
                    )
            )
            .Where(pair => pair.Verdict.Outcome != ReasonWeight.Against && !pair.Verdict.IsUnknown)
            .OrderBy(pair => pair.Verdict.Doubts)
            .ThenBy(pair => pair.Values.RatedVoltage?.Value.Value ?? 0m)
            .ThenBy(pair => pair.Verdict.Lot, StringComparer.Ordinal);
}
