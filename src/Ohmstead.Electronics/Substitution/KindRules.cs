namespace Ohmstead.Electronics.Substitution;

/// <summary>Which kind may stand for which, and polarity.</summary>
internal static class KindRules
{
    private const string Aspect = "kind";

    internal static IEnumerable<Reason> Reasons(CapacitorPlace place, CapacitorOffer offer)
    {
        if (place.IsBipolar && !offer.IsBipolar && offer.Kind.IsElectrolytic())
        {
            yield return Reason.Against("polarity",
                "a polar part where the voltage changes sign: take a bipolar one, or two equal ones back to back of twice the value");
        }

        LazyText words = new(() => $"{offer.Kind.Words()} for {place.Kind.Words()}");
        yield return place.Kind == offer.Kind && !offer.Kind.IsPaper() ? Reason.For(Aspect, () => $"{words}: the same kind")
            : Other(place, offer, words);
        if (place.Role == CapacitorRole.Snubber)
        {
            yield return offer.Kind == CapacitorKind.Polypropylene
                ? Reason.Doubt(Aspect, "look up the pulse rating dV/dt and the a.c. rating")
                : Reason.Against(Aspect, () => $"{offer.Kind.Words()} in a snubber, expected polypropylene with a pulse rating");
        }
    }

    private static Reason Other(CapacitorPlace place, CapacitorOffer offer, LazyText words) => (place.Kind, offer.Kind) switch
    {
        (_, CapacitorKind.Paper or CapacitorKind.MetallisedPaper) =>
            Reason.Against(Aspect, () => $"{words}: old paper leaks, film takes its place"),
        (CapacitorKind.TantalumWet, CapacitorKind.AluminiumWet or CapacitorKind.TantalumSolid) =>
            Reason.Doubt(Aspect, () => $"{words}: compare leakage and temperature range"),
        (CapacitorKind.TantalumSolid or CapacitorKind.TantalumWet, CapacitorKind.AluminiumWet) => AluminiumForTantalum(place, offer, words),
        (_, CapacitorKind.TantalumWet) => Reason.Against(Aspect, () => $"{words}: bears no reverse voltage and leaks acid when it fails"),
        (CapacitorKind.AluminiumWet or CapacitorKind.Polymer, CapacitorKind.TantalumSolid) => IsLowImpedance(place.Role)
            ? Reason.Against(Aspect, () => $"{words} on a low-impedance rail: it fails short at power-up")
            : Reason.Doubt(Aspect, () => $"{words}: only with half its voltage and some impedance before it"),
        (_, CapacitorKind.Polymer) when place.Kind.IsElectrolytic() =>
            place.Role is CapacitorRole.Coupling or CapacitorRole.Timing or CapacitorRole.Filter
            ? Reason.Against(Aspect, () => $"{words}: leaks too much for {Role(place.Role)}")
            : Reason.Doubt(Aspect, () => $"{words}: leaks more, and its low ESR can upset a regulator"),
        (CapacitorKind.Polymer, CapacitorKind.AluminiumWet) => Reason.Doubt(Aspect, () => $"{words}: its ESR is higher"),
        _ when offer.Kind.IsElectrolytic() => Reason.Against(Aspect, () => $"{words}: never an electrolytic for a dry dielectric"),
        (CapacitorKind.Suppression, _) => Reason.For(Aspect, () => $"{words}: the class decides, not the dielectric"),
        (_, CapacitorKind.CeramicClass2) => Class2(place, words),
        _ when place.Kind.IsElectrolytic() => Reason.For(Aspect, () => $"{words}: longer lived where there is room"),
        _ when place.Kind.IsPaper() => Reason.For(Aspect, () => $"{words}: the usual replacement"),
        _ when IsPrecise(place.Role) && place.Kind.IsStable() && !offer.Kind.IsStable() =>
            Reason.Against(Aspect, () => $"{words} in {Role(place.Role)}: drifts more"),
        _ when IsPrecise(place.Role) || (place.Role == CapacitorRole.Other && place.Kind.IsStable() && !offer.Kind.IsStable()) => Reason.Doubt(Aspect, () => $"{words} in {Role(place.Role)}: compare drift and temperature coefficient"),
        _ => Reason.For(Aspect, () => $"{words}: as good in this role"),
    };

    private static Reason AluminiumForTantalum(CapacitorPlace place, CapacitorOffer offer, LazyText words) =>
        place.Role is CapacitorRole.Timing or CapacitorRole.Filter
            ? Reason.Against(Aspect, () => $"{words} in {Role(place.Role)}: take film or a low-leakage part")
        : offer.Farads >= 1.5m * place.Farads ? Reason.Doubt(Aspect, () => $"{words}: low-leakage or 105 degree part, check the height")
        : Reason.Doubt(Aspect, () => $"{words}: 1.5 to 2 x the value makes up for the higher ESR");

    private static Reason Class2(CapacitorPlace place, LazyText words) =>
        place.Kind.IsStable() || IsPrecise(place.Role)
            ? Reason.Against(Aspect, () => $"{words}: its value moves with temperature, voltage and age")
        : Reason.Doubt(Aspect, () => $"{words}: loses capacitance under voltage, allow for it");

    private static bool IsLowImpedance(CapacitorRole role) =>
        role is CapacitorRole.Reservoir or CapacitorRole.ValveReservoir or CapacitorRole.SwitchingOutput;

    private static bool IsPrecise(CapacitorRole role) => role is CapacitorRole.Timing or CapacitorRole.Filter or CapacitorRole.Tuned;

    private static string Role(CapacitorRole role) => role switch
    {
        CapacitorRole.Coupling => "coupling",
        CapacitorRole.Timing => "timing",
        CapacitorRole.Filter => "a filter",
        CapacitorRole.Tuned => "a tuned circuit",
        _ => "a role that is not told",
    };
}
