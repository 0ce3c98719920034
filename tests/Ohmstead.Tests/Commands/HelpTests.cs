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
    [InlineData("ohmstead start needs one word more\nohmstead start --help tells all there are\n", "start")]
    [InlineData("there is no option '--bogus'; --help tells those there are\n", "check", ".", "--bogus")]
    [InlineData("there is no option '--bogus'; --help tells those there are\n", "report", "--bogus")]
    [InlineData(
        "Argument 'xml' not recognized. Must be one of: 'text' 'json'\nohmstead why --help tells how it is used\n",
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
        Assert.Contains("'PLACE'", told.Error, StringComparison.Ordinal);
        Assert.Contains("'VALUE'", told.Error, StringComparison.Ordinal);
        Assert.EndsWith("ohmstead enter --help tells how it is used\n", told.Error, StringComparison.Ordinal);
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
