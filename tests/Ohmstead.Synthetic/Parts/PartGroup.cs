namespace Ohmstead.Synthetic.Parts;

/// <summary>Parts that are measured alike.</summary>
public enum PartGroup
{
    /// <summary>Electrolytic capacitors: capacitance and ESR at 120 Hz.</summary>
    Electrolytic,

    /// <summary>Film capacitors: capacitance and loss factor at 1 kHz.</summary>
    Film,

    /// <summary>Ceramic capacitors: capacitance and loss factor.</summary>
    Ceramic,

    /// <summary>Resistors.</summary>
    Resistor,

    /// <summary>Inductors.</summary>
    Inductor,

    /// <summary>Diodes: forward voltage.</summary>
    Diode,

    /// <summary>Transistors: gain.</summary>
    Transistor,

    /// <summary>Parts that are not measured.</summary>
    Other,
}
