using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Git;

#pragma warning disable CA2000 // What is opened is handed on inside the outcome to whoever asked, who disposes of it.
namespace Ohmstead.Comparing;

/// <summary>Opens the two states of a collection that a person names.</summary>
/// <param name="folder">The collection's folder.</param>
internal sealed class SideOpener(string folder)
{
    private const string Last = "HEAD";
    private const string Apart = "...";

    private GitRepository? repository;

    /// <summary>Opens both, or says why one cannot be had.</summary>
    /// <param name="from">A revision or a folder; <c>main...</c> for where the two histories part; null for the last commit.</param>
    /// <param name="to">A revision or a folder; null for the files as they lie.</param>
    public Outcome<(ComparedSide Was, ComparedSide Now)> Open(string? from, string? to)
    {
        if (from is not null && !Directory.Exists(from) && from.IndexOf(Apart, StringComparison.Ordinal) is > 0 and var at)
        {
            var other = from[(at + Apart.Length)..];
            return to is not null
                    ? Refused($"'{from}' names where two histories part, so there is no '{to}' beside it; give one of the two")
                : !Parting(from[..at], other.Length == 0 ? Last : other).Is(out var commit, out var apart) ? Refused(apart)
                : Both(() => Revision(from, commit), () => other.Length == 0 ? Folder(folder) : Named(other));
        }

        return Both(() => Named(from ?? Last), () => to is null ? Folder(folder) : Named(to));
    }

    private static Outcome<(ComparedSide Was, ComparedSide Now)> Both(Func<Outcome<ComparedSide>> was, Func<Outcome<ComparedSide>> now)
    {
        if (!was().Is(out var first, out var why))
        {
            return Refused(why);
        }

        if (now().Is(out var second, out why))
        {
            return Outcome<(ComparedSide, ComparedSide)>.From((first, second));
        }

        first.Dispose();
        return Refused(why);
    }

    private static Outcome<(ComparedSide Was, ComparedSide Now)> Refused(string why) => Outcome<(ComparedSide, ComparedSide)>.Refused(why);

    private Outcome<ComparedSide> Named(string name) =>
        Directory.Exists(name) ? Folder(name)
        : !Repository().Is(out var git, out var why) ? Outcome<ComparedSide>.Refused(Explained(name, why))
        : git.Commit(name).Is(out var commit, out why) ? Revision(name, commit)
        : Outcome<ComparedSide>.Refused(why);

    // Nothing lies in a bare repository: held against any commit all of it would be gone.
    private static Outcome<ComparedSide> Folder(string name) =>
        !Directory.Exists(name) ? Outcome<ComparedSide>.Refused(NamedFiles.Missing(name, "folder"))
        : CollectionFolder.Open(name) is var files && files.Boards.Count == 0 && GitRepository.IsBare(name)
            ? Outcome<ComparedSide>.Refused($"'{name}' is a bare repository, in which no files lie: name two revisions of it")
        : Outcome<ComparedSide>.From(new(name, files, null));

    private Outcome<ComparedSide> Revision(string label, string commit)
    {
        if (!Repository().Is(out var git, out var why) || !git.Objects().Is(out var objects, out why))
        {
            return Outcome<ComparedSide>.Refused(why);
        }

        if (new RevisionOpener(git, objects).Open(label, commit).Is(out var side, out why))
        {
            return Outcome<ComparedSide>.From(side with { Objects = objects });
        }

        objects.Dispose();
        return Outcome<ComparedSide>.Refused(why);
    }

    private Outcome<string> Parting(string one, string other) =>
        !Repository().Is(out var git, out var why) ? Outcome<string>.Refused(Explained(one, why))
        : !git.Commit(one).Is(out var first, out why) ? Outcome<string>.Refused(why)
        : !git.Commit(other).Is(out var second, out why) ? Outcome<string>.Refused(why)
        : git.MergeBase(first, second);

    private Outcome<GitRepository> Repository()
    {
        if (repository is null)
        {
            var opened = GitRepository.Open(folder);
            if (!opened.Is(out repository, out _))
            {
                return opened;
            }
        }

        return Outcome<GitRepository>.From(repository);
    }

    // Git's own sentence stands behind: it says what to do about it.
    private static string Explained(string name, string why) => $"there is no folder '{name}', and git says: {why}";
}
