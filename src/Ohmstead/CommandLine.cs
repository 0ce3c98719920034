using System.CommandLine;
using Ohmstead.Commands;
using Ohmstead.Output;

namespace Ohmstead;

/// <summary>The whole program but for its process: words in, text and an exit code out.</summary>
internal static class CommandLine
{
    private const string About =
        """
        Ohmstead keeps restoration records of old electronic boards as plain text and works out what they mean.

        Examples:
          ohmstead check records                     check a whole collection
          ohmstead check records/boards/SP-0007.md   check one board
          ohmstead report records --to pages         check, and write the pages
          ohmstead preview records --serve 8080      write the pages again at each save
          ohmstead sheet SP-0007 --in records        a sheet to print and take to the bench
          ohmstead why SP-0007 C12 --in records      tell a verdict in full
          ohmstead families records                  tell which families of parts fail
          ohmstead enter SP-0007 C12 391uF 1.4ohm    enter a reading, and judge it
          ohmstead bench SP-0007 --class C           walk over its capacitors, reading after reading
          ohmstead tidy records                      bring records into the one layout
          ohmstead why L-022 --in records           tell all about a lot in the drawer
          ohmstead ahead records                     tell what falls due in the year ahead
          ohmstead fit SP-0013 C1 --in records       what would fit a place, out of the drawer
          ohmstead marking brown black red gold      what a print can mean
          ohmstead start board SP-0021 --design bench-supply   start a record (or a collection, a design, a parts list)
          ohmstead reckon                            work out a rule at the bench
          ohmstead explain polarity-not-established  explain a check
        """;

    /// <summary>Runs one command. Whatever happens is told on the terminal and by the exit code, never by an exception.</summary>
    public static int Run(IReadOnlyList<string> words, Terminal terminal, Interruption interruption) => DocumentRun.IsAsked(words)
        ? new DocumentRun(words[0], terminal).Run(own => Invoke(words, own, interruption))
        : Guarded.Run(terminal.Error, () =>
        {
            var exit = Invoke(words, terminal, interruption);
            // Here, where it can still be told: a disk may be full only when the last piece is written.
            terminal.Out.Flush();
            return exit;
        }).Exit;

    /// <summary>Every command by its name, each made only when it is asked for: what others need to be told on the command line costs a start nothing.</summary>
    internal static IReadOnlyList<(string Name, Func<Command> Make)> Commands(Terminal terminal, Interruption interruption) =>
    [
        ("check", () => new CheckCommand(terminal).Build()),
        ("report", () => new ReportCommand(terminal, interruption).Build()),
        ("preview", () => new PreviewCommand(terminal, interruption).Build()),
        ("sheet", () => new SheetCommand(terminal).Build()),
        ("why", () => new WhyCommand(terminal).Build()),
        ("families", () => new FamiliesCommand(terminal).Build()),
        ("enter", () => new EnterCommand(terminal).Build()),
        ("bench", () => new BenchCommand(terminal, other => Invoke(other, terminal, interruption)).Build()),
        ("found", () => new FoundCommand(terminal).Build()),
        ("decide", () => new DecideCommand(terminal).Build()),
        ("work", () => new WorkCommand(terminal).Build()),
        ("wait", () => new WaitCommand(terminal).Build()),
        ("start", () => new StartCommand(terminal).Build()),
        ("add", () => new AddCommand(terminal).Build()),
        ("tidy", () => new TidyCommand(terminal, interruption).Build()),
        ("drawer", () => new ListCommand(terminal, "drawer", "List the lots in the drawer: how many are left, how long they may lie, what is to be done first.", StockListings.Drawer).Build()),
        ("lot", () => new LotCommand(terminal).Build()),
        ("incoming", () => new IncomingCommand(terminal).Build()),
        ("orders", () => new ListCommand(terminal, "orders", "List the orders: where each stands, for how long, and what it holds up.", StockListings.Orders).Build()),
        ("order", () => new OrderCommand(terminal).Build()),
        ("buy", () => new ListCommand(terminal, "buy", "List what to buy for the whole collection: equal needs in one line, less the drawer, less what is on order.", StockListings.ToBuy).Build()),
        ("ahead", () => new AheadCommand(terminal).Build()),
        ("fit", () => new FitCommand(terminal).Build()),
        ("marking", () => new MarkingCommand(terminal).Build()),
        ("reckon", () => new ReckonCommand(terminal).Build()),
        ("method", () => new MethodCommand(terminal).Build()),
        ("explain", () => new ExplainCommand(terminal).Build()),
        ("completion", () => new CompletionCommand(terminal).Build()),
    ];

    private static int Invoke(IReadOnlyList<string> words, Terminal terminal, Interruption interruption)
    {
        var root = new RootCommand(About);
        var commands = Commands(terminal, interruption);
        var isKnown = words.Count > 0 && commands.Any(command => command.Name == words[0]);
        foreach (var (name, make) in commands)
        {
            if (!isKnown || name == words[0])
            {
                root.Add(make());
            }
        }

        // A word that begins with @ is a word: what was seen at the bench may begin so.
        var parsed = root.Parse(words, new ParserConfiguration { ResponseFileTokenReplacer = null });
        // What is wrong with a command line is told with the words that were given, which may have come from anywhere.
        using var error = new PrintableWriter(terminal.Error) { NewLine = "\n" };
        var exit = parsed.Invoke(new InvocationConfiguration { Output = terminal.Out, Error = error, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null });
        return parsed.Errors.Count > 0 ? ExitCode.Usage : exit;
    }
}
