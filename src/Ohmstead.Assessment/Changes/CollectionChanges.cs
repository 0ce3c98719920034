using System.Collections.Immutable;

namespace Ohmstead.Assessment.Changes;

/// <summary>What differs of one board between two states of its collection.</summary>
/// <param name="Number">Its number, the later one where it has another.</param>
/// <param name="Was">The path of its earlier record; null for a board that is new.</param>
/// <param name="Now">The path of its later record; null for one that is gone.</param>
/// <param name="State">Its state as it is told now; null for one that is gone or cannot be read.</param>
/// <param name="Changes">What is judged otherwise.</param>
/// <param name="Entries">What its record says otherwise.</param>
public sealed record BoardChanges(
    string Number,
    string? Was,
    string? Now,
    string? State,
    ImmutableArray<Change> Changes,
    ImmutableArray<InputDifference> Entries
)
{
    /// <summary>Readings that are new, each with what it says.</summary>
    public ImmutableArray<NewReading> Readings { get; init; } = [];

    /// <summary>Whether anything differs in meaning.</summary>
    public bool IsAny => Was is null || Now is null || Changes.Length > 0 || Entries.Length > 0;
}

/// <summary>A reading that is new.</summary>
/// <param name="Line">The line on which it stands.</param>
/// <param name="Told">What was read and what it says.</param>
public sealed record NewReading(int Line, string Told);

/// <summary>What differs between two states of a collection.</summary>
/// <param name="Boards">The boards of which anything differs, in order of their numbers.</param>
/// <param name="Shared">What is judged otherwise of what boards share.</param>
/// <param name="Entries">What the files that boards share say otherwise.</param>
/// <param name="Same">How many boards are as they were.</param>
public sealed record CollectionChanges(
    ImmutableArray<BoardChanges> Boards,
    ImmutableArray<Change> Shared,
    ImmutableArray<InputDifference> Entries,
    int Same
)
{
    /// <summary>Whether the buying list was compared, for which all boards must be known.</summary>
    public bool IsBuyingKnown { get; init; }

    /// <summary>Whether anything differs in meaning.</summary>
    public bool IsAny => Boards.Length > 0 || Shared.Length > 0 || Entries.Length > 0;

    /// <summary>What is gone or was rewritten of what was once measured: it is told before all else.</summary>
    public IEnumerable<(BoardChanges Board, InputDifference Entry)> Rewritten =>
        Boards.SelectMany(board =>
            board
                .Entries.Where(one => one.Entry.Was is { } was && Records.Entries.EntryKinds.IsMeasured(was.Kind) && board.Now is not null)
                .Select(one => (board, one))
        );
}
