using System.Collections.Immutable;
using Ohmstead.Records.Entries;

namespace Ohmstead.Assessment.Changes;

/// <summary>What of a judgement differs.</summary>
public enum ChangeKind
{
    /// <summary>The state of a board.</summary>
    State,

    /// <summary>A reason for its state.</summary>
    Reason,

    /// <summary>What a reading or a proof says.</summary>
    Verdict,

    /// <summary>The limit that a reading or a proof is held against.</summary>
    Limit,

    /// <summary>The day of the next look.</summary>
    LookAgain,

    /// <summary>When the life of a part may be used up.</summary>
    Life,

    /// <summary>A part that must be found for a place.</summary>
    Need,

    /// <summary>Where a board is and whose it is.</summary>
    Whereabouts,

    /// <summary>What is left of a lot, and what is to be done before any of it is fitted.</summary>
    Drawer,

    /// <summary>Where an order stands.</summary>
    Order,

    /// <summary>What must be bought of a part for the whole collection.</summary>
    Buying,

    /// <summary>When a lot or a calibration falls due.</summary>
    Due,

    /// <summary>A finding.</summary>
    Finding,
}

/// <summary>Kinds of changes as they are told.</summary>
public static class ChangeKinds
{
    /// <summary>All of them, in the order in which they are told.</summary>
    public static ImmutableArray<ChangeKind> All { get; } = [.. Enum.GetValues<ChangeKind>()];

    /// <summary>One of them in words.</summary>
    public static string Words(ChangeKind kind) =>
        kind switch
        {
            ChangeKind.State => "state",
            ChangeKind.Reason => "reason",
            ChangeKind.Verdict => "verdict",
            ChangeKind.Limit => "limit",
            ChangeKind.LookAgain => "look again",
            ChangeKind.Life => "life",
            ChangeKind.Need => "part to find",
            ChangeKind.Whereabouts => "where",
            ChangeKind.Drawer => "drawer",
            ChangeKind.Order => "order",
            ChangeKind.Buying => "to buy",
            ChangeKind.Due => "due",
            ChangeKind.Finding => "finding",
        };
}

/// <summary>One thing that is judged otherwise than before.</summary>
/// <param name="Kind">What of the judgement it is.</param>
/// <param name="Of">What it is about: a reading with its day, a place, a lot; empty for the board as a whole.</param>
/// <param name="Was">How it was; null when it was not there.</param>
/// <param name="Now">How it is; null when it is not there any more.</param>
public sealed record Change(ChangeKind Kind, string Of, string? Was, string? Now)
{
    /// <summary>The part, point or lot that it is about; null for the whole.</summary>
    public string? Place { get; init; }

    /// <summary>What it follows from.</summary>
    public Cause Cause { get; init; } = Cause.Unknown;

    /// <summary>Whether another change is about the same thing.</summary>
    internal bool IsAbout(Change other) =>
        Kind == other.Kind
        && Of == other.Of
        && (Kind is not (ChangeKind.Reason or ChangeKind.Finding) || (Was == other.Was && Now == other.Now));
}

/// <summary>What a change follows from.</summary>
/// <param name="Kinds">The kind of input that alone gives what is judged now; all that differ where none of them does alone.</param>
/// <param name="Inputs">What of them differs, that which is nearest to the change first.</param>
public sealed record Cause(ImmutableArray<InputKind> Kinds, ImmutableArray<InputDifference> Inputs)
{
    /// <summary>Not known.</summary>
    public static Cause Unknown { get; } = new([], []);

    /// <summary>The kinds in words.</summary>
    public string Words => string.Join(" and the ", Kinds.Select(InputKinds.Words));
}

/// <summary>An entry of a file that differs.</summary>
/// <param name="File">What kind of file it is.</param>
/// <param name="Was">The path of the earlier file; null when there was none.</param>
/// <param name="Now">The path of the later file; null when there is none.</param>
/// <param name="Entry">The entry.</param>
public sealed record InputDifference(InputFile File, string? Was, string? Now, EntryDifference Entry)
{
    /// <summary>What it is as an input.</summary>
    public InputKind Kind { get; } = InputKinds.For(File, Entry.Entry.Kind);
}
