namespace Ohmstead.Records.Model;

/// <content>Semiconductors.</content>
public static partial class PartKinds
{
    /// <summary>A diode.</summary>
    public static PartKind Diode { get; } =
        new("diode", PartFamily.Other)
        {
            Letters = [May("D"), May("CR"), May("V", 2)],
            ListedBy = TypeNumber.InsteadOfValues,
            Materials = [PartMaterial.Silicon, PartMaterial.Germanium, PartMaterial.Schottky],
            Junction = Junction.Rectifying,
            HasRightWayRound = true,
            Accepted = Accept("silicon diode"),
        };

    /// <summary>A diode that holds a voltage.</summary>
    public static PartKind ZenerDiode { get; } =
        new("zener diode", PartFamily.Other)
        {
            Letters = [May("D", 1), May("CR", 1), May("P", 3), May("RV", 3), May("VR", 3)],
            ListedBy = TypeNumber.InsteadOfValues,
            Materials = [PartMaterial.Silicon],
            Junction = Junction.Breakdown,
            HasRightWayRound = true,
            Voltage = VoltageMeaning.Given,
            TypeTellsVoltage = true,
            // It may act only when something else fails: that the board works proves nothing of it.
            ProvedBy = [Measured.Voltage],
            IsTestedByUse = true,
            Accepted = Accept("Zener diode"),
        };

    /// <summary>Four diodes in one body.</summary>
    public static PartKind BridgeRectifier { get; } =
        new("bridge rectifier", PartFamily.Other)
        {
            Letters = [Means("BR"), May("D", 2), May("CR", 2)],
            ListedBy = TypeNumber.InsteadOfValues,
            Materials = [PartMaterial.Silicon, PartMaterial.Germanium, PartMaterial.Schottky],
            Junction = Junction.Rectifying,
            HasRightWayRound = true,
        };

    /// <summary>Plates of selenium.</summary>
    public static PartKind SeleniumRectifier { get; } =
        new("selenium rectifier", PartFamily.Other)
        {
            Letters = [May("D", 3), May("CR", 3)],
            ListedBy = TypeNumber.InsteadOfValues,
            HasRightWayRound = true,
        };

    /// <summary>A transistor of germanium.</summary>
    public static PartKind GermaniumTransistor { get; } =
        new("germanium transistor", PartFamily.Transistor)
        {
            Letters = [May("Q", 1), May("T", 2), May("TR", 2)],
            ListedBy = TypeNumber.Alone,
            Materials = [PartMaterial.Germanium],
            Junction = Junction.Base,
            Accepted = Accept("bipolar transistor"),
        };

    /// <summary>A transistor.</summary>
    public static PartKind Transistor { get; } =
        new("transistor", PartFamily.Transistor)
        {
            Letters = [Means("Q"), May("T", 1), May("TR", 1), May("V", 1)],
            ListedBy = TypeNumber.Alone,
            HasTellingName = true,
            Materials = [PartMaterial.Silicon, PartMaterial.Germanium],
            Junction = Junction.Base,
            Accepted = Accept("bipolar transistor"),
        };

    /// <summary>A regulator or a reference.</summary>
    public static PartKind Regulator { get; } =
        new("regulator", PartFamily.Other)
        {
            Letters = [May("P", 2), May("RV", 2), May("VR", 2), May("U", 2), May("IC", 2)],
            ListedBy = TypeNumber.InsteadOfValues,
            HasTellingName = true,
            Materials = [PartMaterial.Silicon],
            Voltage = VoltageMeaning.Given,
            TypeTellsVoltage = true,
            Accepted = Accept("regulator"),
        };

    /// <summary>An integrated circuit.</summary>
    public static PartKind IntegratedCircuit { get; } =
        new("integrated circuit", PartFamily.Other)
        {
            Letters = [Means("U"), Means("IC")],
            ListedBy = TypeNumber.Alone,
            Materials = [PartMaterial.Silicon],
            Accepted = Accept("integrated circuit"),
        };

    /// <summary>A memory.</summary>
    public static PartKind Memory { get; } =
        new("memory", PartFamily.Other)
        {
            Letters = [May("U", 1), May("IC", 1)],
            ListedBy = TypeNumber.Alone,
            Materials = [PartMaterial.Silicon],
            Accepted = Accept("memory"),
        };
}
