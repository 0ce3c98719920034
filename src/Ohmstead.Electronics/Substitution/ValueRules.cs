using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Substitution;

/// <summary>How far the capacitance may move, by role.</summary>
internal static class ValueRules
{
    private const string Aspect = "value";

    internal static IEnumerable<Reason> Reasons(CapacitorPlace place, CapacitorOffer offer)
    {
        decimal share = offer.Farads / place.Farads;
        if (Circuit(place, offer) is { } circuit)
        {
            yield return circuit;

            // Both ends are known: what the circuit stands is better known than any rule of thumb.
            if (place.LeastFarads is not null && place.MostFarads is not null)
            {
                yield break;
            }
        }

        LazyText words = new(() => $"{Figures.Farads(offer.Farads)} for {Figures.Farads(place.Farads)} is {Figures.Text(share, 3)} x");
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

    internal static Outcome<Worked<Interval>> Range(CapacitorPlace place)
    {
        (decimal least, decimal most, string why) = place.Role switch
        {
            CapacitorRole.Reservoir or CapacitorRole.SwitchingOutput => (1.0m, 1.5m, "for a reservoir; 0.9 to 2 x with care"),
            CapacitorRole.ValveReservoir when place.LargestInputFarads is { } input =>
                (0.9m, Math.Max(0.9m, input / place.Farads), "after a valve rectifier, to what it may feed"),
            CapacitorRole.ValveReservoir => (0.9m, 1.0m, "after a valve rectifier; more only if it may feed it"),
            CapacitorRole.Decoupling => (Least(place, 1.0m), 3.0m, "for decoupling; a regulator must stay stable"),
            CapacitorRole.Coupling => (Least(place, 0.8m), 2.0m, "for coupling"),
            CapacitorRole.Safety when IsY(place.SafetyClass) => (1m - place.ToleranceBelow, 1.0m, "class Y: never raised"),
            _ => (1m - place.ToleranceBelow, 1m + place.ToleranceAbove, "the tolerance of the original"),
        };
        (decimal low, decimal high) = (place.LeastFarads ?? (least * place.Farads), place.MostFarads ?? (most * place.Farads));
        if (low > high)
        {
            return Outcome<Worked<Interval>>.Refused(
                $"the circuit stands {Figures.Farads(low)} to {Figures.Farads(high)}, which leaves nothing beside its role");
        }

        Interval range = new(new Quantity(low, Dimension.Capacitance), new Quantity(high, Dimension.Capacitance));
        LazyText arithmetic = new(() => (place.LeastFarads, place.MostFarads) is ({ }, { })
            ? "what the circuit stands"
            : $"{Figures.Text(least)} to {Figures.Text(most, 3)} x {Figures.Farads(place.Farads)}, {why}"
                + (place.LeastFarads is null && place.MostFarads is null ? "" : ", and what the circuit stands"));
        return Outcome<Worked<Interval>>.Of(new Worked<Interval>(range, arithmetic, Source.CommonPractice));
    }

    private static Reason? Circuit(CapacitorPlace place, CapacitorOffer offer) => (place.LeastFarads, place.MostFarads) switch
    {
        (null, null) => null,
        ({ } least, _) when offer.Farads < least =>
            Reason.Against(Aspect, () => $"{Figures.Farads(offer.Farads)} where the circuit needs {Figures.Farads(least)} or more"),
        (_, { } most) when offer.Farads > most =>
            Reason.Against(Aspect, () => $"{Figures.Farads(offer.Farads)} where the circuit stands {Figures.Farads(most)} at most"),
        _ => Reason.For(Aspect, () => $"{Figures.Farads(offer.Farads)} is inside what the circuit stands"),
    };

    // A value inside the tolerance the original was delivered with is as good as the original's own.
    private static decimal Least(CapacitorPlace place, decimal share) => Math.Min(share, 1m - place.ToleranceBelow);

    private static Reason Between(decimal share, decimal least, decimal most, LazyText words, string asked) =>
        share >= least && share <= most ? Reason.For(Aspect, () => $"{words}: {asked}") : Reason.Against(Aspect, () => $"{words}, expected {asked}");

    private static Reason Reservoir(decimal share, LazyText words) => share switch
    {
        < 0.9m => Reason.Against(Aspect, () => $"{words}, expected 0.9 or more"),
        < 1.0m => Reason.Doubt(Aspect, () => $"{words}: only if the ripple stays in its limit"),
        <= 1.5m => Reason.For(Aspect, () => $"{words}: 1 to 1.5 x"),
        <= 2.0m => Reason.Doubt(Aspect, () => $"{words}: watch the surge and the rectifier's rating"),
        _ => Reason.Against(Aspect, () => $"{words}, expected 2 or less: the rectifier's peak current rises"),
    };

    private static Reason ValveReservoir(CapacitorPlace place, CapacitorOffer offer, decimal share, LazyText words)
    {
        Source source = Supplies.ValveRectifier.Source;
        return place.LargestInputFarads is { } most && offer.Farads > most
            ? Reason.Against(Aspect, () => $"{Figures.Farads(offer.Farads)} is over the {Figures.Farads(most)} that the valve rectifier may feed", source)
            : share < 0.9m ? Reason.Against(Aspect, () => $"{words}, expected 0.9 or more")
            : share <= 1.0m || place.LargestInputFarads is not null
                ? Reason.For(Aspect, () => $"{words}: not over what the valve rectifier may feed", source)
            : share <= 1.25m ? Reason.Doubt(Aspect, () => $"{words}: look up what the valve rectifier may feed", source)
            : Reason.Against(Aspect, () => $"{words} on a valve rectifier whose largest input capacitor is not known", source);
    }

    private static Reason Safety(CapacitorPlace place, decimal share, LazyText words) =>
        IsY(place.SafetyClass) && share > 1m
            ? Reason.Against(Aspect, () => $"{words}: a class Y value is never raised, the touch current goes with it",
                Source.FromMemory("IEC 60384-14", null))
            : Between(share, 1m - place.ToleranceBelow, 1m + place.ToleranceAbove, words, "inside the tolerance of the original");

    private static bool IsY(Capacitors.SafetyClass safety) =>
        safety is Capacitors.SafetyClass.Y1 or Capacitors.SafetyClass.Y2 or Capacitors.SafetyClass.Y3 or Capacitors.SafetyClass.Y4;
}
