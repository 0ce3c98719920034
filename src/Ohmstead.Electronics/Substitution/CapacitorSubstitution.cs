using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Substitution;

/// <summary>May this capacitor stand for that one, and which of several does it best.</summary>
public static class CapacitorSubstitution
{
    // Hardly an offer has more.
    private const int UsualReasons = 12;

    /// <summary>All reasons for and against an offer; refused when a figure of place or offer cannot be.</summary>
    public static Outcome<SubstitutionVerdict> Judge(CapacitorPlace place, CapacitorOffer offer) =>
        Possible(place, offer)
            .Flatten(new Pairing(place, offer), static pair =>
            {
                List<FitReason> reasons = new(UsualReasons);
                SafetyRules.Add(reasons, pair);
                KindRules.Add(reasons, pair);
                ValueRules.Add(reasons, pair);
                VoltageRules.Add(reasons, pair);
                StressRules.Add(reasons, pair);
                MechanicalRules.Add(reasons, pair);
                return Outcome<SubstitutionVerdict>.From(new SubstitutionVerdict(pair.Offer, HeaviestFirst(reasons)));
            });

    /// <summary>The reasons of <see cref="Judge"/> that are about the kind and its polarity, for the question which kinds may serve at
    /// all.</summary>
    public static Outcome<IReadOnlyList<FitReason>> JudgeKind(CapacitorPlace place, CapacitorOffer offer) =>
        Possible(place, offer)
            .Flatten(new Pairing(place, offer), static pair =>
            {
                List<FitReason> reasons = new(capacity: 3);
                KindRules.Add(reasons, pair);
                return Outcome<IReadOnlyList<FitReason>>.From(reasons);
            });

    /// <summary>
    /// The offers that may go in, best first: fewest doubts, then nearest value, then nearest voltage, then hottest rating, then name.
    /// Offers with a reason against are left out; those that cannot be judged as well.
    /// </summary>
    public static IReadOnlyList<SubstitutionVerdict> Rank(CapacitorPlace place, IEnumerable<CapacitorOffer> offers) =>
        [
            .. offers
                .Select(o => Judge(place, o))
                .Where(v => v.Refusal is null)
                .Select(v => v.Value)
                .Where(v => v.Outcome != ReasonWeight.Against)
                .OrderBy(v => v.Doubts)
                .ThenBy(v => Distance(v.Offer.Farads, place.Farads))
                .ThenBy(v => Distance(v.Offer.RatedVolts ?? place.RatedVolts ?? 1m, place.RatedVolts ?? v.Offer.RatedVolts ?? 1m))
                .ThenByDescending(v => v.Offer.CelsiusRating ?? 0m)
                .ThenBy(v => v.Offer.Name, StringComparer.Ordinal),
        ];

    /// <summary>
    /// The capacitances that may stand in a place without a doubt, by what it does there and by what its circuit stands; refused when a
    /// figure of the place cannot be, or when nothing is left between the two.
    /// </summary>
    public static Outcome<Worked<Interval>> ValueRange(CapacitorPlace place) =>
        Domain
            .Require(
                Domain.Positive("capacitance of the place", place.Farads),
                Domain.Within("lower tolerance", place.ToleranceBelow, 0m, 1m),
                Domain.Within("upper tolerance", place.ToleranceAbove, 0m, 10m),
                Domain.That(!(place.LeastFarads > place.MostFarads), "the least capacitance of the circuit is above its most")
            )
            .Flatten(() => ValueRules.Range(place));

    private static double Distance(decimal offered, decimal asked) => Math.Abs(Math.Log((double)offered / (double)asked));

    private static Domain Possible(CapacitorPlace place, CapacitorOffer offer) =>
        Domain.Require(
            Domain.Positive("capacitance of the place", place.Farads),
            Domain.Positive("rated voltage of the place", place.RatedVolts ?? 1m),
            Domain.Within("lower tolerance", place.ToleranceBelow, 0m, 1m),
            Domain.Within("upper tolerance", place.ToleranceAbove, 0m, 10m),
            Domain.Positive("capacitance of the offer", offer.Farads),
            Domain.Positive("rated voltage of the offer", offer.RatedVolts ?? 1m)
        );

    // Those of one weight as the rules gave them.
    private static FitReason[] HeaviestFirst(List<FitReason> reasons)
    {
        FitReason[] sorted = new FitReason[reasons.Count];
        int at = 0;
        for (ReasonWeight weight = ReasonWeight.Against; weight >= ReasonWeight.For; weight--)
        {
            foreach (FitReason reason in reasons)
            {
                if (reason.Weight == weight)
                {
                    sorted[at++] = reason;
                }
            }
        }

        return sorted;
    }
}
