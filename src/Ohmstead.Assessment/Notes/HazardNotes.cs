using Ohmstead.Assessment.History;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Hazard = Ohmstead.Electronics.Hazards.Hazard;

namespace Ohmstead.Assessment.Notes;

/// <summary>
/// What the figures of a hazard come to: stored energy, the time to bleed down and the power of the bleeder, and which limits in standards
/// they are above. Nothing here says that something may be touched; see <see cref="SafetyNotice.Defer"/>.
/// </summary>
public static class HazardNotes
{
    private static readonly LimitInStandard BleedsTo = LimitInStandard.All.First(limit =>
        limit is { Kind: LimitedQuantity.Voltage, Unit: "V d.c.", Value: 60m, Source.Basis: SourceBasis.Published }
    );

    /// <summary>The usual cautions of a kind of hazard, without the closing words; empty when the catalogue has none.</summary>
    public static IReadOnlyList<string> Cautions(HazardKind kind) =>
        Known(kind)?.Cautions.Where(caution => caution != SafetyNotice.Defer).ToArray() ?? [];

    /// <summary>Where the cautions of a kind come from, or null.</summary>
    public static string? CautionSource(HazardKind kind) => Known(kind)?.Source.Text;

    /// <summary>What the figures of a hazard come to, one note each.</summary>
    public static IReadOnlyList<WorkedNote> Figures(AssessedHazard assessed)
    {
        var notes = new List<WorkedNote>(2);
        if (ChargeHeld.By(assessed) is not { } held)
        {
            return notes;
        }

        if (StoredEnergy.Compute(held.Farads, held.Volts).Is(out var energy, out _))
        {
            var joules = QuantityText.Format(new Quantity(decimal.Round(energy.Joules, 4), Dimension.Energy), 3);
            notes.Add(
                new(
                    $"{held.Words} holds {joules}{ComesBack(assessed, held)}",
                    $"{held.Arithmetic}{energy.Arithmetic}",
                    $"{StoredEnergy.Source.Text}; {held.Source}; {StoredEnergy.RecoverySource.Text}; {StoredEnergy.RecoveryTimeSource.Text}"
                )
            );
        }

        if (
            assessed.Hazard.Bleed is { } bleed
            && held.Volts > BleedsTo.Value
            && Discharge
                .Seconds((double)bleed.Value.Value, (double)held.Farads, (double)held.Volts, (double)BleedsTo.Value)
                .Is(out var seconds, out _)
            && Discharge.PeakWatts((double)held.Volts, (double)bleed.Value.Value).Is(out var watts, out _)
            && watts < 1e12
        )
        {
            notes.Add(
                new(
                    $"through {bleed.Text} it needs "
                        + $"{QuantityText.Format(new Quantity((decimal)Math.Ceiling(seconds.Value), Dimension.Duration))} to fall to 60 "
                        + "V, if the resistor is not open: measure; the resistor takes "
                        + $"{QuantityText.Format(new Quantity((decimal)watts, Dimension.Power), 3)} at the first moment",
                    seconds.Arithmetic.Text,
                    $"{seconds.Source.Text}; 60 V d.c.: {BleedsTo.Source.Text}"
                )
            );
        }

        return notes;
    }

    /// <summary>The limits of standards that the voltage, the charge or the stored energy of a hazard is above, each with its source. One
    /// that is not above is not told: it would read like a permission.</summary>
    public static IReadOnlyList<string> Above(AssessedHazard assessed)
    {
        var held = ChargeHeld.By(assessed);
        if ((held?.Volts ?? assessed.Hazard.Voltage?.Value.Value) is not { } volts)
        {
            return [];
        }

        return
        [
            .. LimitInStandard
                .All.Where(limit => limit.IsPassedBy(held?.Farads ?? 0m, Math.Abs(volts)))
                .Select(limit =>
                    $"{QuantityText.Format(new Quantity(limit.Value, Dimension.Number))} {limit.Unit}, {limit.Condition} "
                    + $"({limit.Source.Text})"
                ),
        ];
    }

    private static string ComesBack(AssessedHazard assessed, ChargeHeld held) =>
        assessed.Hazard.Kind.Value == HazardKind.PictureTube
            ? "; the charge comes back within minutes after it was let down: again right before you touch"
        : StoredEnergy.RecoveredVolts(held.Volts).Is(out var back, out _)
            ? $", and may get back {QuantityText.Format(new Quantity(back.Value, Dimension.Voltage), 3)} by itself in the days after it "
                + "was let down"
        : string.Empty;

    private static Hazard? Known(HazardKind kind)
    {
        var name = CatalogueName(kind);
        return HazardCatalogue.All.FirstOrDefault(known => known.Name == name);
    }

    private static string CatalogueName(HazardKind kind) =>
        kind switch
        {
            HazardKind.Mains => "mains",
            HazardKind.ChargedCapacitor => "stored-energy",
            HazardKind.PictureTube => "picture-tube",
            HazardKind.LeakingCell => "rechargeable-cell",
            HazardKind.LithiumCell => "lithium-cell",
            HazardKind.OilFilledPart => "polychlorinated-oil",
            HazardKind.Asbestos => "asbestos",
            HazardKind.SeleniumRectifier => "selenium",
            HazardKind.Beryllia => "beryllia",
            HazardKind.Mercury => "mercury",
            HazardKind.Radium => "radium",
            HazardKind.HotParts => "hot-parts",
            HazardKind.CrazedSuppressor => "crazed-suppressor",
            HazardKind.LeadAndFlux => "lead-and-flux",
            HazardKind.SwitchingSupply => "switching-primary",
            HazardKind.CellPack => "cell-pack",
            HazardKind.LeakedElectrolyte => "electrolyte",
        };
}
