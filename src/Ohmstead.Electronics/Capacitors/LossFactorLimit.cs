namespace Ohmstead.Electronics.Capacitors;

/// <summary>
/// The largest dissipation factor a series allows, in the three readings of "for more than 1000 µF add 0.02 for every 1000 µF".
/// </summary>
/// <remarks>The words leave open whether a part of a step counts. Completed steps only is the strict reading.</remarks>
/// <param name="Base">The limit up to 1000 µF.</param>
/// <param name="CompletedSteps">The limit when only full steps of 1000 µF count: the strict reading.</param>
/// <param name="ProRata">The limit when every microfarad counts its share.</param>
/// <param name="RoundedUp">The limit when a step that was begun counts in full: the wide reading.</param>
/// <param name="Hertz">The frequency it holds at.</param>
/// <param name="Arithmetic">The working of all three.</param>
/// <param name="Source">The series it comes from.</param>
public sealed record LossFactorLimit(
    decimal Base,
    decimal CompletedSteps,
    decimal ProRata,
    decimal RoundedUp,
    decimal Hertz,
    LazyText Arithmetic,
    Source Source
)
{
    /// <summary>True when the three readings give different limits, so that a part may lie between them.</summary>
    public bool ReadingsDiffer => CompletedSteps != RoundedUp;

    /// <summary>Inside when even the strict reading allows it, outside when even the wide one does not, else undecided.</summary>
    public LimitPosition Place(decimal lossFactor) =>
        lossFactor <= CompletedSteps ? LimitPosition.Inside
        : lossFactor > RoundedUp ? LimitPosition.Outside
        : LimitPosition.Undecided;
}

/// <summary>Where a value lies against a limit that can be read in more than one way.</summary>
public enum LimitPosition
{
    /// <summary>Inside by every reading; a value exactly on the limit is inside.</summary>
    Inside,

    /// <summary>Inside by one reading and outside by another.</summary>
    Undecided,

    /// <summary>Outside by every reading.</summary>
    Outside,
}
