using System.Collections.Immutable;
using Ohmstead.Records.Entries;

namespace Ohmstead.Assessment.Changes;

/// <summary>A commit as it is told beside what it changed.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Day">The day on which it was committed, by the clock of whoever committed.</param>
/// <param name="Who">Its author.</param>
/// <param name="Subject">The first line of its message.</param>
/// <param name="IsMerge">Whether it brought in what others had committed.</param>
public sealed record CommitNote(string Id, DateOnly Day, string Who, string Subject, bool IsMerge)
{
    private const int ShownDigits = 10;

    /// <summary>As much of its name as is shown to people.</summary>
    public string Short => Id[..Math.Min(ShownDigits, Id.Length)];
}

/// <summary>A commit after which a board was said or judged to be otherwise.</summary>
/// <param name="Commit">The commit; null for what was not committed yet.</param>
/// <param name="Changes">What differs from before it, both judged on its day.</param>
public sealed record HistoryStep(CommitNote? Commit, BoardChanges Changes);

/// <summary>Who first wrote an entry.</summary>
/// <param name="Entry">The entry as it stands.</param>
/// <param name="First">The commit with which it came, whatever it said then; null while it was not committed.</param>
/// <param name="Since">The commit since which it says what it says; the same unless it was rewritten.</param>
public sealed record EntryOrigin(RecordEntry Entry, CommitNote? First, CommitNote? Since);

/// <summary>What a repository tells of a board: what changed its meaning, and who first wrote what stands there.</summary>
/// <param name="Number">The number of the board.</param>
/// <param name="Steps">The commits that changed its meaning, the latest first.</param>
/// <param name="Entries">Who first wrote its readings, proofs, findings, work and decisions, in the order of the record.</param>
/// <param name="Begins">The commit at which the history of this clone begins, where the board is older than that; null otherwise.</param>
public sealed record CommitHistory(
    string Number,
    ImmutableArray<HistoryStep> Steps,
    ImmutableArray<EntryOrigin> Entries,
    CommitNote? Begins
);
