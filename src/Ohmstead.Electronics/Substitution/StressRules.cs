using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Substitution;

/// <summary>Temperature, ripple current and ESR, the last both ways.</summary>
internal static class StressRules
{
    internal static void Add(List<FitReason> reasons, Pairing pair)
    {
        (CapacitorPlace place, CapacitorOffer offer) = pair;
        if (place.CelsiusRating is { } celsius)
        {
            reasons.Add(Temperature(pair, celsius));
        }

        if (place.RippleAmperes is { } ripple)
        {
            reasons.Add(Ripple(ripple, offer));
        }

        if (offer.EsrOhms is { } ohms)
        {
            Esr(reasons, place, ohms);
        }
        else if (place.LargestEsrOhms is not null || place.LeastEsrOhms is not null)
        {
            reasons.Add(FitReason.Missing("ESR", "its ESR is not known, and the place asks for one"));
        }
        else if (place.Role == CapacitorRole.SwitchingOutput)
        {
            reasons.Add(FitReason.Missing("ESR", "neither ESR is known: a switching supply wants a low-impedance part"));
        }
    }

    private static FitReason Temperature(Pairing pair, decimal asked)
    {
        const string Aspect = "temperature";
        return pair.Offer.CelsiusRating switch
        {
            null => FitReason.Unwritten(Aspect, pair, static p => $"its temperature rating is not known, {Asked(p)} °C are asked for"),
            { } rated when rated < asked => FitReason.Against(Aspect, pair, static p => $"{Rated(p)} °C where {Asked(p)} °C are asked for"),
            { } rated when rated > asked && pair.Offer.Kind == CapacitorKind.AluminiumWet => FitReason.For(
                Aspect,
                pair,
                static p => $"{Rated(p)} °C for {Asked(p)} °C: {Figures.Text(Gain(p), 3)} x the life",
                Life.TenKelvinRule.Source
            ),
            _ => FitReason.For(Aspect, pair, static p => $"{Rated(p)} °C, {Asked(p)} °C are asked for"),
        };

        static string Rated(Pairing p) => Figures.Text(p.Offer.CelsiusRating!.Value);
        static string Asked(Pairing p) => Figures.Text(p.Place.CelsiusRating!.Value);
        static double Gain(Pairing p) =>
            Life.TenKelvinRule.Factor((double)p.Offer.CelsiusRating!.Value, (double)p.Place.CelsiusRating!.Value);
    }

    private static FitReason Ripple(decimal asked, CapacitorOffer offer)
    {
        const string Aspect = "ripple";
        return offer.RippleAmperes switch
        {
            null => FitReason.Unwritten(Aspect, () => $"its ripple rating is not known, {Figures.Text(asked)} A are asked for"),
            { } rated when rated < asked => FitReason.Against(Aspect, () =>
                $"{Figures.Text(rated)} A where {Figures.Text(asked)} A are asked for"
            ),
            { } rated => FitReason.For(Aspect, () => $"{Figures.Text(rated)} A, {Figures.Text(asked)} A are asked for"),
        };
    }

    private static void Esr(List<FitReason> reasons, CapacitorPlace place, decimal ohms)
    {
        if (place.LargestEsrOhms is { } most)
        {
            reasons.Add(AtMost(ohms, most));
        }

        if (place.LeastEsrOhms is { } least)
        {
            reasons.Add(AtLeast(ohms, least));
        }
    }

    private static FitReason AtMost(decimal ohms, decimal most) =>
        ohms > most
            ? FitReason.Against("ESR", () => $"{Rounded.Ohms(ohms)} where at most {Rounded.Ohms(most)} work")
            : FitReason.For("ESR", () => $"{Rounded.Ohms(ohms)}, at most {Rounded.Ohms(most)} work");

    private static FitReason AtLeast(decimal ohms, decimal least) =>
        ohms < least
            ? FitReason.Against("ESR", () => $"{Rounded.Ohms(ohms)} where a regulator needs {Rounded.Ohms(least)} to be stable")
            : FitReason.For("ESR", () => $"{Rounded.Ohms(ohms)}, a regulator needs {Rounded.Ohms(least)}");
}
