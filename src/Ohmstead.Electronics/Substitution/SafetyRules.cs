namespace Ohmstead.Electronics.Substitution;

/// <summary>Safety class and a.c. rating: kept or raised, never less.</summary>
internal static class SafetyRules
{
    private const string Aspect = "safety";

    internal static void Add(List<FitReason> reasons, Pairing pair)
    {
        (CapacitorPlace place, CapacitorOffer offer) = pair;
        if (!place.IsOnMains)
        {
            if (place.AlternatingVolts is { } asked)
            {
                reasons.Add(Alternating(pair, asked));
            }

            return;
        }

        reasons.AddRange(MainsSubstitution.Judge(place.SafetyClass, place.MainsVolts, offer.SafetyClass, offer.MainsVolts));
    }

    private static FitReason Alternating(Pairing pair, decimal asked) =>
        pair.Offer.AlternatingVolts switch
        {
            null => FitReason.Missing(Aspect, "the a.c. rating of the offer is not known"),
            { } rated when rated < asked => FitReason.Against(Aspect, pair, static p =>
                $"rated {Figures.Text(p.Offer.AlternatingVolts!.Value)} V a.c. where {Figures.Text(p.Place.AlternatingVolts!.Value)} V "
                + "are asked for"
            ),
            _ => FitReason.For(Aspect, pair, static p =>
                $"rated {Figures.Text(p.Offer.AlternatingVolts!.Value)} V a.c., {Figures.Text(p.Place.AlternatingVolts!.Value)} V are "
                + "asked for"
            ),
        };
}
