using Ohmstead.Collections;
using Ohmstead.Git;

namespace Ohmstead.Comparing;

/// <summary>One of two states of a collection that are compared.</summary>
/// <param name="Label">How it is told: a revision as it was typed, or a folder.</param>
/// <param name="Folder">The collection.</param>
/// <param name="Objects">The contents of a revision; null for a folder.</param>
internal sealed record ComparedSide(string Label, CollectionFolder Folder, GitObjects? Objects) : IDisposable
{
    /// <summary>The names of its contents by path, where a repository knows them.</summary>
    public IReadOnlyDictionary<string, string>? Known { get; init; }

    /// <summary>True where contents are named by SHA-256.</summary>
    public bool IsSha256 { get; init; }

    /// <summary>The commit, for a revision.</summary>
    public string? Commit { get; init; }

    /// <inheritdoc/>
    public void Dispose() => Objects?.Dispose();
}
