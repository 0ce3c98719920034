using Ohmstead.Assessment.History;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Notes;

/// <summary>
/// The voltage and the capacitance that the figures of a hazard are worked with: those of its entry, else those of the part at its place;
/// the capacitance is the highest that the marking allows.
/// </summary>
/// <param name="Farads">The highest capacitance.</param>
/// <param name="Volts">The voltage, without its sign.</param>
/// <param name="Words">Both in words.</param>
/// <param name="Arithmetic">How the capacitance was reached, with its separator; empty where it was taken as written.</param>
/// <param name="Source">Where the tolerance comes from.</param>
internal sealed record ChargeHeld(decimal Farads, decimal Volts, string Words, string Arithmetic, string Source)
{
    // An old electrolytic without a printed tolerance may have half as much again, another part a fifth: common practice.
    private static readonly Tolerance OfElectrolytic = Tolerance.Relative(-0.2m, 0.5m);
    private static readonly Tolerance OfOthers = Tolerance.Relative(0.2m);

    private const string Marked = "tolerance as marked";
    private const string Usual = "tolerance where none is marked: common practice";

    /// <summary>What a hazard holds, or null where its entry and its place say too little.</summary>
    public static ChargeHeld? By(AssessedHazard assessed)
    {
        var hazard = assessed.Hazard;
        var isDefaulted = hazard.Kind.Value is HazardKind.ChargedCapacitor or HazardKind.SwitchingSupply;
        var (volts, voltWords) = Voltage(assessed, isDefaulted);
        if (volts is not { } voltage)
        {
            return null;
        }

        if (hazard.Kind.Value == HazardKind.PictureTube)
        {
            // Glass and coating have no tolerance printed on them.
            return hazard.Capacitance is { } tube
                ? new(tube.Value.Value, voltage, $"{tube.Text} at {voltWords}", string.Empty, "as written")
                : null;
        }

        Highest? most = null;
        if (hazard.Capacitance is { } written)
        {
            most = Highest.For(written, assessed.Parts is [var first, ..] ? first : null);
        }

        foreach (var part in isDefaulted ? assessed.Parts : [])
        {
            if (part.Capacitance is { } marked && Highest.For(marked, part) is var own && (most is null || own.Farads > most.Farads))
            {
                most = own;
            }
        }

        return most is null ? null : new(most.Farads, voltage, $"{most.Words} at {voltWords}", most.Arithmetic, most.Source);
    }

    private static (decimal? Volts, string Words) Voltage(AssessedHazard assessed, bool isDefaulted)
    {
        if (assessed.Hazard.Voltage is { } written)
        {
            return (Math.Abs(written.Value.Value), written.Text);
        }

        var own = isDefaulted
            ? assessed
                .Parts.Select(part => part.WorkingVoltage ?? part.RatedVoltage)
                .Where(found => found is not null)
                .MaxBy(found => Math.Abs(found!.Value.Value))
            : null;
        return own is null ? (null, string.Empty) : (Math.Abs(own.Value.Value), $"the {own.Text} of its place");
    }

    private sealed record Highest(decimal Farads, string Words, string Arithmetic, string Source)
    {
        internal static Highest For(Written<Quantity> marked, PartValues? part)
        {
            var own = part?.Tolerance;
            var tolerance = own?.Value ?? (part is null || part.Kind.Value.IsElectrolytic ? OfElectrolytic : OfOthers);
            if (tolerance.Apply(marked.Value).Upper is not { Dimension: Dimension.Capacitance } upper || upper.Value <= marked.Value.Value)
            {
                return new(marked.Value.Value, marked.Text, string.Empty, Marked);
            }

            var most = QuantityText.Format(upper);
            return new(
                upper.Value,
                $"{marked.Text} (which may be {most})",
                $"{marked.Text} {tolerance} may be {most}; ",
                own is null ? Usual : Marked
            );
        }
    }
}
