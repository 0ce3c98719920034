using System.Collections.Immutable;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Records.Model;

/// <summary>The families that kinds of part belong to.</summary>
public enum PartFamily
{
    /// <summary>Marked in farad.</summary>
    Capacitor,

    /// <summary>Marked in ohm.</summary>
    Resistor,

    /// <summary>Marked in henry, transformers included.</summary>
    Inductor,

    /// <summary>Marked in hertz.</summary>
    Crystal,

    /// <summary>Marked in ampere.</summary>
    Fuse,

    /// <summary>A winding with an armature, marked in ohm: relays and motors.</summary>
    Coil,

    /// <summary>Judged by its current gain.</summary>
    Transistor,

    /// <summary>Everything that is judged by pass or fail, by a voltage, or not at all.</summary>
    Other,
}

/// <summary>What a family has in common.</summary>
/// <param name="MarkedIn">The quantity that its parts are marked with.</param>
/// <param name="MainQuantity">What is measured when the main value is measured, or null.</param>
/// <param name="UsuallyMeasured">What a bench usually measures.</param>
/// <param name="MayGive">What a reading may give; default for anything.</param>
/// <param name="ProvedBy">What says of a new one that it is what its mark says; empty where the board has to say it.</param>
/// <param name="IsTestedByUse">Whether a test of its function says that too.</param>
internal sealed record FamilyFacts(
    Dimension MarkedIn,
    Measured? MainQuantity,
    ImmutableArray<Measured> UsuallyMeasured,
    ImmutableArray<Measured> MayGive,
    ImmutableArray<Measured> ProvedBy,
    bool IsTestedByUse
);

/// <summary>One row for each family. Common practice.</summary>
internal static class PartFamilies
{
    private static readonly FamilyFacts Capacitor = new(
        Dimension.Capacitance,
        Measured.Capacitance,
        [Measured.Capacitance, Measured.LossFactor],
        [
            Measured.Capacitance,
            Measured.Esr,
            Measured.LossFactor,
            Measured.Leakage,
            Measured.Insulation,
            Measured.VoltageLoss,
            Measured.Voltage,
            Measured.Ripple,
            Measured.Resistance,
        ],
        [Measured.Capacitance],
        IsTestedByUse: false
    );

    private static readonly FamilyFacts Resistor = new(
        Dimension.Resistance,
        Measured.Resistance,
        [Measured.Resistance],
        [Measured.Resistance, Measured.Voltage, Measured.Current],
        [Measured.Resistance],
        IsTestedByUse: false
    );

    private static readonly FamilyFacts Inductor = new(
        Dimension.Inductance,
        Measured.Inductance,
        [Measured.Inductance, Measured.Resistance],
        [Measured.Inductance, Measured.Resistance, Measured.Voltage, Measured.Current, Measured.Insulation],
        [Measured.Inductance, Measured.Resistance, Measured.Voltage],
        IsTestedByUse: true
    );

    private static readonly FamilyFacts Crystal = new(
        Dimension.Frequency,
        Measured.Frequency,
        [Measured.Frequency],
        [Measured.Resistance, Measured.Capacitance],
        [Measured.Frequency],
        IsTestedByUse: true
    );

    private static readonly FamilyFacts Fuse = new(
        Dimension.Current,
        null,
        [],
        [Measured.Resistance, Measured.Current, Measured.Voltage],
        [Measured.Resistance],
        IsTestedByUse: true
    );

    private static readonly FamilyFacts Coil = new(
        Dimension.Resistance,
        Measured.Resistance,
        [Measured.Resistance],
        default,
        [],
        IsTestedByUse: false
    );

    private static readonly FamilyFacts Transistor = new(
        Dimension.Number,
        Measured.Gain,
        [Measured.Gain, Measured.ForwardVoltage],
        default,
        [],
        IsTestedByUse: false
    );

    private static readonly FamilyFacts Other = new(
        Dimension.Voltage,
        Measured.Voltage,
        [Measured.ForwardVoltage, Measured.Voltage],
        default,
        [],
        IsTestedByUse: false
    );

    /// <summary>What is usually measured of an electrolytic, which its family's other members have no leakage worth reading for.</summary>
    internal static ImmutableArray<Measured> OfElectrolytics { get; } = [Measured.Capacitance, Measured.Esr, Measured.Leakage];

    /// <summary>The row of a family.</summary>
    internal static FamilyFacts For(PartFamily family) =>
        family switch
        {
            PartFamily.Capacitor => Capacitor,
            PartFamily.Resistor => Resistor,
            PartFamily.Inductor => Inductor,
            PartFamily.Crystal => Crystal,
            PartFamily.Fuse => Fuse,
            PartFamily.Coil => Coil,
            PartFamily.Transistor => Transistor,
            PartFamily.Other => Other,
        };
}
