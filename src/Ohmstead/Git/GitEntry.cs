namespace Ohmstead.Git;

/// <summary>What a name in a tree of Git stands for.</summary>
internal enum GitEntryKind
{
    /// <summary>A file.</summary>
    File,

    /// <summary>A symbolic link.</summary>
    Link,

    /// <summary>Another repository at one of its commits.</summary>
    Repository,
}

/// <summary>One file of a revision.</summary>
/// <param name="Path">The path from the folder that was asked for, with forward slashes.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Id">The name of its content: equal for equal bytes.</param>
internal sealed record GitEntry(string Path, GitEntryKind Kind, string Id);

/// <summary>A file that a merge left in conflict.</summary>
/// <param name="Path">The path from the top of the repository.</param>
/// <param name="Before">What both sides began from; null where there was no file.</param>
/// <param name="One">The file of the side that was there; null where that took it out.</param>
/// <param name="Other">The file of the side that came; null where that took it out.</param>
internal sealed record GitConflict(string Path, GitEntry? Before, GitEntry? One, GitEntry? Other);
