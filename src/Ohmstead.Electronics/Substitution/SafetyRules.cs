using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Substitution;

/// <summary>Safety class and a.c. rating: kept or raised, never less.</summary>
internal static class SafetyRules
{
    private const string Aspect = "safety";

    internal static void Add(List<Reason> reasons, Pairing pair)
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

        if (place.SafetyClass == SafetyClass.None)
        {
            reasons.Add(Reason.Against(Aspect, "the place is on the mains and its class is not known: establish it first"));
            return;
        }

        Worked<bool> may = place.MainsVolts is { } volts
            ? SafetyCapacitor.MayReplace(place.SafetyClass, offer.SafetyClass, volts)
            : SafetyCapacitor.MayReplaceUnseen(place.SafetyClass, offer.SafetyClass, offer.MainsVolts);
        reasons.Add(may.Value ? Reason.For(Aspect, may.Arithmetic, may.Source) : Reason.Against(Aspect, may.Arithmetic, may.Source));
        reasons.Add(Reason.Doubt(Aspect, Hazards.SafetyNotice.Defer));
    }

    private static Reason Alternating(Pairing pair, decimal asked) => pair.Offer.AlternatingVolts switch
    {
        null => Reason.Missing(Aspect, "the a.c. rating of the offer is not known"),
        { } rated when rated < asked =>
            Reason.Against(Aspect, pair, static p => $"rated {Figures.Text(p.Offer.AlternatingVolts!.Value)} V a.c. where {Figures.Text(p.Place.AlternatingVolts!.Value)} V are asked for"),
        _ => Reason.For(Aspect, pair, static p => $"rated {Figures.Text(p.Offer.AlternatingVolts!.Value)} V a.c., {Figures.Text(p.Place.AlternatingVolts!.Value)} V are asked for"),
    };
}
