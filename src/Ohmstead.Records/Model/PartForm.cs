namespace Ohmstead.Records.Model;

/// <summary>The body of a part and how its leads leave it.</summary>
public enum PartForm
{
    /// <summary>A lead at each end.</summary>
    Axial,

    /// <summary>Both leads at one end.</summary>
    Radial,

    /// <summary>Stiff pins that snap into the board.</summary>
    SnapIn,

    /// <summary>A can with lugs.</summary>
    Can,

    /// <summary>Screw terminals.</summary>
    Screw,

    /// <summary>Surface mounted.</summary>
    Chip,

    /// <summary>A disc of ceramic with both leads at one end.</summary>
    Disc,

    /// <summary>A dipped bead with both leads at one end.</summary>
    Bead,

    /// <summary>Some other form: two of them are not one form.</summary>
    Other,
}
