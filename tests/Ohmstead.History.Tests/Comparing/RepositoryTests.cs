using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>Revisions are read out of every form of repository, and nothing that a repository brings along is started.</summary>
public sealed class RepositoryTests
{
    private const string Board = "boards/SP-0007.md";
    private const string Told = "  verdict  C3 capacitance 41.8 µF of 2026-02-28: was outside, now inside\n";

    public static TheoryData<string, string[]> Forms { get; } = new() { { "plain", [] }, { "SHA-256", ["--object-format=sha256"] } };

    [Theory]
    [MemberData(nameof(Forms))]
    public void The_last_commit_is_held_against_the_files_as_they_lie(string form, string[] init)
    {
        using var copy = ScratchRepository.OfDemo(init);
        Assert.Equal("nothing differs in meaning; 20 boards are as they were\n", Changes(copy.Root).Out);
        Rewrite(copy.Root);
        Assert.True(Changes(copy.Root).Out.Contains(Told, StringComparison.Ordinal), form);
    }

    [Fact]
    public void A_branch_is_held_against_where_it_left_the_other()
    {
        using var copy = ScratchRepository.OfDemo();
        copy.Git("checkout", "--quiet", "-b", "bench");
        Rewrite(copy.Root);
        copy.Commit("read again");
        copy.Git("checkout", "--quiet", "main");
        copy.Write(
            "collection.yaml",
            copy.Read("collection.yaml").Replace("decision: guarded", "decision: simple", StringComparison.Ordinal)
        );
        copy.Commit("another rule");

        // From main to the branch both differ; from where they parted only what the branch did.
        Assert.Contains("because of the rule", Changes(copy.Root, "main", "bench").Out, StringComparison.Ordinal);
        var apart = Changes(copy.Root, "main...bench").Out;
        Assert.Contains(Told, apart, StringComparison.Ordinal);
        Assert.DoesNotContain("because of the rule", apart, StringComparison.Ordinal);
    }

    [Fact]
    public void A_collection_in_a_folder_of_its_repository_is_looked_at_alone()
    {
        using var whole = CollectionCopy.Empty();
        Directory.CreateDirectory(whole.At("museum/records"));
        CollectionCopy.Put(whole.At("museum/records"));
        whole.Write("boards/other.md", "---\nboard: X-1\ntitle: another collection\n---\n");
        using var git = ScratchRepository.In(whole.Root);
        git.Git("init", "--quiet");
        git.Commit("as it was");
        Rewrite(whole.At("museum/records"));
        var told = Changes(whole.At("museum/records")).Out;
        Assert.Contains(Told, told, StringComparison.Ordinal);
        Assert.DoesNotContain("X-1", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_worktree_whose_git_folder_is_a_file_is_read()
    {
        using var copy = ScratchRepository.OfDemo();
        using var beside = CollectionCopy.Empty();
        copy.Git("worktree", "add", "--quiet", beside.At("tree"));
        Assert.True(File.Exists(beside.At("tree/.git")));
        Rewrite(beside.At("tree"));
        Assert.Contains(Told, Changes(beside.At("tree")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shallow_clone_says_that_its_history_begins_later()
    {
        using var copy = ScratchRepository.OfDemo();
        Rewrite(copy.Root);
        copy.Commit("read again");
        using var beside = CollectionCopy.Empty();
        using var below = ScratchRepository.In(beside.Root);
        below.Git("clone", "--quiet", "--depth", "1", "file://" + copy.Root, "clone");
        Assert.Equal("nothing differs in meaning; 20 boards are as they were\n", Changes(beside.At("clone")).Out);
        var run = Changes(beside.At("clone"), "HEAD~1");
        Assert.Equal(
            (2, "git knows no commit 'HEAD~1' here; the history of this clone begins later: fetch more of it\n"),
            (run.Exit, run.Error)
        );
    }

    [Fact]
    public void A_clone_without_contents_starts_no_network()
    {
        using var copy = ScratchRepository.OfDemo();
        copy.Git("config", "uploadpack.allowFilter", "true");
        using var beside = CollectionCopy.Empty();
        using var below = ScratchRepository.In(beside.Root);
        below.Git("clone", "--quiet", "--filter=blob:none", "--no-checkout", "file://" + copy.Root, "clone");
        // Where it came from is not there any more: whoever asks for it would fail.
        Directory.Move(copy.Root, copy.Root + ".away");
        try
        {
            // What is the same is read where it lies; what is not cannot be had.
            var away = copy.Root + ".away";
            Assert.Equal("nothing differs in meaning; 20 boards are as they were\n", Changes(beside.At("clone"), "HEAD", away).Out);
            Rewrite(away);
            Assert.Contains(
                "SP-0007  was cannot be read, now fit to run\n",
                Changes(beside.At("clone"), "HEAD", away).Out,
                StringComparison.Ordinal
            );
        }
        finally
        {
            Directory.Move(copy.Root + ".away", copy.Root);
        }
    }

    [Fact]
    public void Another_repository_in_the_place_of_a_file_is_no_record()
    {
        using var copy = ScratchRepository.OfDemo();
        using var other = ScratchRepository.OfDemo();
        copy.Git("-c", "protocol.file.allow=always", "submodule", "--quiet", "add", other.Root, "boards/SP-9999.md");
        copy.Commit("with another");
        var run = Changes(copy.Root, "HEAD~1", "HEAD");
        Assert.Equal(0, run.Exit);
        Assert.Contains("SP-9999  new: cannot be read\n", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_with_line_ends_quotes_and_umlauts_are_read()
    {
        using var copy = CollectionCopy.Make();
        string[] names = ["Prüfling.md", "a \"quoted\" one.md", "two\nlines.md", "tab\there.md", "$(touch marker).md"];
        for (var nth = 0; nth < names.Length; nth++)
        {
            copy.Write("boards/" + names[nth], copy.Read(Board).Replace("SP-0007", $"SP-70{nth}", StringComparison.Ordinal));
        }

        using var git = ScratchRepository.In(copy.Root);
        git.Git("init", "--quiet");
        git.Commit("odd names");
        Assert.Equal("nothing differs in meaning; 25 boards are as they were\n", Changes(copy.Root).Out);
        foreach (var name in names)
        {
            Rewrite(copy.Root, "boards/" + name);
        }

        var told = Changes(copy.Root).Out;
        Assert.Equal(5, told.Split(Told).Length - 1);
        Assert.False(File.Exists(copy.At("marker")));
    }

    [Fact]
    public void Nothing_that_a_repository_brings_along_is_started()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "hooks are scripts of a shell");
        using var copy = ScratchRepository.OfDemo();
        var marker = copy.At("marker");
        ScratchRepository.Script(copy.At("touch.sh"), $"touch '{marker}'");
        foreach (
            var key in new[] { "core.fsmonitor", "core.pager", "diff.external", "diff.x.textconv", "filter.x.smudge", "filter.x.clean" }
        )
        {
            copy.Git("config", key, copy.At("touch.sh"));
        }

        copy.Write(".gitattributes", "*.md diff=x filter=x\n");
        foreach (var hook in new[] { "post-checkout", "post-index-change", "reference-transaction", "pre-commit" })
        {
            ScratchRepository.Script(copy.At(".git/hooks/" + hook), $"touch '{marker}'");
        }

        Rewrite(copy.Root);
        Assert.Contains(Told, Changes(copy.Root).Out, StringComparison.Ordinal);
        Assert.False(File.Exists(marker));
    }

    [Theory]
    [InlineData("changes --in .")]
    [InlineData("settle")]
    public async Task A_program_called_git_that_lies_among_the_records_is_not_started(string command)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "a script stands for the program");
        using var copy = ScratchRepository.OfDemo();
        ScratchRepository.Script(copy.At("git"), $"touch '{copy.At("marker")}'");
        var run = await Child.ShellAsync($"PATH=.::$PATH; exec $ohmstead {command}", copy.Root);
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.False(File.Exists(copy.At("marker")));
    }

    [Fact]
    public void A_revision_that_looks_like_an_option_is_a_revision()
    {
        using var copy = ScratchRepository.OfDemo();
        var run = Run.Of("changes", "--in", copy.Root, "--as-of", "2026-11-25", "--", "--output=marker");
        Assert.Equal((2, "git knows no commit '--output=marker' here\n"), (run.Exit, run.Error));
        Assert.False(File.Exists(copy.At("marker")));
    }

    [Fact]
    public void Where_there_is_no_repository_git_says_so_itself()
    {
        using var copy = CollectionCopy.Make();
        var run = Changes(copy.Root);
        Assert.Equal(2, run.Exit);
        Assert.StartsWith("there is no folder 'HEAD', and git says: fatal: not a git repository", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Before_the_first_commit_there_is_nothing_to_hold_files_against()
    {
        using var copy = ScratchRepository.Empty();
        CollectionCopy.Put(copy.Root);
        Assert.Equal((2, "git knows no commit 'HEAD' here\n"), (Changes(copy.Root).Exit, Changes(copy.Root).Error));
    }

    [Fact]
    public void A_head_on_no_branch_is_a_commit_like_any_other()
    {
        using var copy = ScratchRepository.OfDemo();
        copy.Git("checkout", "--quiet", "--detach");
        Rewrite(copy.Root);
        Assert.Contains(Told, Changes(copy.Root).Out, StringComparison.Ordinal);
        copy.Git("stash", "--quiet");
        copy.Git("bisect", "start");
        copy.Git("bisect", "bad", "HEAD");
        Assert.Equal("nothing differs in meaning; 20 boards are as they were\n", Changes(copy.Root).Out);
    }

    [Fact]
    public void While_a_rebase_stands_still_files_are_held_against_where_it_stands()
    {
        using var copy = ScratchRepository.OfDemo();
        copy.Git("checkout", "--quiet", "-b", "bench");
        Rewrite(copy.Root);
        copy.Commit("read again");
        copy.Git("checkout", "--quiet", "main");
        copy.Write(Board, copy.Read(Board).Replace("31.8 µF", "51.8 µF", StringComparison.Ordinal));
        copy.Commit("read otherwise");
        copy.Git("checkout", "--quiet", "bench");
        Assert.ThrowsAny<Exception>(() => copy.Git("rebase", "--quiet", "main"));
        // What lies there has the marks of a conflict, and is no record.
        Assert.Contains("SP-0007  was fit to run, now cannot be read\n", Changes(copy.Root).Out, StringComparison.Ordinal);
        Assert.Contains(
            "capacitance now says 51.8 µF, and said 31.8 µF",
            Changes(copy.Root, "HEAD~1", "HEAD").Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Of_a_bare_repository_two_revisions_are_named()
    {
        using var copy = ScratchRepository.OfDemo();
        using var other = CollectionCopy.Empty();
        copy.Git("clone", "--quiet", "--bare", ".", other.At("bare.git"));
        var bare = other.At("bare.git");
        var run = Changes(bare);
        Assert.Equal((2, $"'{bare}' is a bare repository, in which no files lie: name two revisions of it\n"), (run.Exit, run.Error));
        Assert.Equal("nothing differs in meaning; 20 boards are as they were\n", Changes(bare, "HEAD", "HEAD").Out);
    }

    [Fact]
    public void A_repository_of_somebody_else_is_left_alone_with_the_advice_of_git()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.UserName == "root", "only root can give a folder away");
        using var copy = ScratchRepository.OfDemo();
        using (var chown = System.Diagnostics.Process.Start("chown", ["-R", "4321", copy.Root]))
        {
            chown.WaitForExit();
        }

        var run = Changes(copy.Root);
        Assert.Equal(2, run.Exit);
        Assert.Contains("dubious ownership", run.Error, StringComparison.Ordinal);
        Assert.Contains(
            "; where you trust whoever owns it: git config --global --add safe.directory ",
            run.Error,
            StringComparison.Ordinal
        );
    }

    private static void Rewrite(string root, string path = Board)
    {
        var file = Path.Combine(root, path);
        var text = File.ReadAllText(file);
        Assert.Contains("31.8 µF", text, StringComparison.Ordinal);
        File.WriteAllText(file, text.Replace("31.8 µF", "41.8 µF", StringComparison.Ordinal));
    }

    private static Run Changes(string folder, params string[] revisions) =>
        Run.Of(["changes", .. revisions, "--in", folder, "--as-of", "2026-11-25"]);
}
