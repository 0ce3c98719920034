namespace Ohmstead.Electronics.Substitution;

/// <summary>How far the capacitance may move, by role.</summary>
internal static class ValueRules
{
    private const string Aspect = "value";

    internal static IEnumerable<Reason> Reasons(CapacitorPlace place, CapacitorOffer offer)
    {
        decimal share = offer.Farads / place.Farads;
        string words = $"{Figures.Farads(offer.Farads)} for {Figures.Farads(place.Farads)} is {Figures.Text(share, 3)} x";
        yield return place.Role switch
        {
            CapacitorRole.Reservoir or CapacitorRole.SwitchingOutput => Reservoir(share, words),
            CapacitorRole.ValveReservoir => ValveReservoir(place, offer, share, words),
            CapacitorRole.Decoupling => Between(share, Least(place, 1.0m), 3.0m, words, "1 to 3 x; check that a regulator stays stable"),
            CapacitorRole.Coupling => Between(share, Least(place, 0.8m), 2.0m, words, "0.8 to 2 x"),
            CapacitorRole.Safety => Safety(place, share, words),
            _ => Between(share, 1m - place.ToleranceBelow, 1m + place.ToleranceAbove, words, "inside the tolerance of the original"),
        };
        if (place.Role == CapacitorRole.Tuned)
        {
            yield return Reason.Doubt(Aspect, "match the temperature coefficient of the original as well");
        }
    }

    // A value inside the tolerance the original was delivered with is as good as the original's own.
    private static decimal Least(CapacitorPlace place, decimal share) => Math.Min(share, 1m - place.ToleranceBelow);

    private static Reason Between(decimal share, decimal least, decimal most, string words, string asked) =>
        share >= least && share <= most ? Reason.For(Aspect, $"{words}: {asked}") : Reason.Against(Aspect, $"{words}, expected {asked}");

    private static Reason Reservoir(decimal share, string words) => share switch
    {
        < 0.9m => Reason.Against(Aspect, $"{words}, expected 0.9 or more"),
        < 1.0m => Reason.Doubt(Aspect, $"{words}: only if the ripple stays in its limit"),
        <= 1.5m => Reason.For(Aspect, $"{words}: 1 to 1.5 x"),
        <= 2.0m => Reason.Doubt(Aspect, $"{words}: watch the surge and the rectifier's rating"),
        _ => Reason.Against(Aspect, $"{words}, expected 2 or less: the rectifier's peak current rises"),
    };

    private static Reason ValveReservoir(CapacitorPlace place, CapacitorOffer offer, decimal share, string words)
    {
        Source source = Supplies.ValveRectifier.Source;
        return place.LargestInputFarads is { } most && offer.Farads > most
            ? Reason.Against(Aspect, $"{Figures.Farads(offer.Farads)} is over the {Figures.Farads(most)} that the valve rectifier may feed", source)
            : share < 0.9m ? Reason.Against(Aspect, $"{words}, expected 0.9 or more")
            : share <= 1.0m || place.LargestInputFarads is not null
                ? Reason.For(Aspect, $"{words}: not over what the valve rectifier may feed", source)
            : share <= 1.25m ? Reason.Doubt(Aspect, $"{words}: look up what the valve rectifier may feed", source)
            : Reason.Against(Aspect, $"{words} on a valve rectifier whose largest input capacitor is not known", source);
    }

    private static Reason Safety(CapacitorPlace place, decimal share, string words) =>
        place.SafetyClass is Capacitors.SafetyClass.Y1 or Capacitors.SafetyClass.Y2 or Capacitors.SafetyClass.Y3 or Capacitors.SafetyClass.Y4 && share > 1m
            ? Reason.Against(Aspect, $"{words}: a class Y value is never raised, the touch current goes with it",
                Source.FromMemory("IEC 60384-14", null))
            : Between(share, 1m - place.ToleranceBelow, 1m + place.ToleranceAbove, words, "inside the tolerance of the original");
}
