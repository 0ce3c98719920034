using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Substitution;

/// <summary>Which kind may stand for which, and polarity.</summary>
internal static class KindRules
{
    private const string Aspect = "kind";

    internal static void Add(List<FitReason> reasons, Pairing pair)
    {
        (CapacitorPlace place, CapacitorOffer offer) = pair;
        if (place.IsBipolar && !offer.IsBipolar && offer.Kind.IsElectrolytic())
        {
            reasons.Add(
                FitReason.Against(
                    "polarity",
                    "a polar part where the voltage changes sign: take a bipolar one, or two equal ones back to back of twice the value"
                )
            );
        }

        reasons.Add(
            place.Kind == offer.Kind && !offer.Kind.IsPaper()
                ? FitReason.For(Aspect, pair, static p => $"{Kinds(p)}: the same kind")
                : Other(pair)
        );
        if (place.Duty == CapacitorRole.Snubber)
        {
            reasons.Add(
                offer.Kind == CapacitorKind.Polypropylene
                    ? FitReason.Doubt(Aspect, "look up the pulse rating dV/dt and the a.c. rating")
                    : FitReason.Against(Aspect, pair, static p =>
                        $"{p.Offer.Kind.Words()} in a snubber, expected polypropylene with a pulse rating"
                    )
            );
        }
    }

    private static FitReason Other(Pairing pair) =>
        (pair.Place.Kind, pair.Offer.Kind) switch
        {
            (_, CapacitorKind.Paper or CapacitorKind.MetallisedPaper) => FitReason.Against(Aspect, pair, static p =>
                $"{Kinds(p)}: old paper leaks, film takes its place"
            ),
            (CapacitorKind.TantalumWet, CapacitorKind.AluminiumWet or CapacitorKind.TantalumSolid) => FitReason.Doubt(
                Aspect,
                pair,
                static p => $"{Kinds(p)}: compare leakage and temperature range"
            ),
            (CapacitorKind.TantalumSolid or CapacitorKind.TantalumWet, CapacitorKind.AluminiumWet) => AluminiumForTantalum(pair),
            (_, CapacitorKind.TantalumWet) => FitReason.Against(Aspect, pair, static p =>
                $"{Kinds(p)}: bears no reverse voltage and leaks acid when it fails"
            ),
            (CapacitorKind.AluminiumWet or CapacitorKind.Polymer, CapacitorKind.TantalumSolid) => IsLowImpedance(pair.Place.Duty)
                ? FitReason.Against(Aspect, pair, static p => $"{Kinds(p)} on a low-impedance rail: it fails short at power-up")
                : FitReason.Doubt(Aspect, pair, static p => $"{Kinds(p)}: only with half its voltage and some impedance before it"),
            (_, CapacitorKind.Polymer) when pair.Place.Kind.IsElectrolytic() => pair.Place.Duty
                is CapacitorRole.Coupling
                    or CapacitorRole.Timing
                    or CapacitorRole.Filter
                ? FitReason.Against(Aspect, pair, static p => $"{Kinds(p)}: leaks too much for {Role(p.Place.Duty)}")
                : FitReason.Doubt(Aspect, pair, static p => $"{Kinds(p)}: leaks more, and its low ESR can upset a regulator"),
            (CapacitorKind.Polymer, CapacitorKind.AluminiumWet) => FitReason.Doubt(Aspect, pair, static p =>
                $"{Kinds(p)}: its ESR is higher"
            ),
            _ when pair.Offer.Kind.IsElectrolytic() => FitReason.Against(Aspect, pair, static p =>
                $"{Kinds(p)}: never an electrolytic for a dry dielectric"
            ),
            (CapacitorKind.Suppression, _) => FitReason.For(Aspect, pair, static p => $"{Kinds(p)}: the class decides, not the dielectric"),
            (_, CapacitorKind.CeramicClass2) => Class2(pair),
            _ when pair.Place.Kind.IsElectrolytic() => FitReason.For(Aspect, pair, static p =>
                $"{Kinds(p)}: longer lived where there is room"
            ),
            _ when pair.Place.Kind.IsPaper() => FitReason.For(Aspect, pair, static p => $"{Kinds(p)}: the usual replacement"),
            _ when IsPrecise(pair.Place.Duty) && pair.Place.Kind.IsStable() && !pair.Offer.Kind.IsStable() => FitReason.Against(
                Aspect,
                pair,
                static p => $"{Kinds(p)} in {Role(p.Place.Duty)}: drifts more"
            ),
            _ when IsPrecise(pair.Place.Duty)
                    || (pair.Place.Duty == CapacitorRole.Other && pair.Place.Kind.IsStable() && !pair.Offer.Kind.IsStable()) =>
                FitReason.Doubt(Aspect, pair, static p => $"{Kinds(p)} in {Role(p.Place.Duty)}: compare drift and temperature coefficient"),
            _ => FitReason.For(Aspect, pair, static p => $"{Kinds(p)}: as good in this role"),
        };

    private static FitReason AluminiumForTantalum(Pairing pair) =>
        pair.Place.Duty is CapacitorRole.Timing or CapacitorRole.Filter
            ? FitReason.Against(Aspect, pair, static p => $"{Kinds(p)} in {Role(p.Place.Duty)}: take film or a low-leakage part")
        : pair.Offer.Farads >= 1.5m * pair.Place.Farads
            ? FitReason.Doubt(Aspect, pair, static p => $"{Kinds(p)}: low-leakage or 105 degree part, check the height")
        : FitReason.Doubt(Aspect, pair, static p => $"{Kinds(p)}: 1.5 to 2 x the value makes up for the higher ESR");

    private static FitReason Class2(Pairing pair) =>
        pair.Place.Kind.IsStable() || IsPrecise(pair.Place.Duty)
            ? FitReason.Against(Aspect, pair, static p => $"{Kinds(p)}: its value moves with temperature, voltage and age")
            : FitReason.Doubt(Aspect, pair, static p => $"{Kinds(p)}: loses capacitance under voltage, allow for it");

    private static string Kinds(Pairing p) => $"{p.Offer.Kind.Words()} for {p.Place.Kind.Words()}";

    private static bool IsLowImpedance(CapacitorRole role) =>
        role is CapacitorRole.Reservoir or CapacitorRole.ValveReservoir or CapacitorRole.SwitchingOutput;

    private static bool IsPrecise(CapacitorRole role) => role is CapacitorRole.Timing or CapacitorRole.Filter or CapacitorRole.Tuned;

    private static string Role(CapacitorRole role) =>
        role switch
        {
            CapacitorRole.Coupling => "coupling",
            CapacitorRole.Timing => "timing",
            CapacitorRole.Filter => "a filter",
            CapacitorRole.Tuned => "a tuned circuit",
            _ => "a role that is not told",
        };
}
