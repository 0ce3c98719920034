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

    /// <summary>The folder of a repository's files in which a folder lies, or git's own sentence of why there is none.</summary>
    /// <param name="folder">A folder.</param>
    public static Outcome<string> TopOf(string folder) => new GitProcess(folder).ReadLine("rev-parse", "--show-toplevel");

    /// <summary>Whether a folder is itself a repository that has no files beside it.</summary>
    /// <param name="folder">A folder.</param>
    public static bool IsBare(string folder) =>
        new GitProcess(Path.GetFullPath(folder)).ReadLine("rev-parse", "--is-bare-repository").Is(out var said, out _) && said == "true";

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

        var entries = Lines(bytes).Select(line => Entry(line, id: 2)).ToList();

        entries.Sort((one, other) => string.CompareOrdinal(one.Path, other.Path));
        return Outcome<IReadOnlyList<GitEntry>>.From(entries);
    }

    /// <summary>The commits that touch the folder, along the first parents of HEAD, the latest first.</summary>
    public Outcome<IReadOnlyList<GitCommit>> FirstParents() => GitLog.FirstParents(git);

    /// <summary>All commits that touch the folder, each after its parents.</summary>
    public Outcome<IReadOnlyList<GitCommit>> ParentsFirst() => GitLog.ParentsFirst(git);

    /// <summary>The files below the folder that a merge left in conflict, in ordinal order of path.</summary>
    public Outcome<IReadOnlyList<GitConflict>> Conflicts() =>
        git.Read("ls-files", "--unmerged", "-z", "--full-name").Is(out var bytes, out var why)
            ? Outcome<IReadOnlyList<GitConflict>>.From([
                .. Lines(bytes)
                    .Select(line => (Stage: line[line.IndexOf('\t', StringComparison.Ordinal) - 1], Entry: Entry(line, id: 1)))
                    .GroupBy(staged => staged.Entry.Path, StringComparer.Ordinal)
                    .OrderBy(file => file.Key, StringComparer.Ordinal)
                    .Select(file => new GitConflict(file.Key, At(file, '1'), At(file, '2'), At(file, '3'))),
            ])
            : Outcome<IReadOnlyList<GitConflict>>.Refused(why);

    /// <summary>Puts a file into the index as it lies, or says why git does not take it.</summary>
    /// <param name="path">Its path from the folder.</param>
    public Outcome<byte[]> Add(string path) => git.Read("add", "--", path);

    /// <summary>Starts to read contents.</summary>
    public Outcome<GitObjects> Objects() => GitObjects.Start(git);

    private static string[] Lines(byte[] bytes) => Encoding.UTF8.GetString(bytes).Split('\0', StringSplitOptions.RemoveEmptyEntries);

    private static GitEntry? At(IEnumerable<(char Stage, GitEntry Entry)> file, char stage) =>
        file.FirstOrDefault(staged => staged.Stage == stage).Entry;

    // 100644 blob 1f2e…<tab>path in a tree, 100644 1f2e… 3<tab>path in the index.
    private static GitEntry Entry(string line, int id)
    {
        var tab = line.IndexOf('\t', StringComparison.Ordinal);
        var head = line[..tab].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var kind = head[0] switch
        {
            "120000" => GitEntryKind.Link,
            "160000" => GitEntryKind.Repository,
            _ => GitEntryKind.File,
        };
        return new(line[(tab + 1)..], kind, head[id]);
    }
}
