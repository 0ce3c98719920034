namespace Ohmstead.Assessment.Life;

/// <summary>When the life of a part may be used up, without the working.</summary>
/// <param name="Reference">The reference designator.</param>
/// <param name="Earliest">The earliest date.</param>
/// <param name="Latest">The latest date.</param>
/// <param name="LastRead">The last day on which it was measured, or null.</param>
public sealed record LifeDates(string Reference, DateOnly Earliest, DateOnly Latest, DateOnly? LastRead)
{
    /// <summary>
    /// The day on which it should be measured because of its age: the earliest date, or the latest once it was measured after the earliest;
    /// null when it was measured after both, since then its readings say more than any estimate.
    /// </summary>
    public DateOnly? MeasureOn =>
        LastRead >= Latest ? null
        : LastRead >= Earliest ? Latest
        : Earliest;

    /// <summary>True when even the latest date is past on a day and nothing was measured since.</summary>
    public bool IsPastOn(DateOnly day) => Latest < day && !(LastRead >= Latest);
}
