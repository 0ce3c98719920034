namespace Ohmstead.Electronics.Parts;

/// <summary>How quickly a fuse opens: the letter of IEC 60127 before its current.</summary>
public enum FuseSpeed
{
    /// <summary>Very quick.</summary>
    FF,

    /// <summary>Quick.</summary>
    F,

    /// <summary>Medium.</summary>
    M,

    /// <summary>Slow: it bears a surge.</summary>
    T,

    /// <summary>Very slow.</summary>
    TT,
}

/// <summary>What current a fuse can interrupt: the letter of IEC 60127 behind its current, the lowest first.</summary>
public enum FuseBreaking
{
    /// <summary>Low: glass, mostly.</summary>
    L,

    /// <summary>Enhanced.</summary>
    E,

    /// <summary>High: ceramic, filled with sand, mostly.</summary>
    H,
}

/// <summary>By whose rules a fuse is rated. The same figure means another current in each.</summary>
public enum FuseSystem
{
    /// <summary>IEC 60127: the fuse carries its rated current.</summary>
    IEC,

    /// <summary>UL 248-14: the fuse opens at 1.35 times its rated current.</summary>
    UL,
}

/// <summary>A fuse, as a place asks for it or as it lies in the drawer. What is not known is null.</summary>
public sealed record Fuse
{
    /// <summary>Rated current in ampere.</summary>
    public decimal? RatedAmperes { get; init; }

    /// <summary>Its speed.</summary>
    public FuseSpeed? Speed { get; init; }

    /// <summary>Its breaking capacity.</summary>
    public FuseBreaking? Breaking { get; init; }

    /// <summary>Rated voltage in volt.</summary>
    public decimal? RatedVolts { get; init; }

    /// <summary>Its size.</summary>
    public FuseSize? Size { get; init; }

    /// <summary>The standard that its current is rated by, as it is told.</summary>
    public FuseSystem? System { get; init; }

    /// <summary>The standard, as far as it can be known: a letter of breaking capacity is of IEC 60127 alone.</summary>
    public FuseSystem? RatedBy => System ?? (Breaking is null ? null : FuseSystem.IEC);
}
