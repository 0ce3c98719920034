using System.Text;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>Records brought into layout on disk, only looked at, or refused; and verdicts written beside readings.</summary>
public sealed class TidyCommandTests
{
    private const string Board = "boards/SP-0007.md";
    private const string Untidy = "---\nboard:   SP-0001   # the first\ntitle: Logger\n---\nstory  \n";
    private const string Tidied = "---\nboard: SP-0001   # the first\ntitle: Logger\n---\nstory  \n";

    [Fact]
    public void The_demo_collection_is_tidy()
    {
        var run = Run.Of("tidy", CollectionCopy.Untouched, "--check");
        Assert.Equal((0, $"{CollectionCopy.Boards + 11} files, 0 not tidy\n", ""), (run.Exit, run.Out, run.Error));
    }

    [Fact]
    public void An_untidy_file_is_written_once_and_tidy_ones_keep_their_time()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("SP-0001.md", Untidy);
        copy.Write("SP-0002.md", Tidied.Replace("0001", "0002", StringComparison.Ordinal));
        var old = new DateTime(2026, 3, 14, 0, 0, 0, DateTimeKind.Utc);
        File.SetLastWriteTimeUtc(copy.At("SP-0002.md"), old);
        Assert.Equal(new Run(0, "SP-0001.md: tidied\n2 files, 1 tidied\n", ""), Run.Of("tidy", copy.Root));
        Assert.Equal(Tidied, copy.Read("SP-0001.md"));
        File.SetLastWriteTimeUtc(copy.At("SP-0001.md"), old);
        Assert.Equal(new Run(0, "2 files, 0 tidied\n", ""), Run.Of("tidy", copy.Root));
        Assert.All(Directory.GetFiles(copy.Root), file => Assert.Equal(old, File.GetLastWriteTimeUtc(file)));
    }

    [Fact]
    public void With_check_the_untidy_files_are_listed_and_nothing_is_written()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("SP-0001.md", Untidy);
        Assert.Equal(
            new Run(1, "SP-0001.md:2: not tidy from here on\n1 files, 1 not tidy\n", ""),
            Run.Of("tidy", copy.At("SP-0001.md"), "--check")
        );
        Assert.Equal(Untidy, copy.Read("SP-0001.md"));
    }

    [Fact]
    public void With_diff_the_changes_are_shown_and_nothing_is_written()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("SP-0001.md", Untidy);
        const string diff = """
            --- SP-0001.md
            +++ SP-0001.md
            @@ -1,5 +1,5 @@
             ---
            -board:   SP-0001   # the first
            +board: SP-0001   # the first
             title: Logger
             ---
             story  

            """;
        Assert.Equal(new Run(0, diff, "1 files, 1 not tidy\n"), Run.Of("tidy", copy.Root, "--diff"));
        Assert.Equal(1, Run.Of("tidy", copy.Root, "--diff", "--check").Exit);
        Assert.Equal(Untidy, copy.Read("SP-0001.md"));
    }

    [Fact]
    public void A_diff_shows_line_ends_and_hidden_characters_written_out()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("SP-0001.md", "---\nboard:  SP-0001\r\ntitle: \"a\u202Eb\"  \n---");
        Assert.Equal(
            "--- SP-0001.md\n+++ SP-0001.md\n@@ -1,4 +1,4 @@\n ---\n-board:  SP-0001<U+000D>\n-title: \"a<U+202E>b\"  \n----\n\\ No "
                + "newline at end of file\n+board: SP-0001\n+title: \"a<U+202E>b\"\n+---\n",
            Run.Of("tidy", copy.Root, "--diff").Out
        );
    }

    [Fact]
    public void A_file_that_is_not_read_without_errors_is_told_and_left_and_the_others_are_tidied()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("SP-0001.md", Untidy);
        copy.Write("SP-0002.md", "---\nboard:  SP-0002\ntitel: Logger\n---\n");
        copy.Write("SP-0003.md", "---\nboard:  SP-0003\nboard: SP-0004\n---\n");
        var run = Run.Of("tidy", copy.Root);
        Assert.Equal((1, "SP-0001.md: tidied\n3 files, 1 tidied\n"), (run.Exit, run.Out));
        Assert.Contains("SP-0002.md:3:1: ", run.Error, StringComparison.Ordinal);
        Assert.Contains("SP-0003.md:3:1: ", run.Error, StringComparison.Ordinal);
        Assert.Equal("---\nboard:  SP-0002\ntitel: Logger\n---\n", copy.Read("SP-0002.md"));
    }

    [Fact]
    public void A_byte_order_mark_and_the_permissions_stay()
    {
        using var copy = CollectionCopy.Empty();
        File.WriteAllBytes(copy.At("SP-0001.md"), [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(Untidy)]);
        const UnixFileMode mode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.UserExecute;
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(copy.At("SP-0001.md"), mode);
        }

        Assert.Equal(0, Run.Of("tidy", copy.Root).Exit);
        Assert.Equal([.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(Tidied)], File.ReadAllBytes(copy.At("SP-0001.md")));
        Assert.True(OperatingSystem.IsWindows() || File.GetUnixFileMode(copy.At("SP-0001.md")) == mode);
        Assert.Equal(["SP-0001.md"], Directory.GetFiles(copy.Root).Select(Path.GetFileName));
    }

    [Fact]
    public void A_file_that_may_not_be_written_or_is_a_link_ends_with_3_and_the_others_are_tidied()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("SP-0001.md", Untidy);
        copy.Write("SP-0002.md", Untidy.Replace("0001", "0002", StringComparison.Ordinal));
        File.SetAttributes(copy.At("SP-0001.md"), FileAttributes.ReadOnly);
        File.CreateSymbolicLink(copy.At("SP-0003.md"), "SP-0002.md");
        var run = Run.Of("tidy", copy.Root);
        Assert.Equal((3, "SP-0002.md: tidied\n3 files, 1 tidied\n"), (run.Exit, run.Out));
        Assert.Equal(
            "SP-0001.md: the file may not be written; nothing was, until its permissions allow it\nSP-0003.md: a record that is a "
                + "symbolic link is not written; put the file itself there\n",
            run.Error
        );
        File.SetAttributes(copy.At("SP-0001.md"), FileAttributes.Normal);
        Assert.Equal(Untidy, copy.Read("SP-0001.md"));
    }

    [Theory]
    [InlineData("nowhere")]
    [InlineData("notes.txt")]
    [InlineData("empty")]
    public void What_is_no_record_is_a_wrong_command_line(string name)
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("notes.txt", "a:  b\n");
        Directory.CreateDirectory(copy.At("empty"));
        var run = Run.Of("tidy", copy.At(name));
        Assert.Equal((2, ""), (run.Exit, run.Out));
        Assert.Contains(name, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Verdicts_are_written_beside_all_that_is_judged_and_the_collection_still_holds()
    {
        using var copy = CollectionCopy.Make();
        var run = Verdicts(copy);
        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.Contains("boards/SP-0007.md:61: +80V: verdict in added\n", run.Out, StringComparison.Ordinal);
        var after = copy.Read(Board);
        Assert.Contains(
            "- { part: R3, lot: L-010, state: new, resistance: 99.94 kΩ, instrument: meter-1, verdict: in }\n",
            after,
            StringComparison.Ordinal
        );
        Assert.Contains("- { point: +80V, voltage: 81.3 V, ripple: 0.82 V, verdict: in }\n", after, StringComparison.Ordinal);
        Assert.Equal(0, Run.Of("check", copy.Root, "--as-of", "2026-11-25").Exit);
        Assert.Equal(new Run(0, $"{CollectionCopy.Boards + 11} files, 0 not tidy\n", ""), Verdicts(copy, "--check"));
    }

    [Fact]
    public void A_verdict_that_disagrees_is_mended_only_with_verdicts_and_is_named()
    {
        using var copy = CollectionCopy.Make();
        var wrong = copy.Read(Board).Replace("esr: 8.1 Ω, verdict: out", "esr: 8.1 Ω, verdict: in", StringComparison.Ordinal);
        copy.Write(Board, wrong);
        Assert.Equal(0, Run.Of("tidy", copy.Root).Exit);
        Assert.Equal(wrong, copy.Read(Board));
        Assert.Contains("boards/SP-0007.md:24: C4: verdict out instead of in\n", Verdicts(copy).Out, StringComparison.Ordinal);
        Assert.Contains("esr: 8.1 Ω, verdict: out }", copy.Read(Board), StringComparison.Ordinal);
    }

    [Fact]
    public void A_verdict_on_what_cannot_be_judged_is_taken_out_and_is_named()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write(
            "SP-0001.md",
            """
            ---
            board: SP-0001
            title: Logger
            parts:
              - { ref: X1, kind: connector }
            bench:
              - date: 2026-03-14
                by: RK
                readings:
                  - { part: X1, circuit: out, resistance: 3 Ω, verdict: in, note: corroded }
            ---
            """ + "\n"
        );
        Assert.Equal(
            new Run(0, "SP-0001.md:10: X1: verdict in taken out, nothing can be judged here\nSP-0001.md: tidied\n1 files, 1 tidied\n", ""),
            Verdicts(copy)
        );
        Assert.Contains(
            "- { part: X1, circuit: out, resistance: 3 Ω, note: corroded }\n",
            copy.Read("SP-0001.md"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Without_what_it_is_judged_by_no_verdict_is_written()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        copy.Write("stock.yaml", "lots: [\n");
        var run = Verdicts(copy);
        Assert.Equal(1, run.Exit);
        Assert.Contains(
            "boards/SP-0007.md: verdicts cannot be computed: the collection, the stock, the instruments or the design holds what cannot "
                + "be read\n",
            run.Error,
            StringComparison.Ordinal
        );
        Assert.Equal(before, copy.Read(Board));
    }

    private static Run Verdicts(CollectionCopy copy, params string[] more) =>
        Run.Of(["tidy", copy.Root, "--verdicts", "--as-of", "2026-11-25", .. more]);

    // What is not there says nothing: a verdict that is written without it would be another one.
    [Theory]
    [InlineData("designs/teleprinter-line.md")]
    [InlineData("stock.yaml")]
    [InlineData("instruments.yaml")]
    public void Where_a_file_that_it_is_judged_by_is_missing_no_verdict_is_written(string missing)
    {
        using var copy = CollectionCopy.Make();
        File.Delete(copy.At(missing));
        var before = copy.Read(Board);
        var run = Run.Of("tidy", copy.At(Board), "--verdicts", "--as-of", "2026-11-25");
        Assert.Equal((1, before), (run.Exit, copy.Read(Board)));
        Assert.Contains("boards/SP-0007.md: verdicts cannot be computed", run.Error, StringComparison.Ordinal);
    }
}
