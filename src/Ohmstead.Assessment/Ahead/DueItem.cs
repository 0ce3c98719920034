using Ohmstead.Electronics;

namespace Ohmstead.Assessment.Ahead;

/// <summary>Something that falls due.</summary>
/// <param name="First">The day it falls due, or the first day it may.</param>
/// <param name="Last">The last day it may; the same when the day is known.</param>
/// <param name="Kind">Why.</param>
/// <param name="Whom">The board, lot or instrument.</param>
/// <param name="Place">The part on the board, or null.</param>
/// <param name="What">What to do, in words.</param>
/// <param name="Why">How the day was reached, in words.</param>
public sealed record DueItem(DateOnly First, DateOnly Last, DueKind Kind, string Whom, string? Place, string What, string Why)
{
    /// <summary>What tells it from every other item of the same kind and of the same thing: the day that a wait began, else nothing. The
    /// same from run to run.</summary>
    public string? Mark { get; init; }

    /// <summary>Whom it concerns, with the part.</summary>
    public string At => Place is null ? Whom : $"{Whom} {Place}";

    /// <summary>The day, or the days it may fall on.</summary>
    public string When => First == Last ? IsoDate.Text(First) : $"{IsoDate.Text(First)} … {IsoDate.Text(Last)}";

    /// <summary>True when even its last day is past.</summary>
    public bool IsOverdueOn(DateOnly today) => Last < today;
}
