using System.Text.Json;
using System.Text.RegularExpressions;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>A design made out of the board that listed everything itself.</summary>
public sealed partial class StartDesignCommandTests
{
    private const string Board = "boards/SP-0019.md";
    private const string Design = "designs/pulse-shaper.md";

    [Fact]
    public void Every_verdict_and_every_other_line_of_the_board_stay_what_they_were()
    {
        using var copy = CollectionCopy.Make();
        var (before, verdicts, why) = (copy.Read(Board), Findings(copy), Why(copy, "C2"));
        var run = Start(copy, "pulse-shaper", "--from", "SP-0019");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.StartsWith(
            "designs/pulse-shaper.md: written, 10 parts, 3 points, 0 hazards\nboards/SP-0019.md: names the design 'pulse-shaper'",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Equal(verdicts, Findings(copy));
        Assert.Equal(why.Replace("this board's record", "the design", StringComparison.Ordinal), Why(copy, "C2"));

        // Nothing lost, nothing changed: the lines of the lists went over as they stood.
        var lists = before[before.IndexOf("parts:", StringComparison.Ordinal)..before.IndexOf("bench:", StringComparison.Ordinal)];
        Assert.Equal(
            before
                .Replace(lists, string.Empty, StringComparison.Ordinal)
                .Replace("maker: station workshop", "design: pulse-shaper\nmaker: station workshop", StringComparison.Ordinal),
            copy.Read(Board)
        );
        Assert.Contains(lists, copy.Read(Design), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("SP-0001")]
    [InlineData("SP-0007")]
    [InlineData("SP-0015")]
    public void A_board_that_had_listed_what_its_design_says_is_judged_as_before(string board)
    {
        using var copy = CollectionCopy.Make();
        var (file, record) = ($"boards/{board}.md", copy.Read($"boards/{board}.md"));
        var design = DesignLine().Match(record);
        var lists = string.Concat(Lists().Matches(copy.Read($"designs/{design.Groups["name"].Value}.md")).Select(match => match.Value));
        copy.Write(
            file,
            record
                .Replace(design.Value, string.Empty, StringComparison.Ordinal)
                .Replace("format: 1\n", lists + "format: 1\n", StringComparison.Ordinal)
        );
        var before = Findings(copy);
        Assert.Equal(0, Start(copy, "pulse-shaper", "--from", board).Exit);
        Assert.Equal(before, Findings(copy));
        Assert.Contains("design: pulse-shaper\n", copy.Read(file), StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_board_of_its_kind_takes_the_parts_from_there()
    {
        using var copy = CollectionCopy.Make();
        Start(copy, "pulse-shaper", "--from", "SP-0019", "--name", "Wind pulse shaper");
        Assert.Equal(0, Run.Of("start", "board", "SP-0021", "--design", "pulse-shaper", "--in", copy.Root, "--as-of", "2026-11-25").Exit);
        Assert.Contains("title: Wind pulse shaper\ndesign: pulse-shaper\n", copy.Read("boards/SP-0021.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_date_code_stays_with_its_unit()
    {
        using var copy = CollectionCopy.Make();
        copy.Write(
            Board,
            copy.Read(Board)
                .Replace(
                    "{ ref: D1, kind: diode, type: WX-D4 }",
                    "{ ref: D1, kind: diode, type: WX-D4, date_code: \"7406\" }",
                    StringComparison.Ordinal
                )
        );
        var run = Start(copy, "pulse-shaper", "--from", "SP-0019");
        Assert.Contains("kept on the board as well, for their date codes: D1\n", run.Out, StringComparison.Ordinal);
        Assert.Contains(
            "parts:\n  - { ref: D1, kind: diode, type: WX-D4, date_code: \"7406\" }\nbench:\n",
            copy.Read(Board),
            StringComparison.Ordinal
        );
        Assert.Contains("  - { ref: D1, kind: diode, type: WX-D4 }\n", copy.Read(Design), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pulse-shaper", "SP-0007", 1, "boards/SP-0007.md: the board has the design 'teleprinter-line' already\n")]
    [InlineData("bench-supply", "SP-0019", 2, "there is designs/bench-supply.md, which is 'bench-supply' or can be taken for it\n")]
    [InlineData("Bench-supply", "SP-0019", 2, "there is designs/bench-supply.md, which is 'Bench-supply' or can be taken for it\n")]
    [InlineData("pulse shaper", "SP-0019", 2, "'pulse shaper' cannot be the name of a design: it has a space\n")]
    [InlineData("pulse-shaper", "SP-0O19", 2, "there is no board 'SP-0O19', 'SP-0019' is the nearest\n")]
    public void What_cannot_be_done_is_refused_with_the_reason(string name, string board, int exit, string message)
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = Start(copy, name, "--from", board);
        Assert.Equal(exit, run.Exit);
        Assert.StartsWith(message, run.Error, StringComparison.Ordinal);
        Assert.Equal(before, copy.Read(Board));
        Assert.False(File.Exists(copy.At(Design)));
    }

    [Fact]
    public void A_trial_writes_neither_file()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        Assert.Contains(
            "designs/pulse-shaper.md: would be written, 10 parts",
            Start(copy, "pulse-shaper", "--from", "SP-0019", "--trial").Out,
            StringComparison.Ordinal
        );
        Assert.Equal(before, copy.Read(Board));
        Assert.False(File.Exists(copy.At(Design)));
    }

    private static readonly string[] Kinds = ["--kind", "C=polyester film", "--kind", "R=metal film resistor", "--kind", "Q=transistor"];

    [Fact]
    public void A_list_becomes_a_design_whose_parts_a_board_takes()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("stage.csv", "Designator,Val,Qty\n\"C31, C33\",100n 63V,2\nR31,10k 1%,1\n");
        string[] words = ["output-stage", "--from", copy.At("stage.csv"), "--name", "Output stage: spare", .. Kinds];
        var trial = Start(copy, [.. words, "--trial"]);
        Assert.Equal(
            (
                0,
                "columns: ref = Designator, value = Val, count = Qty\n"
                    + "  - { ref: C31, kind: polyester film, capacitance: 100 nF, rated_voltage: 63 V }\n"
                    + "  - { ref: C33, kind: polyester film, capacitance: 100 nF, rated_voltage: 63 V }\n"
                    + "  - { ref: R31, kind: metal film resistor, resistance: 10 kΩ, tolerance: ±1 % }\n"
                    + "designs/output-stage.md: would be written, 3 parts\n"
            ),
            (trial.Exit, trial.Out)
        );
        Assert.False(File.Exists(copy.At("designs/output-stage.md")));
        var run = Start(copy, words);
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Equal(
            "---\ndesign: output-stage\ntitle: \"Output stage: spare\"\nparts:\n"
                + "  - { ref: C31, kind: polyester film, capacitance: 100 nF, rated_voltage: 63 V }\n"
                + "  - { ref: C33, kind: polyester film, capacitance: 100 nF, rated_voltage: 63 V }\n"
                + "  - { ref: R31, kind: metal film resistor, resistance: 10 kΩ, tolerance: ±1 % }\nformat: 1\n---\n",
            copy.Read("designs/output-stage.md")
        );
        Assert.Equal(0, Run.Of("check", copy.Root, "--thorough", "--as-of", "2026-11-25").Exit);
        Assert.Equal(0, Run.Of("start", "board", "SP-0021", "--design", "output-stage", "--in", copy.Root, "--as-of", "2026-11-25").Exit);
        Assert.StartsWith("there is designs/output-stage.md", Start(copy, words).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_that_are_not_understood_are_told_and_the_rest_of_them_joins_later()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("stage.csv", "Ref;Value\nC31;100n 63V\nC32;0.1\n");
        var run = Start(copy, ["output-stage", "--from", copy.At("stage.csv"), .. Kinds]);
        Assert.Equal(1, run.Exit);
        Assert.Contains("stage.csv, line 3, column 2: ", run.Error, StringComparison.Ordinal);
        Assert.Contains("  left out: 1 lines not understood", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("C32", copy.Read("designs/output-stage.md"), StringComparison.Ordinal);
        var rest = Run.Of([
            "start",
            "parts",
            copy.At("stage.csv"),
            "--design",
            "output-stage",
            .. Kinds,
            "--unit",
            "C=uF",
            "--in",
            copy.Root,
            "--as-of",
            "2026-11-25",
        ]);
        Assert.Equal(0, rest.Exit);
        Assert.Contains("C32, kind: polyester film, capacitance: 100 nF", copy.Read("designs/output-stage.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_of_a_workbook_is_a_list_too_also_for_a_design_that_is_there()
    {
        using var copy = CollectionCopy.Make();
        Workbook.Write(
            copy.At("stage.xlsx"),
            ("Parts", [Workbook.Text("Ref", "Value"), Workbook.Text("C31", "100n 63V")]),
            ("Shopping", [Workbook.Text("What")])
        );
        var two = Start(copy, ["output-stage", "--from", copy.At("stage.xlsx"), .. Kinds]);
        Assert.Contains("has 2 sheets", two.Error, StringComparison.Ordinal);
        Assert.Equal(0, Start(copy, ["output-stage", "--from", copy.At("stage.xlsx") + "#Parts", .. Kinds]).Exit);
        Assert.Contains("- { ref: C31, kind: polyester film", copy.Read("designs/output-stage.md"), StringComparison.Ordinal);
        var into = Run.Of([
            "start",
            "parts",
            copy.At("stage.xlsx") + "#Parts",
            "--design",
            "rain-counter",
            .. Kinds,
            "--in",
            copy.Root,
            "--as-of",
            "2026-11-25",
        ]);
        Assert.Equal((0, string.Empty), (into.Exit, into.Error));
    }

    [Theory]
    [InlineData("Ref,Value\nC31,lots\n", "no part of ", 1)]
    [InlineData("Ref,Value\nC31,1n\nC31,2n\n", "nothing was written", 1)]
    [InlineData("What,How\nx,y\n", "no column holds ", 2)]
    [InlineData("", "is empty", 2)]
    public void A_list_that_gives_no_design_writes_none(string list, string message, int exit)
    {
        using var copy = CollectionCopy.Make();
        copy.Write("stage.csv", list);
        var run = Start(copy, ["output-stage", "--from", copy.At("stage.csv"), .. Kinds]);
        Assert.Equal(exit, run.Exit);
        Assert.Contains(message, run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(copy.At("designs/output-stage.md")));
    }

    [Fact]
    public void What_is_said_of_a_list_is_refused_where_a_board_is_named()
    {
        using var copy = CollectionCopy.Make();
        var run = Start(copy, "pulse-shaper", "--from", "SP-0019", "--unit", "C=uF");
        Assert.Equal((2, "--unit is said of a parts list, and 'SP-0019' names no table\n"), (run.Exit, run.Error));
    }

    private static Run Start(CollectionCopy copy, params string[] words) =>
        Run.Of(["start", "design", .. words, "--in", copy.Root, "--as-of", "2026-11-25"]);

    [GeneratedRegex(
        @"^design: (?<name>\S+)\n",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.Multiline,
        1000
    )]
    private static partial Regex DesignLine();

    [GeneratedRegex(
        @"^(parts|points|hazards):\n([ #].*\n)+",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.Multiline,
        1000
    )]
    private static partial Regex Lists();

    // All that is told of a part, without the places, which move.
    private static string Why(CollectionCopy copy, string part) =>
        PlaceInFile().Replace(Run.Of("why", "SP-0019", part, "--in", copy.Root, "--as-of", "2026-11-25").Out, string.Empty);

    [GeneratedRegex(@"(boards/SP-0019|designs/pulse-shaper)\.md:\d+", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex PlaceInFile();

    // Checks and messages; the lines move with the text.
    private static string[] Findings(CollectionCopy copy)
    {
        using var document = JsonDocument.Parse(Run.Of("check", copy.Root, "--form", "json", "--as-of", "2026-11-25").Out);
        return
        [
            .. document
                .RootElement.GetProperty("findings")
                .EnumerateArray()
                .Select(finding => $"{finding.GetProperty("check")} {finding.GetProperty("message")}"),
        ];
    }
}
