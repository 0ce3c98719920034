using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using Ohmstead.Commands;
using Ohmstead.Output;
using Ohmstead.Records.Findings;
using Ohmstead.Running;

namespace Ohmstead;

/// <summary>The whole program but for its process: words in, text and an exit code out.</summary>
internal static class CommandLine
{
    private const string About = """
        Ohmstead keeps restoration records of old electronic boards as text and works out what they mean.

        Examples:
          ohmstead check records                             check a whole collection
          ohmstead check records/boards/SP-0007.md           check one board
          ohmstead report records --to pages                 check, and write the pages
          ohmstead why SP-0004 C12 --in records              tell a verdict in full
          ohmstead enter SP-0004 C12 391uF 1.4ohm            enter a reading, and judge it
          ohmstead bench SP-0007 --class C                   walk over its capacitors, reading after reading
          ohmstead fit SP-0013 C1 --in records               what would fit a place, out of the drawer
          ohmstead marking brown black red gold              what a print can mean
          ohmstead start board SP-0021 --design bench-supply  start a record
        """;

    private const string AllThereAre = "ohmstead --help tells all there are";

    /// <summary>Runs one command. Whatever happens is told on the terminal and by the exit code, never by an exception.</summary>
    public static int Run(IReadOnlyList<string> words, Terminal terminal, Interruption interruption) =>
        RunOfToday(TextOrJson.OfToday(OldNames.OfToday(words)), terminal, interruption);

    private static int RunOfToday(IReadOnlyList<string> words, Terminal terminal, Interruption interruption) =>
        DocumentRun.IsAsked(words)
            ? new DocumentRun(words[0], terminal).Run(own => Invoke(words, own, interruption))
            : Guarded
                .Run(terminal.Error, () =>
                {
                    var exit = Invoke(words, terminal, interruption);
                    // Here, where it can still be told: a disk may be full only when the last piece is written.
                    terminal.Out.Flush();
                    return exit;
                })
                .Exit;

    /// <summary>Every command by its name, each made only when it is asked for: what others need to be told on the command line costs a
    /// start nothing.</summary>
    internal static IReadOnlyList<(string Name, Func<Command> Make)> Commands(Terminal terminal, Interruption interruption) =>
        [.. Groups(terminal, interruption).SelectMany(group => group.Commands)];

    /// <summary>Every command, in the groups of the overview.</summary>
    internal static CommandGroup[] Groups(Terminal terminal, Interruption interruption) =>
        [
            new(
                "The collection",
                [
                    ("check", () => new CheckCommand(terminal).Build()),
                    ("report", () => new ReportCommand(terminal, interruption).Build()),
                    ("preview", () => new PreviewCommand(terminal, interruption).Build()),
                    ("boards", () => new BoardsCommand(terminal).Build()),
                    ("changes", () => new ChangesCommand(terminal).Build()),
                    ("history", () => new HistoryCommand(terminal).Build()),
                    ("why", () => new WhyCommand(terminal).Build()),
                    ("explain", () => new ExplainCommand(terminal).Build()),
                    ("failures", () => new FailuresCommand(terminal).Build()),
                    ("ahead", () => new AheadCommand(terminal).Build()),
                ]
            ),
            new(
                "At the bench",
                [
                    ("sheet", () => new SheetCommand(terminal).Build()),
                    ("labels", () => new LabelsCommand(terminal).Build()),
                    ("bench", () => new BenchCommand(terminal, (other, told) => Invoke(other, told, interruption)).Build()),
                    ("enter", () => new EnterCommand(terminal).Build()),
                    ("found", () => new FoundCommand(terminal).Build()),
                    ("decide", () => new DecideCommand(terminal).Build()),
                    ("work", () => new WorkCommand(terminal).Build()),
                    ("photo", () => new PhotoCommand(terminal).Build()),
                    ("remove", () => new RemoveCommand(terminal).Build()),
                    ("correct", () => new CorrectCommand(terminal).Build()),
                    ("wait", () => new WaitCommand(terminal).Build()),
                    ("whereabouts", () => new WhereaboutsCommand(terminal).Build()),
                ]
            ),
            new(
                "Instruments",
                [
                    ("instrument", () => new InstrumentCommand(terminal).Build()),
                    ("calibration", () => new CalibrationCommand(terminal).Build()),
                ]
            ),
            new(
                "Parts in the drawer and on order",
                [
                    ("fit", () => new FitCommand(terminal).Build()),
                    ("drawer", () => StockLists.Drawer(terminal)),
                    ("lot", () => new LotCommand(terminal).Build()),
                    ("incoming", () => new IncomingCommand(terminal).Build()),
                    ("scrap", () => new ScrapCommand(terminal).Build()),
                    ("orders", () => StockLists.Orders(terminal)),
                    ("order", () => new OrderCommand(terminal).Build()),
                    ("buy", () => StockLists.Buy(terminal)),
                ]
            ),
            new(
                "Records",
                [
                    ("start", () => new StartCommand(terminal).Build()),
                    ("add", () => new AddCommand(terminal).Build()),
                    ("renumber", () => new RenumberCommand(terminal).Build()),
                    ("told", () => new ToldCommand(terminal).Build()),
                    ("take-in", () => new TakeInCommand(terminal).Build()),
                    ("tidy", () => new TidyCommand(terminal, interruption).Build()),
                    ("settle", () => new SettleCommand(terminal).Build()),
                ]
            ),
            new(
                "Markings, rules, methods",
                [
                    ("marking", () => new MarkingCommand(terminal).Build()),
                    ("calculate", () => new CalculateCommand(terminal).Build()),
                    ("method", () => new MethodCommand(terminal).Build()),
                ]
            ),
            new("The shell", [("completion", () => new CompletionCommand(terminal).Build())]),
        ];

    private static int Invoke(IReadOnlyList<string> words, Terminal terminal, Interruption interruption)
    {
        var root = new RootCommand();
        var groups = Groups(terminal, interruption);
        (string Name, Func<Command> Make)[] commands = [.. groups.SelectMany(group => group.Commands)];
        var isKnown = words.Count > 0 && commands.Any(command => command.Name == words[0]);
        foreach (var (name, make) in commands)
        {
            if (!isKnown || name == words[0])
            {
                root.Add(make());
            }
        }

        if (words is [var asked, var typed, ..] && Suggestions.CursorIn(asked) is { } cursor)
        {
            foreach (var word in new Suggestions(root).For(HalfTyped.Parse(typed, cursor)))
            {
                terminal.Out.WriteLine(word);
            }

            return ExitCode.Clean;
        }

        var help = new Help(About, groups, terminal.Width);
        foreach (var option in root.Options.OfType<HelpOption>())
        {
            option.Action = help;
        }

        foreach (var option in root.Options.OfType<VersionOption>())
        {
            option.Action = new VersionLines();
        }

        // A word that begins with @ is a word: what was seen at the bench may begin so.
        var parsed = root.Parse(words, new ParserConfiguration { ResponseFileTokenReplacer = null });
        // What is wrong with a command line is told with the words that were given, which may have come from anywhere.
        using var error = new PrintableWriter(terminal.Error) { NewLine = "\n" };
        var faults = new UsageFaults(parsed, words);
        if (parsed.Action is ParseErrorAction || faults.Strays.Count > 0)
        {
            if (words.Count == 0)
            {
                help.Overview(root, terminal.Out);
            }

            string[] names = [.. commands.Select(command => command.Name)];
            foreach (
                var line in isKnown || words is [] or [['-', ..], ..]
                    ? Faults(parsed, faults)
                    : [CommandWords.Told(words, names), AllThereAre]
            )
            {
                error.WriteLine(line);
            }

            return ExitCode.Usage;
        }

        var exit = parsed.Invoke(
            new InvocationConfiguration
            {
                Output = terminal.Out,
                Error = error,
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = null,
            }
        );
        return parsed.Errors.Count > 0 ? ExitCode.Usage : exit;
    }

    // All that is wrong with a command line, and the way on. A screen of help would drive the message out of sight.
    private static IEnumerable<string> Faults(ParseResult parsed, UsageFaults faults)
    {
        var path = string.Empty;
        for (var result = parsed.CommandResult; result.Command is not RootCommand; result = (CommandResult)result.Parent!)
        {
            path = $"{result.Command.Name} {path}";
        }

        if (parsed.CommandResult.Command.Subcommands.Count == 0)
        {
            foreach (var line in faults.All())
            {
                yield return line;
            }

            yield return $"ohmstead {path}--help tells how it is used";
            yield break;
        }

        yield return parsed.UnmatchedTokens is not [var word, ..]
            ? path.Length == 0
                ? "no command was given"
                : $"ohmstead {path}needs one word more: {Below(parsed.CommandResult.Command)}"
            : word.StartsWith('-')
                ? $"there is no option '{word}'"
                : Nearest.Told(
                    $"there is no command '{path}{word}'",
                    Nearest.To(word, parsed.CommandResult.Command.Subcommands.Select(command => command.Name)) is { } near
                        ? path + near
                        : null,
                    $"; after {path.TrimEnd()} comes one of "
                        + $"{string.Join(", ", parsed.CommandResult.Command.Subcommands.Select(below => below.Name))}"
                );
        yield return path.Length == 0 ? AllThereAre : $"ohmstead {path}--help tells all there are";
    }

    private static string Below(Command command) => string.Join(" or ", command.Subcommands.Select(below => below.Name));
}
