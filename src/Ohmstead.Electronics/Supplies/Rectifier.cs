namespace Ohmstead.Electronics.Supplies;

/// <summary>How a rectifier feeds its reservoir.</summary>
public enum Rectifier
{
    /// <summary>One diode: one pulse a cycle.</summary>
    HalfWave,

    /// <summary>Two diodes on a centre-tapped winding: two pulses a cycle, one diode drop.</summary>
    CentreTap,

    /// <summary>Four diodes: two pulses a cycle, two diode drops.</summary>
    Bridge,
}

/// <summary>What follows from the kind of rectifier.</summary>
public static class RectifierFacts
{
    /// <summary>Charging pulses in one cycle of the mains.</summary>
    public static int PulsesPerCycle(this Rectifier rectifier) => rectifier == Rectifier.HalfWave ? 1 : 2;

    /// <summary>Diodes the current passes one after the other.</summary>
    public static int DiodesInPath(this Rectifier rectifier) => rectifier == Rectifier.Bridge ? 2 : 1;
}
