namespace Ohmstead.Records.Model;

/// <content>Everything else.</content>
public static partial class PartKinds
{
    /// <summary>A valve.</summary>
    public static PartKind Valve { get; } =
        new("valve", PartFamily.Other)
        {
            Letters = [May("V"), May("X", 2)],
            ListedBy = TypeNumber.Alone,
            HasTellingName = true,
            Accepted = Accept("valve"),
        };

    /// <summary>A crystal.</summary>
    public static PartKind Crystal { get; } =
        new("crystal", PartFamily.Crystal)
        {
            Letters = [Means("Y"), May("X")],
            ListedBy = TypeNumber.InsteadOfValues,
            Accepted = Accept("crystal"),
        };

    /// <summary>A fuse.</summary>
    public static PartKind Fuse { get; } =
        new("fuse", PartFamily.Fuse)
        {
            Letters = [Means("F")],
            IsSafety = true,
            Accepted = Accept("fuse"),
        };

    /// <summary>A switch.</summary>
    public static PartKind Switch { get; } =
        new("switch", PartFamily.Other)
        {
            Letters = [Means("S"), Means("SW")],
            ListedBy = TypeNumber.Alone,
            HasContacts = true,
        };

    /// <summary>A lamp. The voltage on it is what it burns at.</summary>
    public static PartKind Lamp { get; } =
        new("lamp", PartFamily.Other)
        {
            Letters = [May("DS"), May("LA")],
            ListedBy = TypeNumber.InsteadOfValues,
            Voltage = VoltageMeaning.Given,
        };

    /// <summary>A display.</summary>
    public static PartKind Display { get; } =
        new("display", PartFamily.Other) { Letters = [May("DS", 1), May("LA", 1)], ListedBy = TypeNumber.Alone };

    /// <summary>A cell or a pack of cells.</summary>
    public static PartKind Cell { get; } =
        new("cell", PartFamily.Other)
        {
            Letters = [Means("BT")],
            ListedBy = TypeNumber.InsteadOfValues,
            Materials =
            [
                PartMaterial.Lithium,
                PartMaterial.NickelCadmium,
                PartMaterial.NickelMetalHydride,
                PartMaterial.Alkaline,
                PartMaterial.ZincCarbon,
                PartMaterial.SilverOxide,
                PartMaterial.LeadAcid,
            ],
            HasRightWayRound = true,
            Voltage = VoltageMeaning.Given,
            Accepted = Accept("cell"),
        };

    /// <summary>A connector.</summary>
    public static PartKind Connector { get; } =
        new("connector", PartFamily.Other)
        {
            Letters = [Means("J"), May("P", 1), May("X", 1)],
            ListedBy = TypeNumber.Alone,
            HasContacts = true,
        };

    /// <summary>What the vocabulary has no word for.</summary>
    public static PartKind Other { get; } = new("other", PartFamily.Other) { ListedBy = TypeNumber.Alone, HasContacts = true };
}
