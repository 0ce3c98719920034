using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>A board gets another number: everything that names it follows, or nothing is written.</summary>
public sealed class RenumberCommandTests
{
    private const string Today = "2026-11-25";

    [Fact]
    public void The_record_its_photographs_and_their_names_move_and_the_label_of_the_bag_stays()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read("boards/SP-0007.md");
        var run = Renumber(copy, "SP-0007", "SP-0107");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.False(File.Exists(copy.At("boards/SP-0007.md")));
        Assert.False(Directory.Exists(copy.At("photos/SP-0007")));
        Assert.True(File.Exists(copy.At("photos/SP-0107/c1-new.png")));
        Assert.Equal(
            before
                .Replace("board: SP-0007\n", "board: SP-0107\n", StringComparison.Ordinal)
                .Replace("photos/SP-0007/", "photos/SP-0107/", StringComparison.Ordinal)
                .Replace(
                    "\n---\n\n## Story",
                    "\nformerly:\n  - { number: SP-0007, until: 2026-11-25 }\n---\n\n## Story",
                    StringComparison.Ordinal
                ),
            copy.Read("boards/SP-0107.md")
        );
        Assert.Contains("left as it stands: boards/SP-0107.md:33: - { part: C1, did: removed,", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("number: SP-0007, until", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Stories_reasons_and_both_ends_of_a_part_on_other_boards_name_the_new_number()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Entered(copy, "work", "SP-0011", "replaced", "C2", "--from", "SP-0020 C2", "--polarity", "schematic"));
        Assert.Equal(0, Entered(copy, "wait", "SP-0010", "the pen of SP-0020", "--blocks", "drift test beside SP-0020"));
        File.AppendAllText(
            copy.At("designs/bench-supply.md"),
            "\nBuilt as [its sister](../boards/SP-0020.md), see `SP-0020`, SP-0020-2 and https://example.org/SP-0020.\n"
        );
        var run = Renumber(copy, "SP-0020", "SP-0120");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("taken_from: SP-0120 C2", copy.Read("boards/SP-0011.md"), StringComparison.Ordinal);
        Assert.Contains("went_to: SP-0011 C2", copy.Read("boards/SP-0120.md"), StringComparison.Ordinal);
        Assert.Contains(
            "for: the pen of SP-0120, blocks: drift test beside SP-0120",
            copy.Read("boards/SP-0010.md"),
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "(../boards/SP-0120.md), see `SP-0120`, SP-0020-2 and https://example.org/SP-0020.\n",
            copy.Read("designs/bench-supply.md"),
            StringComparison.Ordinal
        );
        Assert.Equal(0, Run.Of("check", copy.Root, "--as-of", Today).Exit);
    }

    [Fact]
    public void The_other_end_follows_when_the_board_that_has_the_part_now_is_renumbered()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Entered(copy, "work", "SP-0011", "replaced", "C2", "--from", "SP-0020 C2", "--polarity", "schematic"));
        Assert.Equal(0, Renumber(copy, "SP-0011", "SP-0111").Exit);
        Assert.Contains("went_to: SP-0111 C2", copy.Read("boards/SP-0020.md"), StringComparison.Ordinal);
        Assert.Equal(0, Run.Of("check", copy.Root, "--as-of", Today).Exit);
    }

    [Fact]
    public void A_trial_shows_each_change_and_writes_nothing()
    {
        using var copy = CollectionCopy.Make();
        var before = Everything(copy);
        var run = Renumber(copy, "SP-0009", "SP-0109", "--trial");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("-board: SP-0009\n+board: SP-0109\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("photos/SP-0009: would move to photos/SP-0109\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("boards/SP-0010.md: SP-0109 for SP-0009 3 times\n", run.Out, StringComparison.Ordinal);
        Assert.Equal(before, Everything(copy));
    }

    [Fact]
    public void The_former_number_leads_to_the_new_one_on_the_pages_in_the_search_and_at_the_prompt()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Renumber(copy, "SP-0009", "SP-0109").Exit);
        Assert.Equal(0, Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", Today).Exit);
        var page = copy.Read("pages/boards/SP-0009.html");
        Assert.Contains("<meta http-equiv=refresh content=\"0; url=../boards/SP-0109.html\">", page, StringComparison.Ordinal);
        Assert.Contains("href=../boards/SP-0109.html", page, StringComparison.Ordinal);
        Assert.Contains("<i>SP-0009</i> until <i>2026-11-25</i>", copy.Read("pages/boards/SP-0109.html"), StringComparison.Ordinal);
        Assert.Contains("!sp9 ", copy.Read("pages/search/w1.js"), StringComparison.Ordinal);
        foreach (var command in new[] { "why", "sheet" })
        {
            var run = Run.Of(command, "SP-0009", "--in", copy.Root, "--as-of", Today);
            Assert.Equal((2, "SP-0009 is SP-0109 now (boards/SP-0109.md); give that number\n"), (run.Exit, run.Error));
        }
    }

    [Fact]
    public void A_number_that_a_board_had_before_is_not_offered_as_free()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Renumber(copy, "SP-0009", "SP-0021").Exit);
        Assert.Equal(0, Renumber(copy, "SP-0021", "SP-0009X1").Exit);
        Assert.Equal(
            (2, "SP-0010 is taken: boards/SP-0010.md; free is SP-0022\n"),
            Renumber(copy, "SP-0011", "SP-0010") is var run ? (run.Exit, run.Error) : default
        );
    }

    [Theory]
    [InlineData("SP-0010 is taken: boards/SP-0010.md", "SP-0009", "SP-0010")]
    [InlineData("sp-0010 is taken but for its capitals: boards/SP-0010.md", "SP-0009", "sp-0010")]
    [InlineData("SP-0009 is its number already", "SP-0009", "SP-0009")]
    [InlineData("there is no board 'SP-0090'", "SP-0090", "SP-0109")]
    [InlineData("'NUL' cannot be the number of a board: it cannot be the name of a page", "SP-0009", "NUL")]
    [InlineData("'../x' cannot be the number of a board: it cannot be the name of a page", "SP-0009", "../x")]
    [InlineData("'SP 109' cannot be the number of a board: it has a space", "SP-0009", "SP 109")]
    public void A_number_that_cannot_be_is_refused(string message, string from, string to)
    {
        using var copy = CollectionCopy.Make();
        var before = Everything(copy);
        var run = Renumber(copy, from, to);
        Assert.Equal(2, run.Exit);
        Assert.StartsWith(message, run.Error, StringComparison.Ordinal);
        Assert.Equal(before, Everything(copy));
    }

    [Fact]
    public void A_number_that_a_board_had_is_never_given_again()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Renumber(copy, "SP-0009", "SP-0109").Exit);
        var again = Renumber(copy, "SP-0010", "SP-0009");
        Assert.Equal(
            (2, "SP-0009 was the number of boards/SP-0109.md before, and a number is never given twice\n"),
            (again.Exit, again.Error)
        );
        var back = Renumber(copy, "SP-0109", "SP-0009");
        Assert.Equal(2, back.Exit);
        var started = Run.Of("start", "board", "SP-0009", "--name", "Clock", "--in", copy.Root, "--as-of", Today);
        Assert.Equal(1, started.Exit);
        Assert.Contains("[former-number-taken]", started.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(copy.At("boards/SP-0009.md")));
    }

    [Fact]
    public void A_second_new_number_leaves_both_former_ones()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Renumber(copy, "SP-0009", "SP-0109").Exit);
        Assert.Equal(0, Renumber(copy, "SP-0109", "SP-0209").Exit);
        Assert.Contains(
            "formerly:\n  - { number: SP-0009, until: 2026-11-25 }\n  - { number: SP-0109, until: 2026-11-25 }\n",
            copy.Read("boards/SP-0209.md"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "SP-0009 is SP-0209 now",
            Run.Of("why", "SP-0009", "--in", copy.Root, "--as-of", Today).Error,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("boards/SP-0010.md", "\nboard: [\n")]
    [InlineData("designs/bench-supply.md", "\ndesign: SP-0009 {\n")]
    public void A_record_that_names_it_and_cannot_be_read_keeps_all_from_being_written(string path, string broken)
    {
        using var copy = CollectionCopy.Make();
        copy.Write(path, copy.Read(path).Replace("\nformat: 1\n", broken, StringComparison.Ordinal) + "SP-0009\n");
        if (!copy.Read(path).Contains(broken, StringComparison.Ordinal))
        {
            copy.Write(path, "---" + broken + copy.Read(path)[3..]);
        }

        var before = Everything(copy);
        var run = Renumber(copy, "SP-0009", "SP-0109");
        Assert.Equal(1, run.Exit);
        Assert.StartsWith($"{path} holds what cannot be read, and names SP-0009", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, Everything(copy));
    }

    [Fact]
    public void What_lies_in_the_way_of_its_photographs_keeps_all_from_being_written()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("photos/SP-0109/other.png", "x");
        var before = Everything(copy);
        var run = Renumber(copy, "SP-0009", "SP-0109");
        Assert.Equal(1, run.Exit);
        Assert.StartsWith("'photos/SP-0109' is there already, beside 'photos/SP-0009'", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, Everything(copy));
    }

    [Fact]
    public void A_run_that_was_stopped_is_gone_on_with()
    {
        using var copy = CollectionCopy.Make();
        Directory.Move(copy.At("photos/SP-0009"), copy.At("photos/SP-0109"));
        File.Move(copy.At("boards/SP-0009.md"), copy.At("boards/SP-0109.md"));
        var run = Renumber(copy, "SP-0009", "SP-0109");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("as on SP-0109", copy.Read("boards/SP-0010.md"), StringComparison.Ordinal);
        Assert.Equal(0, Run.Of("check", copy.Root, "--as-of", Today).Exit);
    }

    [Fact]
    public void A_picture_named_outside_the_collection_moves_nothing_there()
    {
        using var copy = CollectionCopy.Make();
        using var beside = CollectionCopy.Empty();
        beside.Write("SP-0009/a.png", "x");
        var outside = $"../{Path.GetFileName(beside.Root)}/SP-0009/a.png";
        copy.Write(
            "boards/SP-0009.md",
            copy.Read("boards/SP-0009.md").Replace("photos/SP-0009/underside.png", outside, StringComparison.Ordinal)
        );
        Assert.Equal(0, Renumber(copy, "SP-0009", "SP-0109").Exit);
        Assert.Contains($"file: {outside},", copy.Read("boards/SP-0109.md"), StringComparison.Ordinal);
        Assert.True(File.Exists(beside.At("SP-0009/a.png")));
    }

    [Fact]
    public void A_picture_named_after_the_board_moves_and_one_of_a_longer_number_does_not()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("boards/SP-0009-2.md", "---\nboard: SP-0009-2\ntitle: Sister\n---\n");
        File.Copy(copy.At("photos/SP-0009/underside.png"), copy.At("photos/SP-0009-front.png"));
        File.Copy(copy.At("photos/SP-0009/underside.png"), copy.At("photos/SP-0009-2.png"));
        Assert.Equal(0, Renumber(copy, "SP-0010", "SP-0110").Exit);
        copy.Write(
            "boards/SP-0009.md",
            copy.Read("boards/SP-0009.md")
                .Replace(
                    "    photos:\n",
                    "    photos:\n      - { file: photos/SP-0009-front.png, shows: front }\n"
                        + "      - { file: photos/SP-0009-2.png, shows: both }\n",
                    StringComparison.Ordinal
                )
        );
        Assert.Equal(0, Renumber(copy, "SP-0009", "SP-0109").Exit);
        Assert.True(File.Exists(copy.At("photos/SP-0109-front.png")));
        Assert.True(File.Exists(copy.At("photos/SP-0009-2.png")));
        Assert.Equal(0, Run.Of("check", copy.Root, "--as-of", Today).Exit);
    }

    private static int Entered(CollectionCopy copy, params string[] words) => Run.Of([.. words, "--in", copy.Root, "--as-of", Today]).Exit;

    private static Run Renumber(CollectionCopy copy, params string[] words) =>
        Run.Of(["renumber", .. words, "--in", copy.Root, "--as-of", Today]);

    private static SortedDictionary<string, string> Everything(CollectionCopy copy) =>
        new(
            Directory
                .EnumerateFiles(copy.Root, "*", SearchOption.AllDirectories)
                .ToDictionary(file => Path.GetRelativePath(copy.Root, file), file => Convert.ToBase64String(File.ReadAllBytes(file))),
            StringComparer.Ordinal
        );
}
