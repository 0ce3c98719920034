using Ohmstead.Records.Entries;

namespace Ohmstead.Records.Merging;

/// <summary>How the items of a list are known again, and what of an item is one fact.</summary>
/// <param name="List">The key of the list.</param>
/// <param name="What">What an item is called in a message.</param>
internal sealed record ListRule(string List, string What)
{
    /// <summary>The keys of the name that no second item may have; null where there is none. Whether an item is known again may hang on
    /// more than its name, as <see cref="KnownBy"/> says.</summary>
    internal string[]? Name { get; init; }

    /// <summary>The key of the day on which it happened, by which items of two people are put in order; else null.</summary>
    internal string? Day { get; init; }

    /// <summary>The keys that stand beside the fact: two people may change two of them.</summary>
    internal string[] Beside { get; init; } = [];

    /// <summary>Whether each key stands for itself, but for those of <see cref="Fact"/>.</summary>
    internal bool Free { get; init; }

    /// <summary>The keys that are one fact together, where the others stand for themselves.</summary>
    internal string[] Fact { get; init; } = [];

    /// <summary>Whether a key is part of the one fact that an item tells: that is changed by one person or by nobody.</summary>
    internal bool IsFact(string key) => Free ? Fact.Contains(key) : !Beside.Contains(key);
}
