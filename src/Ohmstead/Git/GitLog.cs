using System.Globalization;
using System.Text;
using Ohmstead.Electronics;

namespace Ohmstead.Git;

/// <summary>Reads the commits of a repository that touch a folder.</summary>
/// <remarks>
/// Names come between zero bytes, for nothing else cannot stand in them; what an author or a subject says cannot end a field either.
/// Nothing that a repository configures for a log is used: it could ask for a signature to be verified, and name the program that does it.
/// </remarks>
internal static class GitLog
{
    // Names, times, author and subject. Git takes line ends out of all of them.
    private const string Fields = "%x01%H%n%P%n%cI%n%aN%n%s";

    private static readonly string[] Log =
    [
        "log",
        "-z",
        "--raw",
        "--root",
        "--no-abbrev",
        "--no-renames",
        "--no-color",
        "--no-decorate",
        "--no-notes",
        "--no-show-signature",
        "--no-ext-diff",
        "--no-textconv",
        "--ignore-submodules=none",
        "--diff-merges=first-parent",
        "--relative",
        "--encoding=UTF-8",
        "--format=tformat:" + Fields,
    ];

    /// <summary>The commits that the history of HEAD went through along first parents, the latest first.</summary>
    public static Outcome<IReadOnlyList<GitCommit>> FirstParents(GitProcess git) => Read(git, "--first-parent");

    /// <summary>All commits that HEAD comes from, each after its parents.</summary>
    public static Outcome<IReadOnlyList<GitCommit>> ParentsFirst(GitProcess git) =>
        Read(git, "--topo-order", "--reverse", "--full-history");

    private static Outcome<IReadOnlyList<GitCommit>> Read(GitProcess git, params string[] order) =>
        git.Read([.. Log, .. order, "HEAD", "--", "."]).Is(out var bytes, out var why)
            ? Outcome<IReadOnlyList<GitCommit>>.From(Parse(Encoding.UTF8.GetString(bytes)))
            : Outcome<IReadOnlyList<GitCommit>>.Refused(why);

    private static List<GitCommit> Parse(string text)
    {
        var commits = new List<GitCommit>();
        var files = new List<GitDifference>();
        var tokens = text.Split('\0');
        for (var at = 0; at < tokens.Length; at++)
        {
            // Between the fields of a commit and its files git writes a line end or none, by version.
            var token = tokens[at].TrimStart('\n');
            if (token.StartsWith('\u0001'))
            {
                files = [];
                commits.Add(Head(token[1..].Split('\n'), files));
            }
            else if (token.StartsWith(':') && at + 1 < tokens.Length)
            {
                var raw = token.Split(' ');
                files.Add(new(tokens[++at], Content(raw[2]), Content(raw[3])));
            }
        }

        return commits;
    }

    private static GitCommit Head(string[] fields, List<GitDifference> files) =>
        new(
            fields[0],
            fields[1].Split(' ', StringSplitOptions.RemoveEmptyEntries),
            // Anybody can write a commit of the year 30000; where git has no day itself it tells the first of its own time.
            DateTimeOffset.TryParse(fields[2], CultureInfo.InvariantCulture, out var when)
                ? DateOnly.FromDateTime(when.DateTime)
                : DateOnly.FromDateTime(DateTimeOffset.UnixEpoch.DateTime),
            fields[3],
            fields[4].Trim(),
            files
        );

    private static string? Content(string id) => id.All(digit => digit == '0') ? null : id;
}
