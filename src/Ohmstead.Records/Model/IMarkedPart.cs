using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Records.Model;

/// <summary>
/// What of a part its limits and their words may depend on. Limits see a part through this alone, so parts that are alike in it share them.
/// </summary>
public interface IMarkedPart
{
    /// <summary>The kind of part.</summary>
    Written<PartKind> Kind { get; }

    /// <summary>Marked capacitance.</summary>
    Written<Quantity>? Capacitance { get; }

    /// <summary>Marked resistance.</summary>
    Written<Quantity>? Resistance { get; }

    /// <summary>Marked inductance.</summary>
    Written<Quantity>? Inductance { get; }

    /// <summary>Marked frequency.</summary>
    Written<Quantity>? Frequency { get; }

    /// <summary>Current rating.</summary>
    Written<Quantity>? Current { get; }

    /// <summary>Rated voltage.</summary>
    Written<Quantity>? RatedVoltage { get; }

    /// <summary>
    /// The voltage that the insulation of old paper is tested at: that of its place, else its own. Null for other kinds, whose place
    /// decides nothing.
    /// </summary>
    Written<Quantity>? VoltageOfPaper { get; }

    /// <summary>Marked tolerance.</summary>
    Written<Tolerance>? Tolerance { get; }

    /// <summary>The part's own dissipation factor limit.</summary>
    Written<Quantity>? LossFactorLimit { get; }

    /// <summary>The part's own or the design's ESR limit.</summary>
    Written<Quantity>? EsrLimit { get; }

    /// <summary>The frequency at which the limits of ESR hold.</summary>
    Written<Quantity>? EsrFrequency { get; }

    /// <summary>The least ESR that the circuit needs.</summary>
    Written<Quantity>? EsrLow { get; }

    /// <summary>The part's own leakage limit.</summary>
    Written<Quantity>? LeakageLimit { get; }

    /// <summary>Lowest value at which the circuit still works.</summary>
    Written<Quantity>? Low { get; }

    /// <summary>Highest value at which the circuit still works.</summary>
    Written<Quantity>? High { get; }

    /// <summary>What it is made of.</summary>
    Written<PartMaterial>? Material { get; }

    /// <summary>Cells in series.</summary>
    Written<int>? Cells { get; }

    /// <summary>The type number of a kind whose type tells its voltage. Null for other kinds, whose types only name them.</summary>
    Written<string>? TellingType { get; }

    /// <summary>The safety class of a capacitor that stands on the mains. Null for other parts.</summary>
    Written<SafetyClass>? ClassOfSuppressor { get; }

    /// <summary>What such a capacitor does there, where it has no safety class. Null for other parts.</summary>
    Written<PartRole>? RoleOfSuppressor { get; }

    /// <summary>The form of such a capacitor: a disc is of ceramic. Null for other parts, whose form decides nothing.</summary>
    Written<PartForm>? FormOfSuppressor { get; }
}
