using System.Text;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>A parts list taken from a table into a record.</summary>
public sealed class StartPartsCommandTests
{
    private const string Design = "designs/rain-counter.md";
    private const string List = "Designator;Val;Footprint;Qty\n\"C31, C33-C34\";100n 63V;x;3\nR31;10k 1%;;1\nU31;7805;;1\n";

    [Fact]
    public void Parts_join_the_list_of_the_design_below_those_that_are_there()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Design);
        var run = Start(copy, List, "--design", "rain-counter", "--kind", "C=polyester film", "--kind", "R=metal film resistor");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Equal(
            "columns: ref = Designator, value = Val, count = Qty; not used: Footprint\ndesigns/rain-counter.md: added 5 parts\n",
            run.Out
        );
        const string added = """
              - { ref: C31, kind: polyester film, capacitance: 100 nF, rated_voltage: 63 V }
              - { ref: C33, kind: polyester film, capacitance: 100 nF, rated_voltage: 63 V }
              - { ref: C34, kind: polyester film, capacitance: 100 nF, rated_voltage: 63 V }
              - { ref: R31, kind: metal film resistor, resistance: 10 kΩ, tolerance: ±1 % }
              - { ref: U31, kind: integrated circuit, type: "7805" }

            """;
        Assert.Equal(before.Replace("points:\n", added + "points:\n", StringComparison.Ordinal), copy.Read(Design));
        Assert.Equal(0, Run.Of("check", copy.Root, "--thorough", "--as-of", "2026-11-25").Exit);
    }

    [Fact]
    public void Taking_the_same_list_again_adds_what_was_left_out_and_nothing_twice()
    {
        using var copy = CollectionCopy.Make();
        var first = Start(copy, List, "--design", "rain-counter", "--kind", "C=polyester film");
        Assert.Equal(1, first.Exit);
        Assert.Contains(
            "left out, since 'R' does not say which kind of part it is: R31\n  = --kind \"R=carbon composition resistor\", or one of: ",
            first.Error,
            StringComparison.Ordinal
        );
        Assert.Contains("added 4 parts\n", first.Out, StringComparison.Ordinal);
        var second = Start(copy, List, "--design", "rain-counter", "--kind", "R=metal film resistor");
        Assert.Equal(0, second.Exit);
        Assert.Contains("added 1 parts\n  4 were there already\n", second.Out, StringComparison.Ordinal);
        var third = Start(copy, List, "--design", "rain-counter");
        Assert.Equal("columns: ref = Designator, value = Val, count = Qty; not used: Footprint\n  5 were there already\n", third.Out);
    }

    [Fact]
    public void A_part_that_has_another_value_already_keeps_everything_from_being_written()
    {
        using var copy = CollectionCopy.Make();
        Start(copy, List, "--design", "rain-counter", "--kind", "C=polyester film", "--kind", "R=metal film resistor");
        var before = copy.Read(Design);
        var line = before[..before.IndexOf("{ ref: C31", StringComparison.Ordinal)].Count(letter => letter == '\n') + 1;
        var run = Start(copy, "Ref,Value\nC31,220n\nU32,WX-A1\n", "--design", "rain-counter");
        Assert.Equal(1, run.Exit);
        Assert.Equal(
            $"{copy.At("list.csv")}, line 2: C31 has capacitance 220 nF in the list, and 100 nF in designs/rain-counter.md:{line}\n  = "
                + "mend the one that is wrong\nnothing was written\n",
            run.Error
        );
        Assert.Equal(before, copy.Read(Design));
    }

    [Fact]
    public void A_board_of_a_design_is_asked_about_the_parts_of_its_design_too()
    {
        using var copy = CollectionCopy.Make();
        var run = Start(copy, "Ref,Value\nC1,1u\nU90,WX-A1\n", "--board", "SP-0003");
        Assert.Equal(1, run.Exit);
        Assert.Contains("line 2: C1 has capacitance 1 µF in the list, and ", run.Error, StringComparison.Ordinal);
        Assert.Contains(" in designs/", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_without_any_parts_gets_its_list()
    {
        using var folder = CollectionCopy.Empty();
        folder.Write("boards/X-1.md", "---\r\nboard: X-1   # the old one\r\ntitle: Clock\r\nformat: 1\r\n---\r\n");
        Assert.Equal(0, Start(folder, "Ref\tValue\nU1\tWX-A1\n", "--board", "X-1").Exit);
        Assert.Equal(
            "---\r\nboard: X-1   # the old one\r\ntitle: Clock\r\nparts:\r\n  - { ref: U1, kind: integrated circuit, type: WX-A1 "
                + "}\r\nformat: 1\r\n---\r\n",
            folder.Read("boards/X-1.md")
        );
    }

    [Fact]
    public void A_reference_that_can_be_taken_for_another_is_left_out()
    {
        using var copy = CollectionCopy.Make();
        var run = Start(copy, "Ref,Value\nU31,WX-A1\nU3l,WX-A2\n", "--design", "rain-counter");
        Assert.Equal(1, run.Exit);
        Assert.Contains("line 3: 'U3l' looks like 'U31'", run.Error, StringComparison.Ordinal);
        Assert.Contains("{ ref: U31,", copy.Read(Design), StringComparison.Ordinal);
        Assert.DoesNotContain("U3l", copy.Read(Design), StringComparison.Ordinal);
    }

    [Fact]
    public void A_trial_shows_the_lines_and_writes_nothing()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Design);
        Assert.Contains(
            "  - { ref: U31, kind: integrated circuit, type: \"7805\" }\ndesigns/rain-counter.md: would add 1 parts\n",
            Start(copy, List, "--design", "rain-counter", "--dry").Out,
            StringComparison.Ordinal
        );
        Assert.Equal(before, copy.Read(Design));
    }

    [Theory]
    [InlineData(new byte[] { }, " is empty\n")]
    [InlineData(
        new byte[] { (byte)'R', (byte)'e', (byte)'f', (byte)',', 0xB5, (byte)'F', (byte)'\n' },
        ":1:5: byte B5 at offset 4 is not UTF-8: it can only continue a character, and none was begun; the file looks like Latin-1 or "
            + "Windows-1252, where this byte is 'µ': save it again as UTF-8\n"
    )]
    [InlineData(
        new byte[] { 0xFF, 0xFE, (byte)'R', 0 },
        ":1:1: the file looks like UTF-16; expected UTF-8; save it again as UTF-8 in the editor, or convert it with iconv -f UTF-16 -t "
            + "UTF-8\n"
    )]
    [InlineData(new byte[] { (byte)'P', (byte)'K', 3, 4, 0, 0, 0, 0 }, null)]
    [InlineData(
        new byte[] { (byte)'"', (byte)'R', (byte)'e', (byte)'f', (byte)'\n' },
        ": line 1: the quotes do not pair near '\"Ref<U+000A>'\n  = put the whole field into quotes, and write a quote inside it twice\n"
    )]
    public void A_file_that_is_no_table_is_refused_in_words(byte[] bytes, string? message)
    {
        using var copy = CollectionCopy.Make();
        File.WriteAllBytes(copy.At("list.csv"), bytes);
        var run = Run.Of("start", "parts", copy.At("list.csv"), "--design", "rain-counter", "--in", copy.Root, "--as-of", "2026-11-25");
        Assert.Equal(2, run.Exit);
        Assert.NotEqual(string.Empty, run.Error);
        if (message is not null)
        {
            Assert.Equal(copy.At("list.csv") + message, run.Error);
        }
    }

    [Fact]
    public void A_byte_order_mark_is_no_part_of_the_first_heading()
    {
        using var copy = CollectionCopy.Make();
        File.WriteAllBytes(copy.At("list.csv"), [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes("Ref,Value\r\nU31,WX-A1\r\n")]);
        Assert.Equal(
            0,
            Run.Of("start", "parts", copy.At("list.csv"), "--design", "rain-counter", "--in", copy.Root, "--as-of", "2026-11-25").Exit
        );
    }

    [Theory]
    [InlineData("parts go into a design or into a board\n  = say --design NAME or --board NUMBER\n")]
    [InlineData(
        "parts go into a design or into a board\n  = say --design NAME or --board NUMBER\n",
        "--design",
        "rain-counter",
        "--board",
        "SP-0003"
    )]
    [InlineData("there is no design 'rain-conter', 'rain-counter' is the nearest\n", "--design", "rain-conter")]
    [InlineData(
        "--columns: 'valu' is nothing a column can hold, 'value' is the nearest\n",
        "--design",
        "rain-counter",
        "--columns",
        "valu=Val"
    )]
    [InlineData("--kind: 'tantalun' is no kind of part, 'tantalum' is the nearest\n", "--design", "rain-counter", "--kind", "C=tantalun")]
    public void A_wrong_command_line_is_told(string message, params string[] words)
    {
        using var copy = CollectionCopy.Make();
        var run = Start(copy, List, words);
        Assert.Equal(2, run.Exit);
        Assert.StartsWith(message, run.Error, StringComparison.Ordinal);
    }

    private static Run Start(CollectionCopy copy, string list, params string[] words)
    {
        copy.Write("list.csv", list);
        return Run.Of(["start", "parts", copy.At("list.csv"), .. words, "--in", copy.Root, "--as-of", "2026-11-25"]);
    }
}
