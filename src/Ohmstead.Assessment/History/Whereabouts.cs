using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>Whether a board is there to be worked on.</summary>
public enum BoardPresence
{
    /// <summary>It is here.</summary>
    Here,

    /// <summary>Somebody has it for a while.</summary>
    OnLoan,

    /// <summary>It is kept as it is, for show.</summary>
    Retired,

    /// <summary>It is not here any more.</summary>
    Gone,

    /// <summary>It is no board any more.</summary>
    BrokenUp,
}

/// <summary>Where a board is and whose it is, as its steps say in order of time. A step that cannot follow the one before it changes
/// nothing: a check tells it.</summary>
public sealed record Whereabouts
{
    /// <summary>Of a board that went nowhere.</summary>
    public static Whereabouts AsItCame { get; } = new();

    /// <summary>Whether it is there to be worked on.</summary>
    public BoardPresence Presence =>
        Away?.Did.Value == WhereaboutsKind.BrokenUp ? BoardPresence.BrokenUp
        : Away is not null ? BoardPresence.Gone
        : Shown is not null ? BoardPresence.Retired
        : Loan is not null ? BoardPresence.OnLoan
        : BoardPresence.Here;

    /// <summary>True while it is looked after: something may fall due on it, and parts are bought for it.</summary>
    public bool IsKeptUp => Presence is BoardPresence.Here or BoardPresence.OnLoan;

    /// <summary>The last place that is written, or null.</summary>
    public string? Place { get; private init; }

    /// <summary>The last owner that is written, or null.</summary>
    public string? Owner { get; private init; }

    /// <summary>By which step it is not here any more; null while it is.</summary>
    public WhereaboutsEntry? Away { get; private init; }

    /// <summary>Since which step it is kept for show; null when it is not.</summary>
    public WhereaboutsEntry? Shown { get; private init; }

    /// <summary>The loan that has not ended, or null.</summary>
    public WhereaboutsEntry? Loan { get; private init; }

    /// <summary>The step by which it is here and in use again, and the one that had taken it away; null when it never was away.</summary>
    public (WhereaboutsEntry Step, WhereaboutsEntry From)? Back { get; private init; }

    /// <summary>The last step, or null.</summary>
    public WhereaboutsEntry? Last { get; private init; }

    /// <summary>Follows the steps of a board.</summary>
    public static Whereabouts From(ImmutableArray<WhereaboutsEntry> steps) =>
        steps.Length == 0 ? AsItCame : InOrder(steps).Aggregate(AsItCame, static (now, step) => now.After(step));

    /// <summary>The steps in order of time.</summary>
    public static IEnumerable<WhereaboutsEntry> InOrder(ImmutableArray<WhereaboutsEntry> steps) =>
        steps.OrderBy(static step => step.Date.Value);

    /// <summary>What is there after one step more.</summary>
    public Whereabouts After(WhereaboutsEntry step) =>
        WhyNot(step) is not null
            ? this
            : Moved(step) with
            {
                Place = step.At?.Value ?? (step.Did.Value == WhereaboutsKind.CameBack ? null : Place),
                Owner = step.Owner?.Value ?? Owner,
                Last = step,
            };

    /// <summary>Why a step cannot follow, in words; null when it can.</summary>
    public string? WhyNot(WhereaboutsEntry step) =>
        step.Did.Value switch
        {
            _ when Presence == BoardPresence.BrokenUp => $"it was broken up on {Away!.Date.Text}",
            WhereaboutsKind.CameBack => Loan is null && Away is null ? "it had neither been lent nor gone" : null,
            _ when Away is not null => $"it was {Away.Did.Text} on {Away.Date.Text}, and had not come back",
            WhereaboutsKind.Lent => Loan is null ? null : $"it was lent on {Loan.Date.Text}, and had not come back",
            WhereaboutsKind.Retired => Shown is null ? null : $"it was retired on {Shown.Date.Text} already",
            WhereaboutsKind.UsedAgain => Shown is null ? "it was not retired" : null,
            _ => null,
        };

    /// <summary>Where it is, in words; null when nothing is written but where it came from.</summary>
    public string? Told =>
        Presence switch
        {
            BoardPresence.Gone or BoardPresence.BrokenUp => WhereaboutsWords.Describe(Away!),
            _ => Joined(
                Shown is null ? null : $"kept for show since {Shown.Date.Text}",
                Loan is null ? null : WhereaboutsWords.Describe(Loan),
                Loan is null ? Place : null,
                Owner is null ? null : $"owned by {Owner}"
            ),
        };

    private Whereabouts Moved(WhereaboutsEntry step) =>
        step.Did.Value switch
        {
            WhereaboutsKind.Lent => this with { Loan = step },
            WhereaboutsKind.CameBack => this with { Loan = null, Away = null, Back = (step, (Away ?? Loan)!) },
            WhereaboutsKind.UsedAgain => this with { Shown = null, Back = (step, Shown!) },
            WhereaboutsKind.Retired => this with { Shown = step },
            WhereaboutsKind.Sold or WhereaboutsKind.GivenAway or WhereaboutsKind.Lost or WhereaboutsKind.BrokenUp => this with
            {
                Loan = null,
                Away = step,
            },
            WhereaboutsKind.Moved or WhereaboutsKind.ChangedHands => this,
        };

    private static string? Joined(params IEnumerable<string?> words) =>
        string.Join(", ", words.Where(word => word is not null)) is { Length: > 0 } said ? said : null;
}
