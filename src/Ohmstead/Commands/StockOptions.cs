using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>What every command that enters something about the drawer or an instrument takes.</summary>
internal sealed class StockOptions
{
    private readonly SharedOptions shared = new();

    public Option<string?> Note { get; } = new("--note") { Description = "Anything the next person should know." };

    public Option<bool> Sure { get; } = new("--sure") { Description = "Write what looks like a slip of the unit all the same." };

    public Option<bool> Trial { get; } = new("--trial") { Description = "Show what would be written, and write nothing." };

    public Option<DateOnly?> On { get; } =
        new("--on")
        {
            Description = "The day it is of, where it was not today: it goes to that day's visit, or to a new one in order.",
            HelpName = "DATE",
            CustomParser = SharedOptions.Day,
        };

    /// <summary>A command that takes them, and the day, for what may be entered later.</summary>
    public Command DatedCommand(string name, string description, params IEnumerable<Symbol> own) =>
        Command(name, description, [.. own, On]);

    /// <summary>Who did it on which day; null with a message where it cannot have been on that day.</summary>
    public VisitHead? Visit(ParseResult parsed, Terminal terminal, Lot lot, string? by, string? instrument, DateOnly today)
    {
        var day = parsed.GetValue(On) ?? today;
        var why =
            day > today ? LateDay.NotYet(day, today)
            : lot.Received is { } came && day < came.Value.Earliest
                ? $"on {IsoDate.Text(day)} lot {lot.Id.Value} was not here: it came on {came.Text}"
            : null;
        if (why is not null)
        {
            terminal.Error.WriteLine(Printable.Escape(why));
            return null;
        }

        return new(IsoDate.Text(day), Initials.Clean(by), instrument) { IsLate = day != today };
    }

    /// <summary>A command that takes the day, and no slip of a unit to be sure of.</summary>
    public Command PlainCommand(string name, string description, params IEnumerable<Symbol> own) =>
        CommandParts.Build(name, description, [.. own, On, shared.Folder, shared.AsOf, Trial]);

    /// <summary>A command that takes them.</summary>
    public Command Command(string name, string description, params IEnumerable<Symbol> own) =>
        CommandParts.Build(name, description, [.. own, shared.Folder, shared.AsOf, Note, Sure, Trial]);

    /// <summary>Opens the stock file of the collection and hands it on; exit code 2 when there is no such folder.</summary>
    public int Run(ParseResult parsed, Terminal terminal, Func<StockEntry, RunOptions, int> enter) =>
        Run(parsed, terminal, (files, run) => enter(new StockEntry(terminal, run, files), run));

    /// <summary>Opens the collection and hands it on; exit code 2 when there is no such folder.</summary>
    public int Run(ParseResult parsed, Terminal terminal, Func<CollectionFolder, RunOptions, int> enter) =>
        shared.Read(parsed, terminal.Error, writes: true) is { } run
        && SharedOptions.Open(parsed.GetValue(shared.Folder)!, terminal.Error) is { } files
            ? enter(files, run)
            : ExitCode.Usage;
}
