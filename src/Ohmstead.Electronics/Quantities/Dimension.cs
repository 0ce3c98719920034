namespace Ohmstead.Electronics.Quantities;

/// <summary>What is measured. Each dimension has one base unit, in which <see cref="Quantity.Value"/> is held.</summary>
public enum Dimension
{
    /// <summary>A pure number.</summary>
    Number,

    /// <summary>Capacitance, in farad.</summary>
    Capacitance,

    /// <summary>Resistance, in ohm; also ESR and impedance.</summary>
    Resistance,

    /// <summary>Inductance, in henry.</summary>
    Inductance,

    /// <summary>Voltage, in volt.</summary>
    Voltage,

    /// <summary>Current, in ampere.</summary>
    Current,

    /// <summary>Power, in watt.</summary>
    Power,

    /// <summary>Energy, in joule.</summary>
    Energy,

    /// <summary>Charge, in coulomb.</summary>
    Charge,

    /// <summary>Frequency, in hertz.</summary>
    Frequency,

    /// <summary>Duration, in second. Written with s, min, h, d, weeks, months (of 30.4375 days) or years (of 365.25 days).</summary>
    Duration,

    /// <summary>Temperature, in degree Celsius.</summary>
    Temperature,

    /// <summary>Length, in metre.</summary>
    Length,

    /// <summary>Ratio, as a fraction of one: 20 % is held as 0.2. Dissipation factor is a ratio written with or without %.</summary>
    Ratio,
}
