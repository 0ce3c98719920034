using Ohmstead.Electronics.PreferredValues;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Substitution;

/// <summary>Voltage: never under the mark, and enough over what really occurs.</summary>
internal static class VoltageRules
{
    private const string Aspect = "voltage";
    private const decimal Margin = 1.1m;
    private const decimal PolymerMargin = 1.25m;
    private const decimal TantalumMargin = 2m;
    private const decimal AluminiumCeiling = 2m;

    private static readonly Source TantalumSource = Source.Published("KEMET derating guidelines for tantalum capacitors",
        "50 % to 85 degrees");

    internal static IEnumerable<Reason> Reasons(CapacitorPlace place, CapacitorOffer offer)
    {
        yield return offer.RatedVolts >= place.RatedVolts
            ? Reason.For(Aspect, $"{Figures.Text(offer.RatedVolts)} V is not under the mark of {Figures.Text(place.RatedVolts)} V")
            : Reason.Against(Aspect, $"{Figures.Text(offer.RatedVolts)} V is under the mark of {Figures.Text(place.RatedVolts)} V{Proposal(place.RatedVolts)}");
        (decimal margin, string why, Source source) = offer.Kind switch
        {
            CapacitorKind.TantalumSolid => (TantalumMargin, "solid tantalum", TantalumSource),
            CapacitorKind.Polymer => (PolymerMargin, "polymer", Source.CommonPractice),
            _ => (Margin, "any part", Source.CommonPractice),
        };
        if (place.WorstVolts is not { } worst)
        {
            if (offer.Kind == CapacitorKind.TantalumSolid)
            {
                yield return Reason.Doubt(Aspect, "solid tantalum wants twice the voltage that occurs, which is not known", source);
            }

            yield break;
        }

        string figures = $"{Figures.Text(offer.RatedVolts)} V for {Figures.Text(worst)} V at worst";
        bool strict = offer.Kind == CapacitorKind.TantalumSolid;
        yield return offer.RatedVolts >= margin * worst ? Reason.For(Aspect, $"{figures}: {Figures.Text(margin)} x or more", source)
            : strict || offer.RatedVolts < worst ? Reason.Against(Aspect, $"{figures}, expected {Figures.Text(margin)} x for {why}", source)
            : Reason.Doubt(Aspect, $"{figures}: under {Figures.Text(margin)} x for {why}", source);
        if (offer.Kind == CapacitorKind.AluminiumWet && offer.RatedVolts > Math.Max(AluminiumCeiling * worst, place.RatedVolts))
        {
            yield return Reason.Doubt(Aspect, $"{figures}: over twice costs size and some ESR, no more");
        }
    }

    private static string Proposal(decimal mark) =>
        RatedVoltages.Replace(new Quantity(mark, Dimension.Voltage)).Rating is { } rating
            ? $"; the lowest of today's ratings not under it is {Figures.Text(rating.Value)} V" : "";
}
