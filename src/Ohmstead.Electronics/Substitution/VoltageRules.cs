using Ohmstead.Electronics.PreferredValues;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Substitution;

/// <summary>Voltage: never under the mark, and enough over what really occurs.</summary>
internal static class VoltageRules
{
    private const string Mark = "voltage";
    private const string Working = "working voltage";
    private const decimal Margin = 1.1m;
    private const decimal PolymerMargin = 1.25m;
    private const decimal TantalumMargin = 2m;
    private const decimal AluminiumCeiling = 2m;

    private static readonly Source TantalumSource = Source.Published("KEMET derating guidelines for tantalum capacitors",
        "50 % to 85 degrees");

    internal static IEnumerable<Reason> Reasons(CapacitorPlace place, CapacitorOffer offer) => (place.RatedVolts, offer.RatedVolts) switch
    {
        (null, null) => [Reason.Missing(Mark, "neither rated voltage is known")],
        (_, null) => [Reason.Missing(Mark, "its rated voltage is not known")],
        ({ } mark, { } rated) => [UnderTheMark(mark, rated), .. Occurring(place, offer.Kind, rated)],
        (null, { } rated) =>
        [
            .. place.WorstVolts is null ? [Reason.Missing(Mark, "the voltage that the place asks for is not known")] : Array.Empty<Reason>(),
            .. Occurring(place, offer.Kind, rated),
        ],
    };

    private static Reason UnderTheMark(decimal mark, decimal rated) => rated >= mark
        ? Reason.For(Mark, () => $"{Figures.Text(rated)} V is not under the mark of {Figures.Text(mark)} V")
        : Reason.Against(Mark, () => $"{Figures.Text(rated)} V is under the mark of {Figures.Text(mark)} V{Proposal(mark)}");

    private static IEnumerable<Reason> Occurring(CapacitorPlace place, CapacitorKind kind, decimal rated)
    {
        (decimal margin, string why, Source source) = kind switch
        {
            CapacitorKind.TantalumSolid => (TantalumMargin, "solid tantalum", TantalumSource),
            CapacitorKind.Polymer => (PolymerMargin, "polymer", Source.CommonPractice),
            _ => (Margin, "any part", Source.CommonPractice),
        };
        if (place.WorstVolts is not { } worst)
        {
            if (kind == CapacitorKind.TantalumSolid)
            {
                yield return Reason.Missing(Working, "solid tantalum wants twice the voltage that occurs, which is not known");
            }

            yield break;
        }

        LazyText figures = new(() => $"{Figures.Text(rated)} V for {Figures.Text(worst)} V in its place");
        bool strict = kind == CapacitorKind.TantalumSolid;
        yield return rated >= margin * worst ? Reason.For(Working, () => $"{figures}: {Figures.Text(margin)} x or more", source)
            : strict || rated < worst ? Reason.Against(Working, () => $"{figures}, expected {Figures.Text(margin)} x for {why}", source)
            : Reason.Doubt(Working, () => $"{figures}: under {Figures.Text(margin)} x for {why}", source);
        if (kind == CapacitorKind.AluminiumWet && rated > Math.Max(AluminiumCeiling * worst, place.RatedVolts ?? 0m))
        {
            yield return Reason.For(Working, () => $"{figures}: over twice costs size and some ESR, no more");
        }
    }

    private static string Proposal(decimal mark) =>
        RatedVoltages.Replace(new Quantity(mark, Dimension.Voltage)).Rating is { } rating
            ? $"; the lowest of today's ratings not under it is {Figures.Text(rating.Value)} V" : "";
}
