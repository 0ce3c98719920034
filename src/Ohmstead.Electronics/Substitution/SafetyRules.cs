using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Substitution;

/// <summary>Safety class and a.c. rating: kept or raised, never less.</summary>
internal static class SafetyRules
{
    private const string Aspect = "safety";

    internal static IEnumerable<Reason> Reasons(CapacitorPlace place, CapacitorOffer offer)
    {
        if (place.Role == CapacitorRole.Safety && place.SafetyClass == SafetyClass.None)
        {
            yield return Reason.Against(Aspect, "the place is on the mains and its class is not known: establish it first");
        }
        else if (place.SafetyClass != SafetyClass.None)
        {
            Worked<bool> may = SafetyCapacitor.MayReplace(place.SafetyClass, offer.SafetyClass);
            yield return may.Value ? Reason.For(Aspect, may.Arithmetic, may.Source) : Reason.Against(Aspect, may.Arithmetic, may.Source);
            yield return Reason.Doubt(Aspect, Hazards.SafetyNotice.Defer);
        }

        if (place.AlternatingVolts is { } asked)
        {
            yield return offer.AlternatingVolts switch
            {
                null => Missing(place),
                { } rated when rated < asked =>
                    Reason.Against(Aspect, () => $"rated {Figures.Text(rated)} V a.c. where {Figures.Text(asked)} V are asked for"),
                { } rated => Reason.For(Aspect, () => $"rated {Figures.Text(rated)} V a.c., {Figures.Text(asked)} V are asked for"),
            };
        }
    }

    private static Reason Missing(CapacitorPlace place) => place.SafetyClass == SafetyClass.None
        ? Reason.Missing(Aspect, "the a.c. rating of the offer is not known")
        : Reason.Against(Aspect, "the a.c. rating of the offer is not known, and the place is on the mains");
}
