using System.CommandLine;
using System.CommandLine.Parsing;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>What every command that enters something at the bench takes.</summary>
internal sealed class EntryOptions
{
    private static readonly string[] CameWords = ["first", "last"];
    private readonly SharedOptions shared = new();

    public Argument<string> Board { get; } =
        new("BOARD") { CompletionSources = { Completions.Boards }, Description = "The number of the board, such as SP-0007." };

    public Option<string?> By { get; } = new("--by") { Description = "Initials of who works. Otherwise OHMSTEAD_BY." };

    public Option<string?> Instrument { get; } =
        new("--instrument")
        {
            CompletionSources = { Completions.Instruments },
            Description = "The instrument used. Otherwise the one of the day's visit, or of the day's last entry at another board.",
        };

    public Option<string?> Note { get; } = new("--note") { Description = "Anything the next person should know." };

    public Option<DateOnly?> On { get; } =
        new("--on")
        {
            Description = "The day it is of, where it was not today: it goes to that day's visit, or to a new one in order.",
            HelpName = "DATE",
            CustomParser = SharedOptions.Day,
        };

    public Option<string?> Came { get; } = Choice("--came", "Where in that day it came, where that matters: first or last.", CameWords);

    public Option<bool> Sure { get; } =
        new("--sure") { Description = "Write what looks like a slip of the unit, or stands there already, all the same." };

    public Option<bool> Trial { get; } = new("--trial") { Description = "Show what would be written, and write nothing." };

    /// <summary>A word from a closed list; the command line itself refuses any other and names them all.</summary>
    public static Argument<string> OneOf(string name, string description, IReadOnlyList<string> words)
    {
        var argument = new Argument<string>(name) { HelpName = name, Description = $"{description}: {string.Join(", ", words)}." };
        argument.AcceptOnlyFromAmong([.. words]);
        return argument;
    }

    private static Option<string?> Choice(string name, string description, string[] words)
    {
        var option = new Option<string?>(name) { HelpName = string.Join('|', words), Description = description };
        option.AcceptOnlyFromAmong(words);
        return option;
    }

    /// <summary>A command that takes them.</summary>
    public Command Command(string name, string description, params IEnumerable<Symbol> own) =>
        CommandParts.Build(name, description, [Board, .. own, shared.Folder, shared.AsOf, By, Instrument, Note, Sure, Trial]);

    /// <summary>A command that takes them, and the day, for what may be entered later.</summary>
    public Command DatedCommand(string name, string description, params IEnumerable<Symbol> own) =>
        Command(name, description, [.. own, On, Came]);

    /// <summary>A command that takes those of them which have to do with who works on what, and when.</summary>
    public Command BareCommand(string name, string description, params IEnumerable<Symbol> own) =>
        CommandParts.Build(name, description, [Board, .. own, shared.Folder, shared.AsOf, By, Trial]);

    /// <summary>Finds the board and hands it on; exit code 2 when there is none.</summary>
    public int Run(ParseResult parsed, Terminal terminal, Func<FoundBoard, RunOptions, int> enter) =>
        shared.Read(parsed, terminal.Error, writes: true) is { } run
        && BoardFinder.Find(parsed.GetValue(shared.Folder)!, parsed.GetValue(Board)!, run, terminal.Error, Said(parsed)) is { } board
            ? enter(board, run)
            : ExitCode.Usage;

    private static string[] Said(ParseResult parsed) =>
        [.. parsed.CommandResult.Children.OfType<ArgumentResult>().SelectMany(result => result.Tokens).Select(token => token.Value)];

    /// <summary>Finds the board for an entry of today or of an earlier day, and hands it on; exit code 2 when there is none, or when it
    /// was not there on that day.</summary>
    public int RunDated(ParseResult parsed, Terminal terminal, Func<FoundBoard, RunOptions, int> enter) =>
        Run(parsed, terminal, (board, run) =>
            LateDay.WhyNot(board.Board.Board, DayOf(parsed, run), run.Today, parsed.GetValue(Came) is not null) is { } why
                ? Wrong(terminal, why)
                : enter(board, run)
        );

    /// <summary>The day that an entry is of.</summary>
    public DateOnly DayOf(ParseResult parsed, RunOptions run) => parsed.GetValue(On) ?? run.Today;

    private static int Wrong(Terminal terminal, string why)
    {
        terminal.Error.WriteLine(Printable.Escape(why));
        return ExitCode.Usage;
    }

    /// <summary>The collection's folder.</summary>
    public string FolderOf(ParseResult parsed) => parsed.GetValue(shared.Folder)!;

    /// <summary>The visit that an entry belongs to. The instrument of the day's last entry at another board is taken where this one has no
    /// visit of the day.</summary>
    public VisitHead Visit(ParseResult parsed, FoundBoard board, RunOptions run, bool isMeasured)
    {
        var (by, day) = (Initials.Clean(parsed.GetValue(By)), DayOf(parsed, run));
        var instrument = parsed.GetValue(Instrument)
            ?? (!isMeasured || day != run.Today || board.Board.LastSeen == day ? null : DayMemory.Instrument(board.Beside, day, by));
        return new(IsoDate.Text(day), by, instrument)
        {
            IsLate = day != run.Today,
            Came =
                parsed.GetValue(Came) is not { } came ? null
                : came == CameWords[0] ? CameWhen.First
                : CameWhen.Last,
        };
    }

    /// <summary>Adds an entry for each place that was said, all or none.</summary>
    public int AddAt(
        ParseResult parsed,
        Terminal terminal,
        FoundBoard board,
        RunOptions run,
        string key,
        string said,
        Func<string, string> item
    )
    {
        var (places, fault) = SaidPlaces.Parse(board.Board, said);
        if (fault is not null)
        {
            terminal.Error.WriteLine(Printable.Escape(fault));
            return ExitCode.Usage;
        }

        return places is [var only]
            ? Add(parsed, terminal, board, run, key, _ => item(only))
            : new BenchEntry(terminal, run).AddAll(
                board,
                Visit(parsed, board, run, isMeasured: false),
                key,
                [.. places.Select(item)],
                parsed.GetValue(Sure),
                parsed.GetValue(Trial)
            );
    }

    /// <summary>Adds an entry to the record.</summary>
    public int Add(
        ParseResult parsed,
        Terminal terminal,
        FoundBoard board,
        RunOptions run,
        string key,
        Func<IReadOnlyDictionary<string, string>, string> item
    ) =>
        new BenchEntry(terminal, run).Add(
            board,
            Visit(parsed, board, run, key is "readings" or "proof"),
            key,
            item,
            parsed.GetValue(Sure),
            parsed.GetValue(Trial)
        );
}
