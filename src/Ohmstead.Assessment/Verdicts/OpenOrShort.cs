using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Verdicts;

/// <summary>What a word of the meter says about the value.</summary>
internal enum WordMeaning
{
    /// <summary>The part has failed, whatever its mark.</summary>
    Failed,

    /// <summary>The value is no less than a figure.</summary>
    High,

    /// <summary>The value is no more than a figure.</summary>
    Low,

    /// <summary>A good part and a failed one read alike.</summary>
    Doubtful,

    /// <summary>Nothing about this quantity.</summary>
    Silent,
}

/// <summary>What open and short mean, quantity by quantity and by what the part is. In one place, because each line is a judgement with its
/// reason.</summary>
/// <remarks>
/// All of it is common practice and follows from what passes through the part; the figures are what ordinary meters reach. A word decides
/// only where no meter could have given it of a good part: an open reading of a 10 MΩ resistor may be the end of the meter's range, that of
/// a fuse cannot.
/// </remarks>
/// <param name="Meaning">What it says.</param>
/// <param name="Figure">The figure of a high or low one, in the base unit of the quantity.</param>
/// <param name="Why">The reason, as it goes on behind the outcome.</param>
internal readonly record struct OpenOrShort(WordMeaning Meaning, decimal? Figure, LazyText Why)
{
    // Every meter for resistance reads this far, a moving coil too.
    private const decimal EveryMeterOhms = 2_000_000m;

    // Below this a continuity test sounds, whatever the meter.
    private const decimal ContinuityOhms = 100m;

    // Leads and clips show some picofarad and microhenry where nothing is connected; below ten times that a meter sees no difference.
    private const decimal NoCapacitanceFarads = 100e-12m;
    private const decimal NoInductanceHenries = 10e-6m;

    // Junctions in series in a high-voltage stick drop more than the two or three volts that a meter offers.
    private const decimal StickVolts = 2_000m;

    /// <summary>What a word says of a quantity of a part; of a test point where there is no part.</summary>
    internal static OpenOrShort Explain(IndicationKind word, Measured measured, IMarkedPart? part) =>
        word == IndicationKind.Open ? Open(measured, part) : Short(measured, part);

    private static OpenOrShort Open(Measured measured, IMarkedPart? part) =>
        (measured, FamilyOf(part)) switch
        {
            (Measured.Resistance, PartFamily.Fuse) => new(WordMeaning.Failed, null, "the fuse is blown: its wire is open"),
            (Measured.Resistance or Measured.Inductance, PartFamily.Inductor or PartFamily.Coil) => new(
                WordMeaning.Failed,
                null,
                "the winding is open: its wire is broken"
            ),
            (Measured.Resistance, PartFamily.Resistor) when part is { Resistance.Value.Value: > EveryMeterOhms } => new(
                WordMeaning.High,
                EveryMeterOhms,
                "a part of this size reads open on meters that do not reach so far: write the end of the range, as in \"> 20 MΩ\""
            ),
            (Measured.Resistance, PartFamily.Resistor) => new(
                WordMeaning.Failed,
                null,
                "nothing passes where every meter reads: the part is open"
            ),
            (Measured.Resistance, _) => new(
                WordMeaning.High,
                EveryMeterOhms,
                "nothing passes that the meter can see: write the end of its range, as in \"> 20 MΩ\""
            ),
            (Measured.Insulation, _) => new(
                WordMeaning.High,
                null,
                "it lies above what the meter can see: write the end of its range, as in \"> 20 GΩ\""
            ),
            (Measured.Capacitance, PartFamily.Capacitor) => new(
                WordMeaning.Low,
                NoCapacitanceFarads,
                "what is left is less than leads and clips have: write the figure that the meter shows"
            ),
            (Measured.Esr, PartFamily.Capacitor) when part!.Kind.Value.IsElectrolytic => new(
                WordMeaning.Failed,
                null,
                "nothing passes at the test frequency: the part is open"
            ),
            (Measured.Esr, _) => new(
                WordMeaning.High,
                null,
                "the reactance of a small part alone is beyond such a meter: write the end of its range, as in \"> 20 Ω\", or its "
                    + "capacitance"
            ),
            (Measured.ForwardVoltage, _) when part is { Kind.Value.Junction: not Junction.None } => part.RatedVoltage
                is { Value.Value: > StickVolts }
                ? new(
                    WordMeaning.High,
                    null,
                    "a stick of many junctions drops more than the meter offers: write the voltage that it offers, as in \"> 3 V\""
                )
                : new(WordMeaning.Failed, null, "no current passes forward: the junction is open"),
            (Measured.ForwardVoltage, _) => new(
                WordMeaning.High,
                null,
                "it drops more than the meter offers: write the voltage that it offers, as in \"> 3 V\""
            ),
            (Measured.LossFactor or Measured.VoltageLoss or Measured.Leakage, _) => new(
                WordMeaning.Silent,
                null,
                "an open part has none that could be read: write capacitance: open"
            ),
            _ => new(WordMeaning.Silent, null, "this is read as a figure: write what the meter shows"),
        };

    private static OpenOrShort Short(Measured measured, IMarkedPart? part) =>
        (measured, FamilyOf(part)) switch
        {
            (Measured.Esr, PartFamily.Capacitor) => new(
                WordMeaning.Doubtful,
                null,
                "a good part of low ESR and a shorted one read alike: read its resistance with direct current, and enter resistance: "
                    + "short or the figure"
            ),
            (
                Measured.Capacitance
                    or Measured.Resistance
                    or Measured.LossFactor
                    or Measured.Leakage
                    or Measured.Insulation
                    or Measured.VoltageLoss,
                PartFamily.Capacitor
            ) => new(WordMeaning.Failed, null, "direct current passes as through a wire: the part is shorted"),
            (Measured.Insulation, _) => new(WordMeaning.Failed, null, "what must be kept apart is connected as by a wire"),
            (Measured.Resistance or Measured.ForwardVoltage, _)
                when part is { Kind.Value: var kind } && (kind.Junction != Junction.None || kind == PartKinds.SeleniumRectifier) => new(
                WordMeaning.Failed,
                null,
                "it passes as a wire does: the junction is shorted"
            ),
            (Measured.Resistance, _) => new(
                WordMeaning.Low,
                ContinuityOhms,
                "a continuity test sounds up to some 100 Ω: write the figure that the meter shows"
            ),
            (Measured.Inductance, _) => new(
                WordMeaning.Low,
                NoInductanceHenries,
                "what is left is less than leads have: write the figure that the meter shows"
            ),
            _ => new(WordMeaning.Silent, null, "this is read as a figure: write what the meter shows"),
        };

    private static PartFamily FamilyOf(IMarkedPart? part) => part is null ? PartFamily.Other : part.Kind.Value.Family;
}
