using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>How check ends, and what it does with folders and files that are not as expected.</summary>
public sealed class CheckCommandTests
{
    private const string Today = "2026-11-25";

    // All boards of the demo were seen before 2027 and are to be looked at every 18 months.
    [Fact]
    public void The_summary_counts_those_fit_to_run_whose_look_is_overdue()
    {
        Assert.Matches(
            "boards: [0-9]+ fit to run \\([0-9]+ of them with the inspection overdue\\), ",
            Run.Of("check", CollectionCopy.Untouched, "--as-of", "2029-01-01").Out
        );
        Assert.DoesNotContain("overdue", Run.Of("check", CollectionCopy.Untouched, "--as-of", "2026-11-25").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_demo_collection_has_warnings_and_ends_clean() => Assert.Equal(0, Check(CollectionCopy.Untouched).Exit);

    [Fact]
    public void Under_strict_a_warning_counts_as_an_error() => Assert.Equal(1, Check(CollectionCopy.Untouched, "--strict").Exit);

    // Told by a check that knows no page, in boards and designs alike.
    [Fact]
    public void A_link_that_the_page_leaves_out_is_told_where_it_stands()
    {
        using var copy = CollectionCopy.Make();
        foreach (var path in new[] { "boards/SP-0003.md", "designs/tide-logger.md" })
        {
            copy.Write(path, copy.Read(path).TrimEnd() + "\n\nSee [the note](javascript:alert(1)).\n");
        }

        var found = ShownFinding
            .FromJson(Check(copy.Root, "--form", "json").Out)
            .Where(finding => finding.Check.EndsWith("link-dropped", StringComparison.Ordinal));
        Assert.Equal(
            [("boards/SP-0003.md", "link-dropped"), ("designs/tide-logger.md", "link-dropped")],
            found.Select(finding => (finding.Path, finding.Check))
        );
        Assert.All(found, finding =>
            Assert.Equal(
                (copy.Read(finding.Path).TrimEnd().Split('\n').Length, 5, "warning"),
                (finding.Line, finding.Column, finding.Severity)
            )
        );
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-3")]
    public void Without_a_worker_nothing_is_checked(string count)
    {
        var run = Check(CollectionCopy.Untouched, "--workers", count);
        Assert.Equal((2, string.Empty), (run.Exit, run.Out));
        Assert.Contains($"--workers {count} leaves nobody to read; give 1 or more", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_error_in_a_record_ends_with_1()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("boards/SP-0003.md", copy.Read("boards/SP-0003.md").Replace("tide-logger", "tide-loger", StringComparison.Ordinal));
        Assert.Equal(1, Check(copy.Root).Exit);
    }

    // One worker reads them one after the other: what stood at the end of a long one must not show behind a short one.
    [Theory]
    [InlineData(100)]
    [InlineData(50_000)]
    [InlineData(400_000)]
    public void A_short_record_after_a_long_one_is_read_to_its_own_end(int length)
    {
        using var folder = CollectionCopy.Empty();
        folder.Write("boards/A.md", Record("A") + new string('x', length) + "\a\n");
        folder.Write("boards/B.md", Record("B"));
        folder.Write("boards/C.md", Record("C") + new string('y', length + 1) + "\a\n");
        folder.Write("boards/D.md", Record("D"));
        var run = Check(folder.Root, "--workers", "1");
        Assert.Equal(1, run.Exit);
        Assert.Contains("boards/A.md:5:", run.Out, StringComparison.Ordinal);
        Assert.Contains("boards/C.md:5:", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("boards/B.md", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("boards/D.md", run.Out, StringComparison.Ordinal);
        Assert.Contains("4 boards", run.Out, StringComparison.Ordinal);

        static string Record(string name) => $"---\nboard: {name}\ntitle: Bench supply\n---\n";
    }

    [Fact]
    public void A_folder_without_records_ends_with_2_unless_that_is_meant()
    {
        using var empty = CollectionCopy.Empty();
        var run = Check(empty.Root);
        Assert.Equal(2, run.Exit);
        Assert.Equal(
            $"no records in '{empty.Root}': a collection has boards/*.md, or name a board file; --allow-empty if that is meant\n",
            run.Error
        );
        Assert.Equal(0, Check(empty.Root, "--allow-empty").Exit);
    }

    [Theory]
    [InlineData("check", "no-such-folder")]
    [InlineData("check", ".", "--form", "xml")]
    [InlineData("check", ".", "--as-of", "05.12.2026")]
    [InlineData("chek")]
    [InlineData("check", ".", "--stric")]
    [InlineData("explain", "polarity")]
    [InlineData("why", "SP-9999", "--in", "no-such-folder")]
    [InlineData("report", "no-such-folder")]
    public void A_wrong_command_line_ends_with_2_and_says_so(params string[] words)
    {
        var run = Run.Of(words);
        Assert.Equal(2, run.Exit);
        Assert.NotEmpty(run.Error);
    }

    [Fact]
    public void A_misspelt_check_is_answered_with_the_nearest() =>
        Assert.Equal(
            "there is no check and no word 'polarity-from-print-alon', 'polarity-from-print-alone' is the nearest\n",
            Run.Of("explain", "polarity-from-print-alon").Error
        );

    [Fact]
    public void One_board_is_checked_with_the_files_it_belongs_to()
    {
        var run = Check(Path.Combine(CollectionCopy.Untouched, "boards", "SP-0002.md"));
        Assert.Equal(0, run.Exit);
        Assert.Contains(
            "boards/SP-0002.md:49:9: warning: this work is later than the last proof of 2026-03-14 [work-after-proof]",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Contains(" 1 boards: 1 proof due; 0 errors, 1 warnings", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Files_of_two_collections_are_not_mixed()
    {
        using var other = CollectionCopy.Make();
        var run = Check(Path.Combine(CollectionCopy.Untouched, "boards", "SP-0002.md"), other.At("boards/SP-0003.md"));
        Assert.Equal(2, run.Exit);
        Assert.Contains("one collection at a time", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_order_of_findings_does_not_depend_on_the_number_of_workers()
    {
        using var many = CollectionCopy.Make();
        for (var i = 1; i <= 100; i++)
        {
            many.Write(
                $"boards/SP-1{i:000}.md",
                many.Read("boards/SP-0002.md").Replace("SP-0002", $"SP-1{i:000}", StringComparison.Ordinal)
            );
        }

        var one = Check(many.Root, "--workers", "1", "--form", "json");
        Assert.Equal(101, ShownFinding.FromJson(one.Out).Count(finding => finding.Check == "work-after-proof"));
        Assert.Equal(one, Check(many.Root, "--workers", "4", "--form", "json"));
    }

    [Fact]
    public void A_thorough_run_finds_nothing_more_in_sound_records() =>
        Assert.Equal(Check(CollectionCopy.Untouched), Check(CollectionCopy.Untouched, "--thorough"));

    [Fact]
    public void Checking_leaves_every_file_as_it_was()
    {
        using var copy = CollectionCopy.Make();
        var before = Files(copy.Root);
        Check(copy.Root);
        Assert.Equal(before, Files(copy.Root));
    }

    private static Run Check(params string[] words) => Run.Of(["check", .. words, "--as-of", Today]);

    private static List<string> Files(string root) =>
        [
            .. Directory
                .EnumerateFiles(root, "*", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
                .Select(file =>
                    $"{file} {File.GetLastWriteTimeUtc(file):O} "
                    + $"{Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(file)))}"
                ),
        ];
}
