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
