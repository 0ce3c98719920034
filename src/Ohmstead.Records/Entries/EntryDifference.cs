using System.Collections.Immutable;

namespace Ohmstead.Records.Entries;

/// <summary>What became of an entry between two states of its file.</summary>
public enum EntryStatus
{
    /// <summary>It is not there any more.</summary>
    Gone,

    /// <summary>It says something else.</summary>
    Changed,

    /// <summary>It is new.</summary>
    New,
}

/// <summary>An entry that is new, gone or says something else.</summary>
/// <param name="Was">The entry as it was; null for a new one.</param>
/// <param name="Now">The entry as it is; null for one that is gone.</param>
/// <param name="Facts">What it says otherwise; empty for one that is new or gone.</param>
public sealed record EntryDifference(RecordEntry? Was, RecordEntry? Now, ImmutableArray<FactDifference> Facts)
{
    /// <summary>What became of it.</summary>
    public EntryStatus Status =>
        Was is null ? EntryStatus.New
        : Now is null ? EntryStatus.Gone
        : EntryStatus.Changed;

    /// <summary>The entry, as it is or as it was.</summary>
    public RecordEntry Entry => (Now ?? Was)!;
}

/// <summary>One thing that an entry says otherwise than before.</summary>
/// <param name="Key">The key.</param>
/// <param name="Was">What it said; null when it said nothing.</param>
/// <param name="Now">What it says; null when it says nothing.</param>
public sealed record FactDifference(string Key, EntryFact? Was, EntryFact? Now);
