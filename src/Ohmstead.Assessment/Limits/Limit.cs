using System.Collections.Immutable;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Limits;

/// <summary>The three kinds of limit. A part may fail one, pass another, and be harmless or fatal by the third; a verdict says which it used.</summary>
public enum LimitKind
{
    /// <summary>What a new part must keep: the marked tolerance, the data sheet.</summary>
    Delivery,

    /// <summary>What a worn part may reach and still not count as failed.</summary>
    EndOfLife,

    /// <summary>What this place in this circuit needs.</summary>
    Circuit,
}

/// <summary>A limit with everything a reader needs to trust it.</summary>
/// <param name="Kind">Which of the three kinds it is.</param>
/// <param name="Interval">The values that are inside; a value exactly on a limit is inside.</param>
/// <param name="Origin">Where the figure comes from: the marking, the part's data sheet, the design, the type's usual limit.</param>
/// <param name="Arithmetic">How the limit was reached, with the figures put in.</param>
/// <param name="Source">The standard, handbook or practice behind the rule.</param>
public sealed record Limit(LimitKind Kind, Interval Interval, LazyText Origin, LazyText Arithmetic, LazyText Source)
{
    /// <summary>The values that are inside; a value exactly on a limit is inside.</summary>
    public Interval Interval
    {
        get;
        init => (field, InWords) = (value, new Range(value));
    } = Interval;

    /// <summary>The values that are inside, in words: 376 µF … 564 µF. Written once, when it is first read; another interval has others.</summary>
    public LazyText InWords { get; private init; } = new Range(Interval);

    /// <summary>The nominal value that deviations are counted from, where there is one.</summary>
    public Quantity? Nominal { get; init; }

    /// <summary>A limit that readings taken in another way can only break, never keep: then a reading inside proves nothing.</summary>
    public LazyText? ProvesOnlyOutside { get; init; }

    /// <summary>A limit that readings taken in another way can only keep, never break: then a reading outside proves nothing.</summary>
    public LazyText? ProvesOnlyInside { get; init; }

    /// <summary>Why a reading under the lower limit proves nothing, where the way of measuring can only lower it; else null.</summary>
    public LazyText? NothingBelow { get; init; }

    /// <summary>Why a reading above the upper limit proves nothing, where the way of measuring can only raise it; else null.</summary>
    public LazyText? NothingAbove { get; init; }

    /// <summary>How far above the upper limit the way of measuring alone can bring a good part, and why; null where it cannot. Such a reading does not decide.</summary>
    public (Quantity UpTo, LazyText Why)? Explained { get; init; }

    /// <summary>Whatever a reader must know beside the limit.</summary>
    public ImmutableArray<LazyText> Remarks { get; init; } = [];

    private sealed class Range(Interval interval) : LazyText
    {
        protected override string Write() => VerdictWords.Range(interval);
    }
}
