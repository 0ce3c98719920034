namespace Ohmstead.Electronics.Markings;

/// <summary>The parts that carry a print. The same letters say other things on other parts: Y2 is a safety class on a mains capacitor and
/// 820 pF on a chip.</summary>
[Flags]
public enum PrintedOn
{
    /// <summary>None.</summary>
    None = 0,

    /// <summary>Resistors.</summary>
    Resistor = 1,

    /// <summary>Film and paper capacitors.</summary>
    Film = 2,

    /// <summary>Ceramic and mica capacitors.</summary>
    Ceramic = 4,

    /// <summary>Aluminium and polymer electrolytics.</summary>
    Electrolytic = 8,

    /// <summary>Tantalum capacitors.</summary>
    Tantalum = 16,

    /// <summary>Suppression capacitors.</summary>
    Suppression = 32,

    /// <summary>Inductors and transformers.</summary>
    Inductor = 64,

    /// <summary>Fuses.</summary>
    Fuse = 128,

    /// <summary>All other parts.</summary>
    Other = 256,

    /// <summary>Capacitors of every kind.</summary>
    Capacitor = Film | Ceramic | Electrolytic | Tantalum | Suppression,

    /// <summary>Any part.</summary>
    Any = Resistor | Capacitor | Inductor | Fuse | Other,
}
