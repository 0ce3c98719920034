using System.Text.Json;
using Ohmstead.Assessment.Changes;
using Ohmstead.Collections;
using Ohmstead.Comparing;
using Ohmstead.Git;
using Ohmstead.Records.Nodes;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>Which commits changed the meaning of a board, and who first wrote what stands there.</summary>
public sealed class HistoryTests
{
    private const string Board = "boards/SP-0007.md";
    private const string Reading = "31.8 µF";

    [Fact]
    public void Each_commit_that_changed_its_meaning_is_one_line_and_no_other_is()
    {
        using var copy = ScratchRepository.OfDemo();
        Put(copy, Board, Reading, "41.8 µF");
        copy.Commit("read again", "2026-11-21");
        Put(copy, Board, "note: then measured at 0.1 V", "note: after that measured at 0.1 V");
        copy.Commit("better words", "2026-11-22");
        File.Move(copy.At(Board), copy.At("boards/receiver.md"));
        copy.Commit("another name", "2026-11-23");
        Put(copy, "boards/SP-0001.md", "title:", "title: Old");
        copy.Commit("another board", "2026-11-24");

        var lines = History(copy.Root, "SP-0007").Out.Split('\n');
        Assert.Equal("SP-0007: 2 commits changed what is said or judged of it", lines[0]);
        Assert.Matches("^2026-11-21  [0-9a-f]{10}  RK  1 verdict; 1 reading changed; because of the reading$", lines[2]);
        Assert.Matches("^2026-11-20  [0-9a-f]{10}  RK  came into the records: fit to run$", lines[3]);
        Assert.Equal(string.Empty, lines[4]);
    }

    [Fact]
    public void A_design_changes_a_board_that_nobody_touched()
    {
        using var copy = ScratchRepository.OfDemo();
        var design = copy.Read("boards/SP-0008.md").Split("design: ")[1].Split('\n')[0];
        var path = $"designs/{design}.md";
        var part = copy.Read(path).Split('\n').First(line => line.Contains("ref: C3", StringComparison.Ordinal));
        Assert.Contains("20 %", part, StringComparison.Ordinal);
        Put(copy, path, part, part.Replace("20 %", "2 %", StringComparison.Ordinal));
        copy.Commit("a tighter mark", "2026-11-21");
        Assert.Contains("because of the design", History(copy.Root, "SP-0008").Out.Split('\n')[2], StringComparison.Ordinal);
        Assert.Contains(
            $"{path}:",
            JsonDocument.Parse(History(copy.Root, "SP-0008", "--form", "json").Out).RootElement.GetProperty("steps")[0].GetRawText(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Whoever_wrote_an_entry_on_a_branch_is_told_and_not_whoever_merged_it()
    {
        using var copy = ScratchRepository.OfDemo("--initial-branch=main");
        copy.Git("checkout", "--quiet", "-b", "bench");
        Put(copy, Board, Reading, "41.8 µF");
        copy.Commit("read again", "2026-11-21", "Tam");
        copy.Git("checkout", "--quiet", "main");
        Put(copy, "boards/SP-0001.md", "title:", "title: Old");
        copy.Commit("another board", "2026-11-22");
        copy.Git("merge", "--quiet", "--no-ff", "--no-edit", "bench");

        var told = History(copy.Root, "SP-0007", "C3").Out;
        Assert.Matches("RK  merge:  verdict  C3 capacitance 41.8 µF of 2026-02-28: was outside, now inside", told);
        Assert.Matches(
            "  reading of C3, 2026-02-28 RK, capacitance 41.8 µF: 2026-11-20 RK \\([0-9a-f]{10}\\); "
                + "as it stands since 2026-11-21 Tam \\([0-9a-f]{10}\\)\n",
            told
        );
    }

    [Fact]
    public void What_was_put_back_stands_since_then()
    {
        using var copy = ScratchRepository.OfDemo();
        Put(copy, Board, Reading, "41.8 µF");
        copy.Commit("read again", "2026-11-21");
        Put(copy, Board, "41.8 µF", Reading);
        copy.Commit("put back", "2026-11-22", "Tam");
        var told = History(copy.Root, "SP-0007", "C3").Out;
        Assert.Contains("C3: 2 commits changed", told, StringComparison.Ordinal);
        Assert.Contains("as it stands since 2026-11-22 Tam", told, StringComparison.Ordinal);
        Assert.Single(told.Split('\n'), line => line.Contains("as it stands since", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_not_committed_stands_above_all()
    {
        using var copy = ScratchRepository.OfDemo();
        Put(copy, Board, Reading, "41.8 µF");
        var told = History(copy.Root, "SP-0007", "C3").Out;
        Assert.StartsWith("not committed yet  verdict  C3", told.Split('\n')[2], StringComparison.Ordinal);
        Assert.Contains("; what it says now was not committed yet\n", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Pieces_that_another_board_took_are_told_where_they_matter()
    {
        // Of a lot of which too many were taken, each board that took some says so.
        using var copy = ScratchRepository.OfDemo();
        var lot = copy.Read("stock.yaml").Split('\n').First(line => line.Contains("lot: L-018", StringComparison.Ordinal));
        Assert.NotNull(lot);
        var other = copy.Read("boards/SP-0008.md");
        copy.Write("boards/SP-0008.md", other.Replace("bench:\n", "bench:\n" + Visit("C3", 40), StringComparison.Ordinal));
        copy.Commit("many pieces", "2026-11-21");
        var (one, all) = (History(copy.Root, "SP-0007"), Run.Of("changes", "HEAD~1", "HEAD", "--in", copy.Root, "--as-of", "2026-11-21"));
        Assert.Contains("overdrawn", all.Out, StringComparison.Ordinal);
        Assert.Equal(all.Out.Contains("\nSP-0007  ", StringComparison.Ordinal), one.Out.Contains("2026-11-21", StringComparison.Ordinal));
    }

    [Fact]
    public void Pieces_count_for_a_board_as_long_as_it_held_some_of_their_lot()
    {
        using var copy = ScratchRepository.OfDemo();
        copy.Write(
            "boards/SP-0030.md",
            "---\nboard: SP-0030\ntitle: Lamp driver\nparts:\n  - { ref: C3, kind: aluminium electrolytic, capacitance: 47 µF }\nbench:\n"
                + Visit("C3", 40)
                + "---\n"
        );
        copy.Commit("many pieces", "2026-11-21");
        File.Delete(copy.At("boards/SP-0030.md"));
        copy.Commit("they were never there", "2026-11-22");
        copy.Write(Board, copy.Read(Board).Replace("L-018", "L-005", StringComparison.Ordinal));
        copy.Commit("they came out of another bag", "2026-11-23");

        // Today its record names L-005; on the days before it was L-018 that counted.
        var told = History(copy.Root, "SP-0007").Out;
        Assert.Matches("\n2026-11-23  .*\n2026-11-22  .*\n2026-11-21  .*\n2026-11-20  ", told);
    }

    [Fact]
    public void What_the_giver_of_a_part_says_is_told_of_the_board_that_took_it()
    {
        // The giver does not name the taker: only the taker says where its part came from.
        using var copy = ScratchRepository.OfDemo();
        const string Giver = "boards/SP-0020.md";
        var intact = copy.Read(Giver);
        Assert.DoesNotContain("SP-0011", intact, StringComparison.Ordinal);
        const string Head = "bench:\n  - date: 2026-11-21\n    by: RK\n    work:\n";
        Put(copy, Giver, "bench:\n", Head + "      - { part: C2, did: removed }\n");
        Put(
            copy,
            "boards/SP-0011.md",
            "bench:\n",
            Head + "      - { part: C2, did: replaced, taken_from: SP-0020 C2, polarity: schematic }\n"
        );
        copy.Commit("one for the other", "2026-11-21");
        copy.Write(Giver, intact);
        copy.Commit("it never left", "2026-11-22");

        Assert.Matches("\n2026-11-22  [0-9a-f]{10}  RK  ", History(copy.Root, "SP-0011").Out);
    }

    [Fact]
    public void Who_first_wrote_an_entry_is_known_behind_another_name_of_the_file()
    {
        using var copy = ScratchRepository.OfDemo();
        File.Move(copy.At(Board), copy.At("boards/receiver.md"));
        copy.Commit("another name", "2026-11-23", "Tam");
        var told = History(copy.Root, "SP-0007", "C3").Out;
        Assert.Matches("reading of C3, 2026-02-28 RK, capacitance 31.8 µF: 2026-11-20 RK ", told);
        Assert.DoesNotContain("Tam", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_that_came_after_the_beginning_of_a_clone_has_its_whole_history_there()
    {
        using var copy = ScratchRepository.OfDemo("--initial-branch=main");
        Put(copy, "boards/SP-0001.md", "title:", "title: Old");
        copy.Commit("where the clone begins", "2026-11-21");
        copy.Write("boards/SP-0030.md", "---\nboard: SP-0030\ntitle: Lamp driver\n---\n");
        copy.Commit("a new board", "2026-11-22");
        using var beside = CollectionCopy.Empty();
        using var cloning = ScratchRepository.In(beside.Root);
        cloning.Git("clone", "--quiet", "--depth", "2", "file://" + copy.Root, "clone");
        Assert.Equal((0, 3), (History(beside.At("clone"), "SP-0030").Exit, History(beside.At("clone"), "SP-0007").Exit));
        var both = Histories(
            beside.At("clone"),
            CollectionFolder.Open(beside.At("clone")),
            ["boards/SP-0007.md", "boards/SP-0030.md"],
            isAll: false
        );
        Assert.Equal((true, false), (both["boards/SP-0007.md"].Begins is not null, both["boards/SP-0030.md"].Begins is not null));
    }

    [Fact]
    public void What_programs_read_follows_its_schema()
    {
        var schema = new PublishedSchema("history");
        using var copy = ScratchRepository.OfDemo();
        Put(copy, Board, Reading, "41.8 µF");
        copy.Commit("read again", "2026-11-21");
        Put(copy, Board, "41.8 µF", "42.8 µF");
        foreach (
            string[] words in (string[][])
                [
                    ["SP-0007"],
                    ["SP-0007", "C3"],
                    [],
                ]
        )
        {
            var run = Run.Of(["history", .. words, "--form", "json", "--in", copy.Root]);
            Assert.True(run.Exit == 0, run.Error);
            schema.Holds(JsonDocument.Parse(run.Out).RootElement);
        }
    }

    [Fact]
    public void A_shallow_clone_says_where_its_history_begins()
    {
        using var copy = ScratchRepository.OfDemo("--initial-branch=main");
        Put(copy, Board, Reading, "41.8 µF");
        copy.Commit("read again", "2026-11-21");
        using var beside = CollectionCopy.Empty();
        using var cloning = ScratchRepository.In(beside.Root);
        cloning.Git("clone", "--quiet", "--depth", "1", "file://" + copy.Root, "clone");
        var run = History(beside.At("clone"), "SP-0007");
        Assert.Equal(3, run.Exit);
        Assert.Matches("\n2026-11-21  [0-9a-f]{10}  the history of this clone begins here; fetch more of it\n", run.Out);
        Assert.StartsWith("SP-0007: 0 commits changed", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void No_signature_is_verified_by_a_program_that_the_repository_names()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the program is a script of a shell");
        using var copy = ScratchRepository.OfDemo();
        var marker = copy.At("marker");
        ScratchRepository.Script(copy.At("touch.sh"), $"touch '{marker}'");
        // A commit with a signature, as git writes it into the object.
        var text = copy.Git("cat-file", "commit", "HEAD");
        var at = text.IndexOf("\n\n", StringComparison.Ordinal);
        copy.Write("signed", text[..at] + "\ngpgsig -----BEGIN PGP SIGNATURE-----\n \n aa\n -----END PGP SIGNATURE-----" + text[at..]);
        var signed = copy.Git("hash-object", "-t", "commit", "-w", "signed").Trim();
        File.Delete(copy.At("signed"));
        copy.Git("reset", "--quiet", "--soft", signed);
        foreach (var (key, value) in new[] { ("log.showSignature", "true"), ("gpg.program", copy.At("touch.sh")) })
        {
            copy.Git("config", key, value);
        }

        copy.Git("log", "-1");
        Assert.True(File.Exists(marker), "git itself verifies it");
        File.Delete(marker);
        Assert.Equal(0, History(copy.Root, "SP-0007").Exit);
        Assert.False(File.Exists(marker));
    }

    [Fact]
    public void A_commit_of_a_day_that_no_calendar_here_has_is_told_all_the_same()
    {
        using var copy = ScratchRepository.OfDemo();
        var text = copy.Git("cat-file", "commit", "HEAD");
        copy.Write("late", System.Text.RegularExpressions.Regex.Replace(text, "(?m)^(committer .*> )[0-9]+ ", "${1}900000000000 "));
        var late = copy.Git("hash-object", "-t", "commit", "-w", "late").Trim();
        File.Delete(copy.At("late"));
        copy.Git("reset", "--quiet", "--soft", late);
        var run = History(copy.Root, "SP-0007");
        Assert.Equal(0, run.Exit);
        Assert.Contains("came into the records", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_of_authors_are_inert()
    {
        using var copy = ScratchRepository.OfDemo();
        Put(copy, Board, Reading, "41.8 µF");
        copy.Commit("read \u001b[31magain", "2026-11-21", "R\u001b[2JK");
        var run = History(copy.Root, "SP-0007");
        Assert.DoesNotContain('\u001b', run.Out);
        Assert.DoesNotContain('\u001b', History(copy.Root, "SP-0007", "--form", "json").Out);
        Assert.Contains("1 verdict", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_is_not_there_is_refused_with_the_nearest()
    {
        using var copy = ScratchRepository.OfDemo();
        var run = History(copy.Root, "SP-0007", "C33");
        Assert.Equal((2, "SP-0007 has no part and no point 'C33', 'C3' is the nearest\n"), (run.Exit, run.Error));
    }

    [Fact]
    public void A_folder_without_a_repository_says_what_git_says()
    {
        using var copy = CollectionCopy.Make();
        var run = History(copy.Root, "SP-0007");
        Assert.Equal(3, run.Exit);
        Assert.StartsWith("fatal: not a git repository", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_alone_is_told_as_it_is_among_all()
    {
        // The short way looks at the commits that can matter to one board, the long way at all of them.
        using var copy = CollectionCopy.Make();
        using var repository = ScratchRepository.In(copy.Root);
        repository.Git("init", "--quiet");
        repository.Commit("as it was");
        var edits = new Edits(7);
        for (var day = 1; day <= (TestExtent.IsAll ? 24 : 8); day++)
        {
            edits.Make(copy);
            repository.Commit("edit", $"2026-10-{day:00}");
        }

        var files = CollectionFolder.Open(copy.Root);
        var all = Histories(copy.Root, files, files.Boards, isAll: true);
        Assert.True(all.Values.Count(history => history.Steps.Length > 1) >= (TestExtent.IsAll ? 6 : 2), "the edits touch some boards");
        foreach (var path in files.Boards)
        {
            Assert.Equal(Told(all[path]), Told(Histories(copy.Root, files, [path], isAll: false)[path]));
        }
    }

    private static IReadOnlyDictionary<string, CommitHistory> Histories(
        string root,
        CollectionFolder files,
        IReadOnlyList<string> paths,
        bool isAll
    )
    {
        Assert.True(GitRepository.Open(root).Is(out var git, out _));
        Assert.True(git.Objects().Is(out var objects, out _));
        using (objects)
        {
            using var lying = new ComparedSide("now", files, null);
            var options = new RunOptions(new(2026, 11, 25), IsThorough: false, Workers: 2, ReadingLimits.Usual);
            Assert.True(new HistoryRun(git, objects, lying, options).Run(paths, isAll).Is(out var found, out _));
            return found;
        }
    }

    private static string Told(CommitHistory history) =>
        string.Join(
            '\n',
            history
                .Steps.Select(step => $"{step.Commit?.Id} {string.Join(" | ", ChangeLines.Board(step.Changes).Select(line => line.Text))}")
                .Concat(history.Entries.Select(origin => $"{origin.Entry.Told} {HistoryLines.Told(origin)}"))
        );

    private static string Visit(string part, int pieces) =>
        "  - date: 2026-10-30\n    by: RK\n    work:\n"
        + string.Concat(
            Enumerable.Repeat(
                $"      - {{ part: {part}, did: replaced, lot: L-018, polarity: [schematic, continuity to ground plane] }}\n",
                pieces
            )
        );

    private static void Put(ScratchRepository copy, string path, string was, string now)
    {
        var text = copy.Read(path);
        var at = text.IndexOf(was, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{path} does not say {was}");
        copy.Write(path, text[..at] + now + text[(at + was.Length)..]);
    }

    private static Run History(string folder, params string[] words) =>
        Run.Of(["history", .. words, "--in", folder, "--as-of", "2026-11-25"]);
}
