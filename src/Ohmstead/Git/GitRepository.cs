using System.Text;
using Ohmstead.Electronics;

namespace Ohmstead.Git;

/// <summary>A repository, read by the git of the machine: it alone knows every form of one.</summary>
internal sealed class GitRepository
{
    private readonly GitProcess git;
    private readonly string prefix;

    private GitRepository(GitProcess git, string prefix, bool isSha256, bool isShallow)
    {
        (this.git, this.prefix) = (git, prefix);
        (IsSha256, IsShallow) = (isSha256, isShallow);
    }

    /// <summary>Whether contents are named by SHA-256; by SHA-1 otherwise.</summary>
    public bool IsSha256 { get; }

    /// <summary>Whether its history begins later than that of the repository that it was cloned from.</summary>
    public bool IsShallow { get; }

    /// <summary>The repository that a folder lies in, or git's own sentence of why there is none.</summary>
    /// <param name="folder">A folder; the paths of its files are told from there.</param>
    public static Outcome<GitRepository> Open(string folder)
    {
        var asked = new GitProcess(Path.GetFullPath(folder));
        if (!asked.ReadLine("rev-parse", "--show-prefix").Is(out var prefix, out var why))
        {
            return Outcome<GitRepository>.Refused(why);
        }

        // A git that does not know the question knows no other format.
        var format = asked.ReadLine("rev-parse", "--show-object-format").Is(out var named, out _) ? named : "sha1";
        var shallow = asked.ReadLine("rev-parse", "--is-shallow-repository").Is(out var said, out _) && said == "true";
        return Outcome<GitRepository>.From(new(asked, prefix, format == "sha256", shallow));
    }

    /// <summary>The commit that a person names, or why there is none.</summary>
    /// <param name="revision">A branch, a tag, a commit or <c>HEAD~3</c>.</param>
    public Outcome<string> Commit(string revision) =>
        git.ReadLine("rev-parse", "--verify", "--quiet", "--end-of-options", revision + "^{commit}").Is(out var id, out _)
            ? Outcome<string>.From(id)
            : Outcome<string>.Refused(
                $"git knows no commit '{revision}' here"
                    + (IsShallow ? "; the history of this clone begins later: fetch more of it" : string.Empty)
            );

    /// <summary>Where the histories of two commits part, or why that is not known.</summary>
    public Outcome<string> MergeBase(string one, string other) =>
        git.ReadLine("merge-base", one, other).Is(out var id, out var why)
            ? Outcome<string>.From(id)
            : Outcome<string>.Refused(
                $"{one[..Math.Min(10, one.Length)]} and {other[..Math.Min(10, other.Length)]} have no commit in common ({why})"
            );

    /// <summary>The last commit of a day or before it, along the first parents of HEAD, by the day in UTC on which it was
    /// committed.</summary>
    /// <param name="day">The day.</param>
    public Outcome<string> LastOf(DateOnly day)
    {
        var end = IsoDate.Text(day) + "T23:59:59Z";
        return !git.ReadLine("rev-list", "-1", "--first-parent", "--before=" + end, "HEAD").Is(out var id, out var why)
                ? Outcome<string>.Refused(why)
            : id.Length > 0 ? Outcome<string>.From(id)
            : Outcome<string>.Refused(
                $"the history of this {(IsShallow ? "clone" : "repository")} begins after {IsoDate.Text(day)}"
                    + (IsShallow ? "; fetch more of it" : string.Empty)
            );
    }

    /// <summary>The files of a commit that lie in the folder, in ordinal order of path.</summary>
    /// <param name="commit">The commit.</param>
    public Outcome<IReadOnlyList<GitEntry>> Files(string commit)
    {
        // Lengths are not asked for: in a clone without contents that would fetch them.
        // From the folder alone: what lies beside a collection is nobody's business.
        var tree = prefix.Length == 0 ? commit : $"{commit}:{prefix.TrimEnd('/')}";
        if (!git.Read("ls-tree", "-r", "-z", "--full-tree", tree).Is(out var bytes, out var why))
        {
            return prefix.Length > 0 && why.Contains("Not a valid object name", StringComparison.Ordinal)
                ? Outcome<IReadOnlyList<GitEntry>>.From([])
                : Outcome<IReadOnlyList<GitEntry>>.Refused(why);
        }

        var entries = new List<GitEntry>();
        foreach (var line in Encoding.UTF8.GetString(bytes).Split('\0', StringSplitOptions.RemoveEmptyEntries))
        {
            entries.Add(Entry(line));
        }

        entries.Sort((one, other) => string.CompareOrdinal(one.Path, other.Path));
        return Outcome<IReadOnlyList<GitEntry>>.From(entries);
    }

    /// <summary>The commits that touch the folder, along the first parents of HEAD, the latest first.</summary>
    public Outcome<IReadOnlyList<GitCommit>> FirstParents() => GitLog.FirstParents(git);

    /// <summary>All commits that touch the folder, each after its parents.</summary>
    public Outcome<IReadOnlyList<GitCommit>> ParentsFirst() => GitLog.ParentsFirst(git);

    /// <summary>Starts to read contents.</summary>
    public Outcome<GitObjects> Objects() => GitObjects.Start(git);

    // 100644 blob 1f2e…<tab>path
    private static GitEntry Entry(string line)
    {
        var tab = line.IndexOf('\t', StringComparison.Ordinal);
        var head = line[..tab].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var kind = head[0] switch
        {
            "120000" => GitEntryKind.Link,
            "160000" => GitEntryKind.Repository,
            _ => GitEntryKind.File,
        };
        return new(line[(tab + 1)..], kind, head[2]);
    }
}
