using System.Collections.Immutable;

namespace Ohmstead.Records.Model;

/// <content>Resistors and windings.</content>
public static partial class PartKinds
{
    private static readonly ImmutableArray<Designation> R = [May("R")];

    /// <summary>A rod of carbon and clay.</summary>
    public static PartKind CarbonCompositionResistor { get; } = Fixed("carbon composition resistor");

    /// <summary>Carbon film.</summary>
    public static PartKind CarbonFilmResistor { get; } = Fixed("carbon film resistor");

    /// <summary>Metal film.</summary>
    public static PartKind MetalFilmResistor { get; } = Fixed("metal film resistor");

    /// <summary>Wire wound.</summary>
    public static PartKind WireWoundResistor { get; } = Fixed("wire-wound resistor");

    /// <summary>Several resistors in one body.</summary>
    public static PartKind ResistorNetwork { get; } = new("resistor network", PartFamily.Resistor) { Letters = [May("R"), Means("RN")] };

    /// <summary>A resistor that is set.</summary>
    public static PartKind Potentiometer { get; } =
        new("potentiometer", PartFamily.Resistor)
        {
            Letters = [May("P"), May("RV"), May("VR")],
            HasTellingName = true,
            HasContacts = true,
            Accepted = Accept("potentiometer"),
        };

    /// <summary>A resistor that changes with warmth.</summary>
    public static PartKind Thermistor { get; } =
        new("thermistor", PartFamily.Resistor) { Letters = [Means("RT")], ListedBy = TypeNumber.InsteadOfValues };

    /// <summary>A coil or a choke.</summary>
    public static PartKind Inductor { get; } =
        new("inductor", PartFamily.Inductor) { Letters = [Means("L")], Accepted = Accept("inductor") };

    /// <summary>A transformer; its copper and its inductance stray as a choke's.</summary>
    public static PartKind Transformer { get; } =
        new("transformer", PartFamily.Inductor)
        {
            Letters = [May("T"), May("TR"), May("L", 1)],
            ListedBy = TypeNumber.InsteadOfValues,
            HasTellingName = true,
            Accepted = Accept("mains transformer"),
            StraysLike = Accept("inductor"),
        };

    /// <summary>A coil that pulls contacts. The voltage on it is that of its coil.</summary>
    public static PartKind Relay { get; } =
        new("relay", PartFamily.Coil)
        {
            Letters = [Means("K")],
            ListedBy = TypeNumber.InsteadOfValues,
            Voltage = VoltageMeaning.Given,
            HasContacts = true,
            Accepted = Accept("relay"),
        };

    /// <summary>A motor. The voltage on it is what it runs at.</summary>
    public static PartKind Motor { get; } =
        new("motor", PartFamily.Coil)
        {
            ListedBy = TypeNumber.InsteadOfValues,
            Voltage = VoltageMeaning.Given,
            Accepted = Accept("motor"),
        };

    private static PartKind Fixed(string name) =>
        new(name, PartFamily.Resistor)
        {
            Letters = R,
            IsFixedResistor = true,
            Accepted = Accept(name),
        };
}
