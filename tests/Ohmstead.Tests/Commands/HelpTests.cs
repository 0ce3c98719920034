using System.CommandLine;
using Ohmstead.Running;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>What the program tells about itself: short enough to be read, whole enough to be copied.</summary>
public sealed class HelpTests
{
    // What fits beside another window.
    private const int Widest = 100;

    [Fact]
    public void The_overview_tells_each_command_in_one_line_that_fits_on_a_screen()
    {
        var told = Run.Of("--help");
        Assert.Equal(0, told.Exit);
        var lines = told.Out.Split('\n');
        Assert.All(lines, line => Assert.InRange(line.Length, 0, Widest));
        foreach (var command in Commands())
        {
            var line = Assert.Single(lines, line => line.StartsWith($"  {command.Name} ", StringComparison.Ordinal));
            Assert.Contains(line[(command.Name.Length + 2)..].Trim(), command.Description!, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void An_example_stands_in_one_line_as_it_is_to_be_typed()
    {
        var seen = 0;
        foreach (var (path, command) in Commands().SelectMany(command => Below(command, command.Name)))
        {
            var told = Run.Of([.. path.Split(' '), "--help"]);
            Assert.Equal((0, string.Empty), (told.Exit, told.Error));
            foreach (
                var example in command.Description!.Split('\n').Where(line => line.StartsWith("  ohmstead ", StringComparison.Ordinal))
            )
            {
                Assert.Single(told.Out.Split('\n'), line => line == example);
                seen++;
            }
        }

        Assert.InRange(seen, 40, 200);
    }

    [Fact]
    public void A_narrow_window_is_not_overrun_but_by_what_is_to_be_typed()
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var terminal = new Terminal(output, TextWriter.Null, showsProgress: false) { Width = 60 };
        using var interruption = new Interruption();
        Assert.Equal(0, CommandLine.Run(["report", "--help"], terminal, interruption));
        Assert.All(output.ToString().Split('\n').TakeWhile(line => line != "Examples:"), line => Assert.InRange(line.Length, 0, 60));
    }

    [Theory]
    [InlineData("there is no command 'chekc', 'check' is the nearest\nohmstead --help tells all there are\n", "chekc", "records")]
    [InlineData("there is no command 'x9q'\nohmstead --help tells all there are\n", "x9q")]
    [InlineData("there is no option '--bogus'\nohmstead --help tells all there are\n", "--bogus")]
    [InlineData(
        "there is no command 'start bord', 'start board' is the nearest\nohmstead start --help tells all there are\n",
        "start",
        "bord",
        "SP-0099"
    )]
    [InlineData(
        "ohmstead start needs one word more: collection or board or design or parts or schemas\n"
            + "ohmstead start --help tells all there are\n",
        "start"
    )]
    [InlineData("check has no option '--bogus'\nohmstead check --help tells how it is used\n", "check", ".", "--bogus")]
    [InlineData(
        "report has no option '--too', '--to' is the nearest\nohmstead report --help tells how it is used\n",
        "report",
        "--too",
        "x"
    )]
    [InlineData(
        "lot has no option '--kindd'\nohmstead lot --help tells how it is used\n",
        "lot",
        "L-099",
        "--kindd",
        "metal film resistor"
    )]
    [InlineData(
        "--note has no value before '--by': anything the next person should know\nohmstead enter --help tells how it is used\n",
        "enter",
        "SP-0007",
        "C12",
        "470uF",
        "--note",
        "--by",
        "RK"
    )]
    [InlineData(
        "'xml' is no --form; it is one of json, text\nohmstead why --help tells how it is used\n",
        "why",
        "SP-0007",
        "--form",
        "xml"
    )]
    public void A_slip_is_told_in_a_line_with_what_was_probably_meant(string expected, params string[] words)
    {
        var told = Run.Of(words);
        Assert.Equal((2, expected, string.Empty), (told.Exit, told.Error, told.Out));
    }

    [Fact]
    public void What_is_missing_is_told_and_no_screen_of_help_drives_it_away()
    {
        var told = Run.Of("enter", "SP-0007");
        Assert.Equal((2, string.Empty), (told.Exit, told.Out));
        Assert.Equal(
            "PLACE is missing: the part that was measured, or the test point that was proved\n"
                + "ohmstead enter --help tells how it is used\n",
            told.Error
        );
    }

    [Fact]
    public void Words_in_another_order_are_told_with_the_order() =>
        Assert.Contains(
            "'C12' is no DID; the order is BOARD DID PLACE: write work SP-0007 replaced C12",
            Run.Of("work", "SP-0007", "C12", "replaced").Error,
            StringComparison.Ordinal
        );

    // What stands behind a lone -- or tied to its option is meant as it is.
    [Theory]
    [InlineData("--note=--by")]
    [InlineData("--note:--by")]
    public void A_value_that_begins_as_an_option_does_can_be_said(string note)
    {
        var told = Run.Of("enter", "SP-0007", "C1", "100nF", note, "--trial", "--in", CollectionCopy.Untouched, "--as-of", "2026-11-25");
        Assert.Contains("note: \"--by\"", told.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_behind_a_lone_pair_of_hyphens_may_begin_with_them()
    {
        var told = Run.Of(
            "found",
            "SP-0007",
            "--trial",
            "--in",
            CollectionCopy.Untouched,
            "--as-of",
            "2026-11-25",
            "--",
            "C1",
            "--odd",
            "note"
        );
        Assert.Equal(string.Empty, told.Error);
        Assert.Contains("what: \"--odd\"", told.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("failures")]
    [InlineData("ahead")]
    [InlineData("check")]
    [InlineData("why", "SP-0007")]
    public void One_option_asks_for_a_document_in_all_commands_and_the_earlier_word_is_taken(params string[] words)
    {
        string[] rest = words[0] == "why" ? ["--in", CollectionCopy.Untouched] : [CollectionCopy.Untouched];
        string[] line = [.. words, .. rest, "--as-of", "2026-11-25"];
        var told = Run.Of([.. line, "--form", "json"]);
        Assert.StartsWith("{", told.Out, StringComparison.Ordinal);
        Assert.Equal(told, Run.Of([.. line, "--json"]));
    }

    [Fact]
    public void Without_a_word_the_overview_is_shown_and_the_run_counts_as_not_understood()
    {
        var told = Run.Of();
        Assert.Equal((2, Run.Of("--help").Out), (told.Exit, told.Out));
        Assert.StartsWith("no command was given\n", told.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_typed_is_made_visible_before_it_is_told_again() =>
        Assert.Contains("there is no command 'a<U+001B>[2J'", Run.Of("a\u001B[2J").Error, StringComparison.Ordinal);

    private static List<Command> Commands()
    {
        using var terminal = new Terminal(TextWriter.Null, TextWriter.Null, showsProgress: false);
        using var interruption = new Interruption();
        return [.. CommandLine.Commands(terminal, interruption).Select(command => command.Make())];
    }

    private static IEnumerable<(string Path, Command Command)> Below(Command command, string path) =>
        command.Subcommands.SelectMany(below => Below(below, $"{path} {below.Name}")).Prepend((path, command));
}
