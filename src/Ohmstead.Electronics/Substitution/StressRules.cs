namespace Ohmstead.Electronics.Substitution;

/// <summary>Temperature, ripple current and ESR, the last both ways.</summary>
internal static class StressRules
{
    internal static IEnumerable<Reason> Reasons(CapacitorPlace place, CapacitorOffer offer) =>
        [.. Temperature(place, offer), .. Ripple(place, offer), .. Esr(place, offer)];

    private static IEnumerable<Reason> Temperature(CapacitorPlace place, CapacitorOffer offer)
    {
        const string Aspect = "temperature";
        if (place.CelsiusRating is not { } asked)
        {
            yield break;
        }

        yield return offer.CelsiusRating switch
        {
            null => Reason.Missing(Aspect, () => $"its temperature rating is not known, {Figures.Text(asked)} °C are asked for"),
            { } rated when rated < asked =>
                Reason.Against(Aspect, () => $"{Figures.Text(rated)} °C where {Figures.Text(asked)} °C are asked for"),
            { } rated when rated > asked && offer.Kind == CapacitorKind.AluminiumWet => Reason.For(
                Aspect,
                () => $"{Figures.Text(rated)} °C for {Figures.Text(asked)} °C: {Figures.Text(Life.TenKelvinRule.Factor((double)rated, (double)asked), 3)} x the life",
                Life.TenKelvinRule.Source),
            { } rated => Reason.For(Aspect, () => $"{Figures.Text(rated)} °C, {Figures.Text(asked)} °C are asked for"),
        };
    }

    private static IEnumerable<Reason> Ripple(CapacitorPlace place, CapacitorOffer offer)
    {
        const string Aspect = "ripple";
        if (place.RippleAmperes is not { } asked)
        {
            yield break;
        }

        yield return offer.RippleAmperes switch
        {
            null => Reason.Missing(Aspect, () => $"its ripple rating is not known, {Figures.Text(asked)} A are asked for"),
            { } rated when rated < asked => Reason.Against(Aspect, () => $"{Figures.Text(rated)} A where {Figures.Text(asked)} A are asked for"),
            { } rated => Reason.For(Aspect, () => $"{Figures.Text(rated)} A, {Figures.Text(asked)} A are asked for"),
        };
    }

    private static IEnumerable<Reason> Esr(CapacitorPlace place, CapacitorOffer offer)
    {
        const string Aspect = "ESR";
        if (offer.EsrOhms is not { } ohms)
        {
            if (place.LargestEsrOhms is not null || place.LeastEsrOhms is not null)
            {
                yield return Reason.Missing(Aspect, "its ESR is not known, and the place asks for one");
            }
            else if (place.Role == CapacitorRole.SwitchingOutput)
            {
                yield return Reason.Missing(Aspect, "neither ESR is known: a switching supply wants a low-impedance part");
            }

            yield break;
        }

        if (place.LargestEsrOhms is { } most)
        {
            yield return ohms > most
                ? Reason.Against(Aspect, () => $"{Figures.Ohms(ohms)} where at most {Figures.Ohms(most)} work")
                : Reason.For(Aspect, () => $"{Figures.Ohms(ohms)}, at most {Figures.Ohms(most)} work");
        }

        if (place.LeastEsrOhms is { } least)
        {
            yield return ohms < least
                ? Reason.Against(Aspect, () => $"{Figures.Ohms(ohms)} where a regulator needs {Figures.Ohms(least)} to be stable")
                : Reason.For(Aspect, () => $"{Figures.Ohms(ohms)}, a regulator needs {Figures.Ohms(least)}");
        }
    }
}
