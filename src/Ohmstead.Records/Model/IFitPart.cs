using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Records.Model;

/// <summary>
/// What of a part may decide what fits in its place, or where it fits itself. Rules for that see a part through this alone, so places that
/// are alike in it have one answer.
/// </summary>
public interface IFitPart
{
    /// <summary>The kind of part.</summary>
    Written<PartKind> Kind { get; }

    /// <summary>What it does in its place.</summary>
    Written<PartRole>? Role { get; }

    /// <summary>Marked capacitance.</summary>
    Written<Quantity>? Capacitance { get; }

    /// <summary>Marked resistance.</summary>
    Written<Quantity>? Resistance { get; }

    /// <summary>Marked inductance.</summary>
    Written<Quantity>? Inductance { get; }

    /// <summary>Marked frequency.</summary>
    Written<Quantity>? Frequency { get; }

    /// <summary>Marked tolerance.</summary>
    Written<Tolerance>? Tolerance { get; }

    /// <summary>Rated voltage.</summary>
    Written<Quantity>? RatedVoltage { get; }

    /// <summary>The voltage it sees in its place.</summary>
    Written<Quantity>? WorkingVoltage { get; }

    /// <summary>Highest rated temperature.</summary>
    Written<Quantity>? Temperature { get; }

    /// <summary>Power rating.</summary>
    Written<Quantity>? Power { get; }

    /// <summary>Current rating.</summary>
    Written<Quantity>? Current { get; }

    /// <summary>Speed of a fuse.</summary>
    Written<FuseSpeed>? Speed { get; }

    /// <summary>Breaking capacity of a fuse.</summary>
    Written<FuseBreaking>? Breaking { get; }

    /// <summary>Standard that a fuse is rated by.</summary>
    Written<FuseSystem>? Standard { get; }

    /// <summary>Size of a fuse.</summary>
    Written<FuseSize>? Size { get; }

    /// <summary>Rated ripple current.</summary>
    Written<Quantity>? RippleCurrent { get; }

    /// <summary>The part's own or the design's ESR limit.</summary>
    Written<Quantity>? EsrLimit { get; }

    /// <summary>The least ESR that the circuit needs.</summary>
    Written<Quantity>? EsrLow { get; }

    /// <summary>Lowest value at which the circuit still works.</summary>
    Written<Quantity>? Low { get; }

    /// <summary>Highest value at which the circuit still works.</summary>
    Written<Quantity>? High { get; }

    /// <summary>Whether it has a right way round, where the kind does not say it.</summary>
    Written<PartPolarity>? Polarity { get; }

    /// <summary>Safety class of a suppression capacitor.</summary>
    Written<SafetyClass>? SafetyClass { get; }

    /// <summary>What it is made of: junction, dielectric or chemistry.</summary>
    Written<PartMaterial>? Material { get; }

    /// <summary>Cells in series.</summary>
    Written<int>? Cells { get; }

    /// <summary>Form of the body.</summary>
    Written<PartForm>? Form { get; }

    /// <summary>Distance between the leads.</summary>
    Written<Quantity>? LeadPitch { get; }

    /// <summary>Diameter of the can.</summary>
    Written<Quantity>? Diameter { get; }

    /// <summary>Height of the can.</summary>
    Written<Quantity>? Height { get; }

    /// <summary>Type number.</summary>
    Written<string>? Type { get; }
}
