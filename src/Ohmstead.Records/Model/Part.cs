using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Model;

/// <summary>What a part is, wherever it lies: in its place on a board, or in a lot in the drawer.</summary>
/// <param name="Kind">The kind of part.</param>
public sealed record PartValues(Written<PartKind> Kind) : IMarkedPart, IFitPart
{
    /// <summary>What it does in its place.</summary>
    public Written<PartRole>? Role { get; init; }

    /// <summary>Marked capacitance.</summary>
    public Written<Quantity>? Capacitance { get; init; }

    /// <summary>Marked resistance.</summary>
    public Written<Quantity>? Resistance { get; init; }

    /// <summary>Marked inductance.</summary>
    public Written<Quantity>? Inductance { get; init; }

    /// <summary>Marked tolerance.</summary>
    public Written<Tolerance>? Tolerance { get; init; }

    /// <summary>Rated voltage.</summary>
    public Written<Quantity>? RatedVoltage { get; init; }

    /// <summary>The voltage it sees in its place.</summary>
    public Written<Quantity>? WorkingVoltage { get; init; }

    /// <summary>Highest rated temperature.</summary>
    public Written<Quantity>? Temperature { get; init; }

    /// <summary>Power rating.</summary>
    public Written<Quantity>? Power { get; init; }

    /// <summary>Current rating.</summary>
    public Written<Quantity>? Current { get; init; }

    /// <summary>Speed of a fuse.</summary>
    public Written<FuseSpeed>? Speed { get; init; }

    /// <summary>Breaking capacity of a fuse.</summary>
    public Written<FuseBreaking>? Breaking { get; init; }

    /// <summary>Standard that a fuse is rated by.</summary>
    public Written<FuseSystem>? Standard { get; init; }

    /// <summary>Marked frequency.</summary>
    public Written<Quantity>? Frequency { get; init; }

    /// <summary>The part's own dissipation factor limit.</summary>
    public Written<Quantity>? LossFactorLimit { get; init; }

    /// <summary>The part's own or the design's ESR limit.</summary>
    public Written<Quantity>? EsrLimit { get; init; }

    /// <summary>The frequency at which the limits of ESR hold.</summary>
    public Written<Quantity>? EsrFrequency { get; init; }

    /// <summary>The least ESR that the circuit needs.</summary>
    public Written<Quantity>? EsrLow { get; init; }

    /// <summary>The part's own leakage limit.</summary>
    public Written<Quantity>? LeakageLimit { get; init; }

    /// <summary>Lowest value at which the circuit still works.</summary>
    public Written<Quantity>? Low { get; init; }

    /// <summary>Highest value at which the circuit still works.</summary>
    public Written<Quantity>? High { get; init; }

    /// <summary>Rated life.</summary>
    public Written<Quantity>? Life { get; init; }

    /// <summary>Rated ripple current.</summary>
    public Written<Quantity>? RippleCurrent { get; init; }

    /// <summary>Whether it has a right way round, where the kind does not say it.</summary>
    public Written<PartPolarity>? Polarity { get; init; }

    /// <summary>Safety class of a suppression capacitor.</summary>
    public Written<SafetyClass>? SafetyClass { get; init; }

    /// <summary>What it is made of: junction, dielectric or chemistry.</summary>
    public Written<PartMaterial>? Material { get; init; }

    /// <summary>Cells in series.</summary>
    public Written<int>? Cells { get; init; }

    /// <summary>Form of the body.</summary>
    public Written<PartForm>? Form { get; init; }

    /// <summary>Size of a fuse.</summary>
    public Written<FuseSize>? Size { get; init; }

    /// <summary>Distance between the leads.</summary>
    public Written<Quantity>? LeadPitch { get; init; }

    /// <summary>Diameter of the can.</summary>
    public Written<Quantity>? Diameter { get; init; }

    /// <summary>Height of the can.</summary>
    public Written<Quantity>? Height { get; init; }

    /// <summary>Maker.</summary>
    public Written<string>? Maker { get; init; }

    /// <summary>Series.</summary>
    public Written<string>? Series { get; init; }

    /// <summary>Type number.</summary>
    public Written<string>? Type { get; init; }

    /// <summary>Date code as printed.</summary>
    public Written<string>? DateCode { get; init; }

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }

    /// <inheritdoc/>
    Written<Quantity>? IMarkedPart.VoltageOfPaper => Kind.Value.IsPaper ? WorkingVoltage ?? RatedVoltage : null;

    /// <inheritdoc/>
    Written<SafetyClass>? IMarkedPart.ClassOfSuppressor => PartKind.IsSuppressor(this) ? SafetyClass : null;

    /// <inheritdoc/>
    Written<PartRole>? IMarkedPart.RoleOfSuppressor => SafetyClass is null && PartKind.IsSuppressor(this) ? Role : null;

    /// <inheritdoc/>
    Written<PartForm>? IMarkedPart.FormOfSuppressor => PartKind.IsSuppressor(this) ? Form : null;

    /// <inheritdoc/>
    Written<string>? IMarkedPart.TellingType => Kind.Value.TypeTellsVoltage ? Type : null;
}

/// <summary>A part in its place on a board.</summary>
/// <param name="Ref">The reference designator.</param>
/// <param name="Values">What belongs there.</param>
/// <param name="Spot">Where it is written.</param>
/// <param name="FromDesign">The path of the design that says so, or null when the board itself does.</param>
public sealed record Part(Written<string> Ref, PartValues Values, Spot Spot, string? FromDesign);
