namespace Ohmstead.Report.Drawings;

/// <summary>Which limits a strip shows.</summary>
public enum StripBand
{
    /// <summary>None is known.</summary>
    None,

    /// <summary>A lower and an upper one.</summary>
    Between,

    /// <summary>An upper one alone.</summary>
    AtMost,

    /// <summary>A lower one alone.</summary>
    AtLeast,
}

/// <summary>Where everything on the strip of one reading goes, in units of the drawing (one pixel each), from 0 to
/// <see cref="StripScale.Wide"/>.</summary>
/// <param name="Band">Which limits there are. A lower one always stands at <see cref="StripScale.Lower"/>, an upper one at
/// <see cref="StripScale.Upper"/>.</param>
/// <param name="At">The middle of the reading's shape.</param>
/// <param name="Low">The lower end of its uncertainty; equal to <paramref name="High"/> where none is known or the shape covers it.</param>
/// <param name="High">The upper end of its uncertainty.</param>
/// <param name="Nominal">The nominal value, or null where there is none on the strip.</param>
/// <param name="IsDecades">True when equal steps are equal factors, one decade each; else equal steps are equal amounts.</param>
/// <param name="IsBeyond">True when the reading lies beyond the end of the strip and is shown at the end, behind a break.</param>
public readonly record struct StripDrawing(
    StripBand Band,
    decimal At,
    decimal Low,
    decimal High,
    decimal? Nominal,
    bool IsDecades,
    bool IsBeyond
)
{
    /// <summary>Where the part that sat there before lay on the same scale, at the end where it lay beyond it; null where there is
    /// none.</summary>
    public decimal? Before { get; init; }

    /// <summary>True when that part lay beyond the end of the strip.</summary>
    public bool IsBeforeBeyond { get; init; }
}
