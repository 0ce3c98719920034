namespace Ohmstead.Starting;

/// <summary>What the host of a collection is to do.</summary>
/// <param name="Program">Where it has the program from.</param>
/// <param name="Branch">The branch whose commits are checked and published.</param>
/// <param name="HasPages">Whether it publishes the pages.</param>
/// <param name="HasComments">Whether it puts what a pull request changes under it.</param>
/// <param name="Release">The release that it takes; null where it builds the program from the commit.</param>
internal sealed record HostedCollection(
    ProgramSource Program,
    string Branch,
    bool HasPages,
    bool HasComments,
    ProgramRelease? Release = null
);
