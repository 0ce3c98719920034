namespace Ohmstead.Electronics.Parts;

/// <summary>
/// The size of a fuse: the cartridges of IEC 60127-2, older ones of the trade, and those that are soldered in (IEC 60127-3 and -4).
/// </summary>
public enum FuseSize
{
    /// <summary>5 mm x 20 mm.</summary>
    FiveByTwenty,

    /// <summary>6.3 mm x 32 mm, a quarter of an inch by one and a quarter.</summary>
    SixByThirtyTwo,

    /// <summary>6.3 mm x 25 mm.</summary>
    SixByTwentyFive,

    /// <summary>5 mm x 25 mm.</summary>
    FiveByTwentyFive,

    /// <summary>5 mm x 30 mm.</summary>
    FiveByThirty,

    /// <summary>With leads, soldered in.</summary>
    SubMiniature,

    /// <summary>Surface mounted.</summary>
    Chip,

    /// <summary>Some other size: two of them are not one size.</summary>
    Other,
}
