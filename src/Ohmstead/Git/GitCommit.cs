namespace Ohmstead.Git;

/// <summary>A commit as its repository tells it, with the files of a folder that differ from its first parent.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Parents">The names of its parents: none for the first one, two or more for a merge.</param>
/// <param name="Day">The day on which it was committed, by the clock of whoever committed.</param>
/// <param name="Who">The name of the author.</param>
/// <param name="Subject">The first line of its message.</param>
/// <param name="Files">What differs.</param>
internal sealed record GitCommit(
    string Id,
    IReadOnlyList<string> Parents,
    DateOnly Day,
    string Who,
    string Subject,
    IReadOnlyList<GitDifference> Files
);

/// <summary>A file that differs from what it was in the first parent of a commit. A renamed one is gone at one path and new at the
/// other.</summary>
/// <param name="Path">The path from the folder that was asked for.</param>
/// <param name="Was">The name of its earlier content; null where there was none.</param>
/// <param name="Now">The name of its later content; null where there is none.</param>
internal sealed record GitDifference(string Path, string? Was, string? Now);
