using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.PreferredValues;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Substitution;

/// <summary>Voltage: never under the mark, and enough over what really occurs.</summary>
internal static class VoltageRules
{
    private const string Mark = "voltage";
    private const string Working = "working voltage";
    private const decimal AluminiumCeiling = 2m;

    private static readonly Source TantalumSource = Source.Published(
        "KEMET derating guidelines for tantalum capacitors",
        "50 % to 85 degrees"
    );

    internal static void Add(List<FitReason> reasons, Pairing pair)
    {
        (CapacitorPlace place, CapacitorOffer offer) = pair;
        if (place.IsOnMains)
        {
            // What the class and the mains ask is told with the class.
            return;
        }

        if (offer.RatedVolts is not { } rated)
        {
            reasons.Add(
                FitReason.Unwritten(Mark, place.RatedVolts is null ? "neither rated voltage is known" : "its rated voltage is not known")
            );
            return;
        }

        if (place.RatedVolts is { } mark)
        {
            reasons.Add(UnderTheMark(pair, mark, rated));
        }
        else if (place.WorstVolts is null)
        {
            reasons.Add(FitReason.Missing(Mark, "the voltage that the place asks for is not known"));
        }

        if (place.WorstVolts is { } worst)
        {
            reasons.Add(Occurring(pair, worst, rated));
            if (offer.Kind == CapacitorKind.AluminiumWet && rated > Math.Max(AluminiumCeiling * worst, place.RatedVolts ?? 0m))
            {
                reasons.Add(FitReason.For(Working, pair, static p => $"{InPlace(p)}: over twice costs size and some ESR, no more"));
            }
        }
        else if (offer.Kind == CapacitorKind.TantalumSolid)
        {
            reasons.Add(FitReason.Missing(Working, "solid tantalum wants twice the voltage that occurs, which is not known"));
        }
    }

    private static FitReason UnderTheMark(Pairing pair, decimal mark, decimal rated) =>
        rated >= mark
            ? FitReason.For(Mark, pair, static p => $"{Rated(p)} V is not under the mark of {Figures.Text(p.Place.RatedVolts!.Value)} V")
            : FitReason.Against(Mark, pair, static p =>
                $"{Rated(p)} V is under the mark of {Figures.Text(p.Place.RatedVolts!.Value)} V{Proposal(p.Place.RatedVolts!.Value)}"
            );

    private static FitReason Occurring(Pairing pair, decimal worst, decimal rated)
    {
        (decimal margin, _, Source source) = MarginOf(pair.Offer.Kind);
        bool strict = pair.Offer.Kind == CapacitorKind.TantalumSolid;
        return rated >= margin * worst
                ? FitReason.For(Working, pair, static p => $"{InPlace(p)}: {Figures.Text(MarginOf(p.Offer.Kind).Share)} x or more", source)
            : strict || rated < worst ? FitReason.Against(Working, pair, static p => $"{InPlace(p)}, expected {Expected(p)}", source)
            : FitReason.Doubt(Working, pair, static p => $"{InPlace(p)}: under {Expected(p)}", source);
    }

    private static (decimal Share, string Why, Source Source) MarginOf(CapacitorKind kind) =>
        kind switch
        {
            CapacitorKind.TantalumSolid => (2m, "solid tantalum", TantalumSource),
            CapacitorKind.Polymer => (1.25m, "polymer", Source.CommonPractice),
            _ => (1.1m, "any part", Source.CommonPractice),
        };

    private static string Expected(Pairing p)
    {
        (decimal margin, string why, _) = MarginOf(p.Offer.Kind);
        return $"{Figures.Text(margin)} x for {why}";
    }

    private static string InPlace(Pairing p) => $"{Rated(p)} V for {Figures.Text(p.Place.WorstVolts!.Value)} V in its place";

    private static string Rated(Pairing p) => Figures.Text(p.Offer.RatedVolts!.Value);

    private static string Proposal(decimal mark) =>
        RatedVoltages.Replace(new Quantity(mark, Dimension.Voltage)).Rating is { } rating
            ? $"; the lowest of today's ratings not under it is {Figures.Text(rating.Value)} V"
            : "";
}
