namespace Ohmstead.Electronics.Markings;

/// <summary>The centimetre as a unit of capacitance, in the electrostatic (CGS) system of old Continental parts.</summary>
public static class ElectrostaticUnits
{
    /// <summary>One centimetre in farad: 10^5 / c² with c = 299 792 458 m/s, which is 1.112 65 pF.</summary>
    /// <remarks>Held to 28 decimal places, so 16 significant digits.</remarks>
    public const decimal FaradsPerCentimetre = 100000m / (299792458m * 299792458m);
}
