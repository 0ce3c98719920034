using System.Collections.Immutable;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Limits;

/// <summary>The three kinds of limit. A part may fail one, pass another, and be harmless or fatal by the third; a verdict says which it
/// used.</summary>
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
/// <remarks>
/// How a reading was taken can take something from what it says. Between <see cref="ProvedInside"/> and <see cref="MayBeInside"/> a reading
/// does not decide: a part on either side of its limit may read so. The flags beside them take a whole side away.
/// </remarks>
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

    /// <summary>The values that are inside, in words: 376 µF … 564 µF. Written once, when it is first read; another interval has
    /// others.</summary>
    public LazyText InWords { get; private init; } = new Range(Interval);

    /// <summary>The nominal value that deviations are counted from, where there is one.</summary>
    public Quantity? Nominal { get; init; }

    /// <summary>A limit that readings taken in another way can only break, never keep: then a reading inside proves nothing.</summary>
    public LazyText? ProvesOnlyOutside { get; init; }

    /// <summary>Up to where a reading is inside in whatever way it was taken, so that <see cref="ProvesOnlyOutside"/> takes nothing from
    /// it; null for nowhere.</summary>
    public Quantity? InsideHoweverTo { get; init; }

    /// <summary>A limit that readings taken in another way can only keep, never break: then a reading outside proves nothing.</summary>
    public LazyText? ProvesOnlyInside { get; init; }

    /// <summary>Why a reading outside does not decide, where the record leaves out how it was taken: unlike one known to be taken wrongly
    /// it may be true; else null.</summary>
    public LazyText? DoubtsOutside { get; init; }

    /// <summary>Why a reading under the lower limit proves nothing, where the way of measuring can only lower it; else null.</summary>
    public LazyText? NothingBelow { get; init; }

    /// <summary>How far under the lower limit <see cref="NothingBelow"/> reaches; null for all the way. What lies lower still, the way of
    /// measuring does not explain.</summary>
    public Quantity? NothingBelowTo { get; init; }

    /// <summary>Why a reading above the upper limit proves nothing, where the way of measuring can only raise it; else null.</summary>
    public LazyText? NothingAbove { get; init; }

    /// <summary>How far above the upper limit <see cref="NothingAbove"/> reaches; null for all the way. What lies higher still, the way of
    /// measuring does not explain.</summary>
    public Quantity? NothingAboveTo { get; init; }

    /// <summary>How far above the upper limit the way of measuring alone can bring a good part, and why; null where it cannot. Such a
    /// reading does not decide.</summary>
    public (Quantity UpTo, LazyText Why)? Explained { get; init; }

    /// <summary>How far below the lower limit the way of measuring alone can bring a good part, and why; null where it cannot. Such a
    /// reading does not decide.</summary>
    public (Quantity DownTo, LazyText Why)? ExplainedBelow { get; init; }

    /// <summary>The greatest reading that proves the part inside its upper limit, and why one above it, though inside, does not; null where
    /// all inside do.</summary>
    public (Quantity UpTo, LazyText Why)? ProvedTo { get; init; }

    /// <summary>The least reading that proves the part inside its lower limit, and why one below it, though inside, does not; null where
    /// all inside do.</summary>
    public (Quantity From, LazyText Why)? ProvedFrom { get; init; }

    /// <summary>What holds instead for readings from a value on: of a bridge, two junctions in series. Null where there is one limit for
    /// all.</summary>
    public (Quantity From, Limit Limit)? Higher { get; init; }

    /// <summary>The frequency of the reading, where a path beside the part can change it; null where it is not known or does not
    /// matter.</summary>
    public Quantity? ReadAt { get; init; }

    /// <summary>The least capacitance, or the marked inductance, of the part beside which a path may lie; null where it is not known or
    /// does not matter.</summary>
    public Quantity? LeastBesidePath { get; init; }

    /// <summary>Whatever a reader must know beside the limit.</summary>
    public ImmutableArray<LazyText> Remarks { get; init; } = [];

    /// <summary>The readings that prove the part inside.</summary>
    public Interval ProvedInside =>
        ProvedTo is null && ProvedFrom is null ? Interval : new(ProvedFrom?.From ?? Interval.Lower, ProvedTo?.UpTo ?? Interval.Upper);

    /// <summary>The readings that a part inside its limit may give: beyond them it is proved outside.</summary>
    public Interval MayBeInside =>
        Explained is null && ExplainedBelow is null
            ? Interval
            : new(ExplainedBelow?.DownTo ?? Interval.Lower, Explained?.UpTo ?? Interval.Upper);

    /// <summary>
    /// What a reading is held against, and whether it proves the part inside: what proves each side where something was taken from what it
    /// says.
    /// </summary>
    /// <param name="value">The reading.</param>
    internal (Interval Interval, bool IsInside) HeldAgainst(Quantity value)
    {
        var proves = ProvedInside;
        return proves.Contains(value) ? (proves, true) : (MayBeInside, false);
    }

    /// <summary>Why a reading between what is proved inside and what may be inside does not decide.</summary>
    /// <param name="value">The reading.</param>
    public LazyText? WhyBetween(decimal value) =>
        value > Interval.Upper?.Value ? Explained?.Why
        : value < Interval.Lower?.Value ? ExplainedBelow?.Why
        : value > ProvedTo?.UpTo.Value ? ProvedTo?.Why
        : ProvedFrom?.Why;

    private sealed class Range(Interval interval) : LazyText
    {
        protected override string Write() => LimitWords.Range(interval);
    }
}
