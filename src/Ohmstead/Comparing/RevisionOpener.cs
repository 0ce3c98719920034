using System.Collections.Frozen;
using Ohmstead.Electronics;
using Ohmstead.Git;

#pragma warning disable CA2000 // A state that is opened here holds nothing of its own: its contents are of whoever opened them.
namespace Ohmstead.Comparing;

/// <summary>Opens states of a collection as its repository has them, one after the other.</summary>
/// <param name="git">The repository.</param>
/// <param name="objects">Its contents; whoever opened them disposes of them.</param>
internal sealed class RevisionOpener(GitRepository git, GitObjects objects)
{
    /// <summary>Opens one, or says why it cannot be had.</summary>
    /// <param name="label">How it is told.</param>
    /// <param name="commit">The commit; null for the time before the first one, when there was no file.</param>
    public Outcome<ComparedSide> Open(string label, string? commit)
    {
        IReadOnlyList<GitEntry> entries = [];
        if (commit is not null && !git.Files(commit).Is(out entries!, out var why))
        {
            return Outcome<ComparedSide>.Refused(why);
        }

        var files = entries
            .DistinctBy(entry => entry.Path, StringComparer.Ordinal)
            .ToFrozenDictionary(entry => entry.Path, StringComparer.Ordinal);
        return Outcome<ComparedSide>.From(
            new(label, new RevisionFiles(files, objects).Open(label), null)
            {
                Known = files.ToFrozenDictionary(pair => pair.Key, pair => pair.Value.Id, StringComparer.Ordinal),
                IsSha256 = git.IsSha256,
                Commit = commit,
            }
        );
    }
}
