using System.Text.Json;
using Ohmstead.Output;
using Ohmstead.Publishing;
using Ohmstead.Records.Schemas;
using Ohmstead.Running;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>The list of boards on the terminal: it says what a check says, whole or narrowed, in the width there is.</summary>
public sealed class BoardsCommandTests
{
    private static readonly string[] Day = ["--in", CollectionCopy.Untouched, "--as-of", "2026-11-25"];

    [Fact]
    public void Every_board_has_the_state_that_a_check_tells()
    {
        using var check = JsonDocument.Parse(Run.Of("check", CollectionCopy.Untouched, "--form", "json", "--as-of", "2026-11-25").Out);
        var told = check
            .RootElement.GetProperty("boards")
            .EnumerateArray()
            .Select(board => (board.GetProperty("board").GetString(), board.GetProperty("state").GetString()));
        using var list = JsonDocument.Parse(Run.Of(["boards", "--sort", "board", "--form", "json", .. Day]).Out);
        var listed = list
            .RootElement.GetProperty("boards")
            .EnumerateArray()
            .Select(board => (board.GetProperty("board").GetString(), board.GetProperty("state").GetString()));
        Assert.Equal(told.OrderBy(board => board.Item1, StringComparer.Ordinal), listed);
    }

    [Fact]
    public void A_board_is_told_with_why_and_what_next_and_one_that_is_fit_with_its_next_look()
    {
        using var copy = TwoBoards();
        Assert.Equal(
            """
            LH-2  proof due   Lamp supply, spare
                +5V: point +5V was never proved
                next: measure +5V and record it under proof
            LH-1  fit to run  Lamp supply
                look at it again on 2027-03-14
            2 boards, 1 fit to run

            """,
            Run.Of("boards", "--in", copy.Root, "--as-of", "2026-11-25").Out
        );
        Assert.Equal(
            """
            LH-1  fit to run  Lamp supply
            LH-2  proof due   Lamp supply, spare
            2 boards, 1 fit to run, 1 of them with the inspection overdue

            """,
            Run.Of("boards", "--in", copy.Root, "--as-of", "2027-11-25", "--brief", "--sort", "board").Out
        );
    }

    [Theory]
    [InlineData("LH-2", "--state", "proof due")]
    [InlineData("LH-2", "--needs", "point-proved")]
    [InlineData("LH-2", "SPARE", "lamp")]
    [InlineData("LH-1,LH-2", "--state", "fit to run", "--state", "proof due", "--sort", "board")]
    [InlineData("LH-1,LH-2", "--sort", "seen")]
    [InlineData("", "spare", "--state", "fit to run")]
    [InlineData("", "--needs", "wash-dried")]
    public void The_list_is_narrowed_by_state_by_need_and_by_words(string numbers, params string[] words)
    {
        using var copy = TwoBoards();
        var run = Run.Of(["boards", .. words, "--in", copy.Root, "--as-of", "2026-11-25", "--form", "csv"]);
        Assert.Equal(0, run.Exit);
        Assert.Equal(numbers, string.Join(',', run.Out.Split("\r\n")[1..^1].Select(line => line.Split(',')[0])));
    }

    [Fact]
    public void Where_a_kind_of_need_is_asked_for_its_own_reason_is_told()
    {
        Assert.Contains("V2: getter gone white", Run.Of(["boards", "SP-0010", .. Day]).Out, StringComparison.Ordinal);
        var asked = Run.Of(["boards", "SP-0010", "--needs", "reading-answered", .. Day]).Out;
        Assert.Contains("    C9: capacitance 7.41 µF", asked, StringComparison.Ordinal);
        Assert.DoesNotContain("getter", asked, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(40)]
    [InlineData(80)]
    public void A_narrow_window_is_not_overrun(int width)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var terminal = new Terminal(output, TextWriter.Null, showsProgress: false) { Width = width };
        using var interruption = new Interruption();
        Assert.Equal(0, CommandLine.Run(["boards", .. Day], terminal, interruption));
        var lines = output.ToString().Split('\n');
        Assert.All(lines, line => Assert.InRange(line.Length, 0, width));
        Assert.Contains(lines, line => line.Length > width - 8);
    }

    [Fact]
    public void A_board_that_cannot_be_read_is_named_and_not_passed_over()
    {
        using var copy = TwoBoards();
        copy.Write("boards/LH-3.md", "---\ntitle: Lamp supply without a number\n---\n");
        var run = Run.Of("boards", "--in", copy.Root, "--as-of", "2026-11-25");
        Assert.Equal((1, "boards/LH-3.md cannot be read, so it is not listed; ohmstead check tells why\n"), (run.Exit, run.Error));
        Assert.Contains("2 boards, 1 fit to run\n", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_given_as_a_word_is_told_with_the_way_to_say_it()
    {
        var folder = CollectionCopy.Untouched;
        Assert.Equal(
            $"no board says '{folder}', but there is a folder of that name: --in {folder}\n",
            Run.Of(["boards", folder, .. Day]).Error
        );
    }

    [Fact]
    public void A_title_cannot_steer_the_terminal()
    {
        using var copy = TwoBoards();
        copy.Write("boards/LH-2.md", copy.Read("boards/LH-2.md").Replace("spare", "\u202Espare", StringComparison.Ordinal));
        Assert.Contains(
            "Lamp supply, <U+202E>spare\n",
            Run.Of("boards", "--in", copy.Root, "--as-of", "2026-11-25").Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_document_keeps_to_its_published_schema()
    {
        WrittenFile.IsCurrent($"schema/{SchemaFiles.FileName(BoardList.SchemaName)}", SchemaWriter.Write(BoardList.Whole));
        using var list = JsonDocument.Parse(Run.Of(["boards", "--form", "json", .. Day]).Out);
        Assert.True(
            Json.Schema.JsonSchema.FromText(SchemaFiles.Read(BoardList.SchemaName), new() { SchemaRegistry = new() })
                .Evaluate(list.RootElement)
                .IsValid
        );
        Assert.Equal(CollectionCopy.Boards, list.RootElement.GetProperty("boards").GetArrayLength());
    }

    [Theory]
    [InlineData("prove +5V again", 20, "prove +5V again")]
    [InlineData("prove +5V again", 15, "prove +5V again")]
    [InlineData("prove +5V again", 14, "prove +5V|  again")]
    [InlineData("prove +5V again", 9, "prove +5V|  again")]
    [InlineData("  prove +5V again", 9, "  prove|  +5V|  again")]
    [InlineData("measured-in-circuit twice", 8, "measured-in-circuit|  twice")]
    [InlineData("  measured-in-circuit twice", 8, "  measured-in-circuit|  twice")]
    [InlineData("", 8, "")]
    public void A_line_is_broken_between_words_and_a_long_word_stays_whole(string text, int width, string lines) =>
        Assert.Equal(lines, string.Join('|', WordWrap.Lines(text, width, "  ")));

    private static CollectionCopy TwoBoards()
    {
        var copy = CollectionCopy.Empty();
        copy.Write("collection.yaml", "collection: Fog signals\nlook_every: 12 months\n");
        copy.Write(
            "boards/LH-1.md",
            "---\nboard: LH-1\ntitle: Lamp supply\npoints:\n  - { point: +5V, nominal: 5 V, tolerance: 5 % }\n"
                + "bench:\n  - date: 2026-03-14\n    proof:\n      - { point: +5V, voltage: 5.02 V }\n---\n"
        );
        copy.Write(
            "boards/LH-2.md",
            "---\nboard: LH-2\ntitle: Lamp supply, spare\npoints:\n  - { point: +5V, nominal: 5 V, tolerance: 5 % }\n"
                + "bench:\n  - date: 2026-04-14\n    found:\n      - { at: J1, what: dust, severity: note }\n---\n"
        );
        return copy;
    }
}
