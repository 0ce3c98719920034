using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Publishing;

/// <summary>What pages tell of the repository when they are asked to, and only then.</summary>
public sealed class RepositoryPagesTests
{
    private const string Board = "boards/SP-0007.md";

    [Fact]
    public void A_board_tells_which_commits_changed_it_and_who_first_wrote_what_stands_there()
    {
        using var copy = Changed("Tam &lt; Co");
        using var pages = Report(copy, "--history");
        var page = pages.Read("SP-0007.html");
        var section = page[page.IndexOf("In the repository", StringComparison.Ordinal)..];
        Assert.Contains("1 verdict; 1 reading changed; because of the reading", section, StringComparison.Ordinal);
        // Git takes angle brackets out of names itself; what is left is text.
        Assert.Contains("Tam &amp;lt; Co", section, StringComparison.Ordinal);
        Assert.Contains("reading of C3, <i>2026-02-28</i> RK, capacitance 41.8\u00A0µF", section, StringComparison.Ordinal);
        Assert.Contains("as it stands since <i>2026-11-21</i>", section, StringComparison.Ordinal);
    }

    [Fact]
    public void What_changed_since_a_commit_has_a_page_to_which_the_first_one_leads()
    {
        using var copy = Changed("Tam");
        using var pages = Report(copy, "--since", "HEAD~1");
        Assert.Contains("href=changes.html", pages.Read("index.html"), StringComparison.Ordinal);
        var page = pages.Read("changes.html");
        var rewritten = page.IndexOf("What was once measured and is not as it was", StringComparison.Ordinal);
        Assert.InRange(rewritten, 1, page.IndexOf("verdict  C3", StringComparison.Ordinal));
        Assert.Contains("capacitance now says 41.8\u00A0µF, and said 31.8\u00A0µF", page, StringComparison.Ordinal);
        Assert.Contains("href=boards/SP-0007.html", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_being_asked_pages_tell_nothing_of_it()
    {
        using var copy = Changed("Tam");
        using var pages = Report(copy);
        Assert.DoesNotContain("Tam", pages.Read("SP-0007.html"), StringComparison.Ordinal);
        Assert.False(File.Exists(pages.At("boards/changes.html")));
        Assert.DoesNotContain("changes.html", pages.Read("index.html"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--on", "2026-03-01")]
    [InlineData("--known", "2026-11-20")]
    public void A_past_state_has_no_history_of_the_files_as_they_lie(string option, string day)
    {
        using var copy = Changed("Tam");
        var run = Run.Of("report", copy.Root, "--to", copy.At("pages"), "--history", option, day);
        Assert.Equal(2, run.Exit);
        Assert.Equal("--history and --since tell of the files as they lie; leave --on and --known out\n", run.Error);
    }

    [Fact]
    public void A_folder_without_a_repository_is_refused_and_nothing_is_written()
    {
        using var copy = CollectionCopy.Make();
        var run = Run.Of("report", copy.Root, "--to", copy.At("pages"), "--history", "--as-of", "2026-11-25");
        Assert.Equal(2, run.Exit);
        Assert.StartsWith("fatal: not a git repository", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(copy.At("pages")));
    }

    [Fact]
    public void The_whole_collection_is_told_through_the_years_without_a_repository()
    {
        using var copy = CollectionCopy.Make();
        var run = Run.Of("history", "--in", copy.Root, "--as-of", "2026-11-25");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        var lines = run.Out.TrimEnd('\n').Split('\n');
        Assert.Equal("until       boards  fit to run  visits  readings  work", lines[0]);
        Assert.StartsWith("2026-11-25      20          13", lines[^1], StringComparison.Ordinal);
        Assert.All(lines, line => Assert.Equal(lines[0].Length, line.Length));
    }

    private static ScratchRepository Changed(string who)
    {
        var copy = ScratchRepository.OfDemo();
        copy.Write(Board, copy.Read(Board).Replace("31.8 µF", "41.8 µF", StringComparison.Ordinal));
        copy.Commit("read again", "2026-11-21", who);
        return copy;
    }

    private static Pages Report(ScratchRepository copy, params string[] words)
    {
#pragma warning disable CA2000 // Handed to the test, which disposes of it.
        var pages = new Pages(CollectionCopy.Empty());
#pragma warning restore CA2000
        var run = Run.Of(["report", copy.Root, "--to", pages.At("site"), "--as-of", "2026-11-25", .. words]);
        Assert.True(run.Exit == 0, run.Error);
        return pages;
    }

    private sealed record Pages(CollectionCopy Folder) : IDisposable
    {
        public string At(string path) => Folder.At(path);

        public string Read(string name) =>
            Folder.Read(name.StartsWith("SP-", StringComparison.Ordinal) ? $"site/boards/{name}" : $"site/{name}");

        public void Dispose() => Folder.Dispose();
    }
}
