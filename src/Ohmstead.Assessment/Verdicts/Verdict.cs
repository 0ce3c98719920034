using System.Collections.Immutable;
using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Verdicts;

/// <summary>What a reading says.</summary>
public enum VerdictOutcome
{
    /// <summary>Nothing is known to hold it against.</summary>
    NoLimit,

    /// <summary>The way it was taken cannot prove what it seems to prove.</summary>
    ProvesNothing,

    /// <summary>The uncertainty of the instrument straddles the limit.</summary>
    Undecided,

    /// <summary>Inside its limit.</summary>
    Inside,

    /// <summary>Outside its limit.</summary>
    Outside,
}

/// <summary>The verdict on one value of one reading, with everything needed to check it by hand.</summary>
/// <param name="Outcome">What the reading says.</param>
/// <param name="Measured">What was measured.</param>
/// <param name="Reading">What the meter showed: the value, or a bound or a word that nothing may be computed from.</param>
/// <param name="Why">One sentence that says why, complete alone.</param>
public sealed record Verdict(VerdictOutcome Outcome, Measured Measured, Written<Indication> Reading, LazyText Why)
{
    /// <summary>The value that was read, or null where the meter showed none.</summary>
    public Quantity? Exact => Reading.Value.Exact;

    /// <summary>What goes beyond reading, limit and outcome: why it is undecided, or proves nothing; null where those three say
    /// all.</summary>
    public LazyText? Reason { get; init; }

    /// <summary>The limit that governs, or null when none is known.</summary>
    public Limit? Limit { get; init; }

    /// <summary>The values inside the limit that governs, in words: 376 µF … 564 µF; or null when none is known.</summary>
    public LazyText? LimitInWords => Limit?.InWords;

    /// <summary>Other limits that were looked at, each with what the reading says by it.</summary>
    public ImmutableArray<(Limit Limit, bool Inside)> Others { get; init; } = [];

    /// <summary>How far the reading is from the nominal value, as a fraction: -0.07 is 7 % low.</summary>
    public decimal? Deviation =>
        Exact is { } value && Limit?.Nominal is { Value: not 0m } nominal ? (value.Value - nominal.Value) / nominal.Value : null;

    /// <summary>How far the nearest limit is, as a fraction of that limit; negative when the reading is outside.</summary>
    public decimal? Margin => Exact is { } value && Limit is { } limit ? MarginTo(limit.Interval, value.Value) : null;

    /// <summary>The expanded uncertainty of the reading (k = 2), when the instrument is known.</summary>
    public Quantity? Uncertainty { get; init; }

    /// <summary>The probability that the true value is inside, when the uncertainty decided.</summary>
    public double? Probability =>
        Rule is not null && Exact is { } value && Limit is { } limit && Uncertainty is { } uncertainty
            ? ProbabilityOf(value, uncertainty, limit.HeldAgainst(value).Interval)
            : null;

    /// <summary>The rule that decided how the uncertainty counts, when the uncertainty is known.</summary>
    public DecisionRule? Rule { get; init; }

    /// <summary>Whatever a reader must know beside it: the working of the uncertainty, conditions, warnings.</summary>
    public ImmutableArray<LazyText> Remarks { get; init; } = [];

    private static double? ProbabilityOf(Quantity value, Quantity uncertainty, Interval held) =>
        ConformanceProbability
            .OfExpanded(value.Value, uncertainty.Value, held.Lower?.Value, held.Upper?.Value)
            .Is(out var probability, out _)
            ? probability
            : null;

    // The nearest limit, as a fraction of that limit; a limit of zero has no per cent.
    private static decimal? MarginTo(Interval interval, decimal value)
    {
        decimal? least = null;
        if (interval.Lower is { Value: not 0m and var lower })
        {
            least = (value - lower) / Math.Abs(lower);
        }

        if (
            interval.Upper is { Value: not 0m and var upper }
            && (upper - value) / Math.Abs(upper) is var room
            && (least is null || room < least)
        )
        {
            least = room;
        }

        return least;
    }
}
