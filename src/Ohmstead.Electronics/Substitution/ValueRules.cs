using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Substitution;

/// <summary>How far the capacitance may move, by role.</summary>
internal static class ValueRules
{
    private const string Aspect = "value";

    internal static void Add(List<FitReason> reasons, Pairing pair)
    {
        (CapacitorPlace place, CapacitorOffer offer) = pair;
        decimal share = pair.Share;
        if (Circuit(place, offer) is { } circuit)
        {
            reasons.Add(circuit);

            // Both ends are known: what the circuit stands is better known than any rule of thumb.
            if (place.LeastFarads is not null && place.MostFarads is not null)
            {
                return;
            }
        }

        reasons.Add(
            place.Duty switch
            {
                CapacitorRole.Reservoir or CapacitorRole.SwitchingOutput => Reservoir(share, pair),
                CapacitorRole.ValveReservoir => ValveReservoir(share, pair),
                CapacitorRole.Decoupling => Between(share, Least(place, 1.0m), 3.0m, pair, "1 to 3 x; check that a regulator stays stable"),
                CapacitorRole.Coupling => Between(share, Least(place, 0.8m), 2.0m, pair, "0.8 to 2 x"),
                CapacitorRole.Safety => Safety(share, pair),
                _ => InTolerance(share, pair),
            }
        );
        if (place.Duty == CapacitorRole.Tuned)
        {
            reasons.Add(FitReason.Doubt(Aspect, "match the temperature coefficient of the original as well"));
        }
    }

    internal static Outcome<Worked<Interval>> Range(CapacitorPlace place)
    {
        (decimal least, decimal most, string why) = place.Duty switch
        {
            CapacitorRole.Reservoir or CapacitorRole.SwitchingOutput => (1.0m, 1.5m, "for a reservoir; 0.9 to 2 x with care"),
            CapacitorRole.ValveReservoir when place.LargestInputFarads is { } input => (
                0.9m,
                Math.Max(0.9m, input / place.Farads),
                "after a valve rectifier, to what it may feed"
            ),
            CapacitorRole.ValveReservoir => (0.9m, 1.0m, "after a valve rectifier; more only if it may feed it"),
            CapacitorRole.Decoupling => (Least(place, 1.0m), 3.0m, "for decoupling; a regulator must stay stable"),
            CapacitorRole.Coupling => (Least(place, 0.8m), 2.0m, "for coupling"),
            CapacitorRole.Safety when place.SafetyClass.IsY() => (1m - place.ToleranceBelow, 1.0m, "class Y: never raised"),
            _ => (1m - place.ToleranceBelow, 1m + place.ToleranceAbove, "the tolerance of the original"),
        };
        (decimal low, decimal high) = (place.LeastFarads ?? (least * place.Farads), place.MostFarads ?? (most * place.Farads));
        if (low > high)
        {
            return Outcome<Worked<Interval>>.Refused(
                $"the circuit stands {Rounded.Farads(low)} to {Rounded.Farads(high)}, which leaves nothing beside its role"
            );
        }

        Interval range = new(new Quantity(low, Dimension.Capacitance), new Quantity(high, Dimension.Capacitance));
        LazyText arithmetic = new(() =>
            (place.LeastFarads, place.MostFarads) is ({ }, { })
                ? "what the circuit stands"
                : $"{Figures.Text(least)} to {Figures.Text(most, 3)} x {Rounded.Farads(place.Farads)}, {why}"
                    + (place.LeastFarads is null && place.MostFarads is null ? "" : ", and what the circuit stands")
        );
        return Outcome<Worked<Interval>>.From(new Worked<Interval>(range, arithmetic, Source.CommonPractice));
    }

    private static FitReason? Circuit(CapacitorPlace place, CapacitorOffer offer) =>
        place.LeastFarads is null && place.MostFarads is null ? null : Circuit(place.LeastFarads, place.MostFarads, offer.Farads);

    private static FitReason Circuit(decimal? least, decimal? most, decimal farads) =>
        farads < least
            ? FitReason.Against(Aspect, () => $"{Rounded.Farads(farads)} where the circuit needs {Rounded.Farads(least.Value)} or more")
        : farads > most
            ? FitReason.Against(Aspect, () => $"{Rounded.Farads(farads)} where the circuit stands {Rounded.Farads(most.Value)} at most")
        : FitReason.For(Aspect, () => $"{Rounded.Farads(farads)} is inside what the circuit stands");

    // A value inside the tolerance the original was delivered with is as good as the original's own.
    private static decimal Least(CapacitorPlace place, decimal share) => Math.Min(share, 1m - place.ToleranceBelow);

    private static FitReason InTolerance(decimal share, Pairing pair) =>
        Between(share, 1m - pair.Place.ToleranceBelow, 1m + pair.Place.ToleranceAbove, pair, "inside the tolerance of the original");

    private static FitReason Between(decimal share, decimal least, decimal most, Pairing pair, string asked) =>
        share >= least && share <= most
            ? FitReason.For(Aspect, new AskedWords(pair, ": ", asked))
            : FitReason.Against(Aspect, new AskedWords(pair, ", expected ", asked));

    private static FitReason Reservoir(decimal share, Pairing pair) =>
        share switch
        {
            < 0.9m => FitReason.Against(Aspect, pair, static p => $"{Words(p)}, expected 0.9 or more"),
            < 1.0m => FitReason.Doubt(Aspect, pair, static p => $"{Words(p)}: only if the ripple stays in its limit"),
            <= 1.5m => FitReason.For(Aspect, pair, static p => $"{Words(p)}: 1 to 1.5 x"),
            <= 2.0m => FitReason.Doubt(Aspect, pair, static p => $"{Words(p)}: watch the surge and the rectifier's rating"),
            _ => FitReason.Against(Aspect, pair, static p => $"{Words(p)}, expected 2 or less: the rectifier's peak current rises"),
        };

    private static FitReason ValveReservoir(decimal share, Pairing pair)
    {
        Source source = Supplies.ValveRectifier.Source;
        return pair.Place.LargestInputFarads is { } most && pair.Offer.Farads > most
                ? FitReason.Against(
                    Aspect,
                    pair,
                    static p =>
                        $"{Rounded.Farads(p.Offer.Farads)} is over the {Rounded.Farads(p.Place.LargestInputFarads!.Value)} that the "
                        + $"valve rectifier may feed",
                    source
                )
            : share < 0.9m ? FitReason.Against(Aspect, pair, static p => $"{Words(p)}, expected 0.9 or more")
            : share <= 1.0m || pair.Place.LargestInputFarads is not null
                ? FitReason.For(Aspect, pair, static p => $"{Words(p)}: not over what the valve rectifier may feed", source)
            : share <= 1.25m ? FitReason.Doubt(Aspect, pair, static p => $"{Words(p)}: look up what the valve rectifier may feed", source)
            : FitReason.Against(
                Aspect,
                pair,
                static p => $"{Words(p)} on a valve rectifier whose largest input capacitor is not known",
                source
            );
    }

    private static FitReason Safety(decimal share, Pairing pair) =>
        pair.Place.SafetyClass.IsY() && share > 1m
            ? FitReason.Against(
                Aspect,
                pair,
                static p => $"{Words(p)}: a class Y value is never raised, the touch current goes with it",
                Capacitors.TouchCurrentLimit.Source
            )
            : InTolerance(share, pair);

    private static string Words(Pairing p) =>
        $"{Rounded.Farads(p.Offer.Farads)} for {Rounded.Farads(p.Place.Farads)} is {Figures.Text(p.Share, 3)} x";

    private sealed class AskedWords(Pairing pair, string between, string asked) : LazyText
    {
        protected override string Write() => $"{Words(pair)}{between}{asked}";
    }
}
