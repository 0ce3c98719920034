using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>What every command that enters something about the drawer takes.</summary>
internal sealed class StockOptions
{
    private readonly SharedOptions shared = new();

    public Option<string?> Note { get; } = new("--note") { Description = "Anything the next person should know." };

    public Option<bool> Sure { get; } = new("--sure") { Description = "Write what looks like a slip of the unit all the same." };

    public Option<bool> Trial { get; } = new("--trial") { Description = "Show what would be written, and write nothing." };

    /// <summary>A command that takes them.</summary>
    public Command Command(string name, string description, params IEnumerable<Symbol> own) =>
        CommandParts.Of(name, description, [.. own, shared.Folder, shared.AsOf, Note, Sure, Trial]);

    /// <summary>Opens the stock file of the collection and hands it on; exit code 2 when there is no such folder.</summary>
    public int Run(ParseResult parsed, Terminal terminal, Func<StockEntry, RunOptions, int> enter) =>
        shared.Read(parsed, terminal.Error, writes: true) is { } run
        && SharedOptions.Open(parsed.GetValue(shared.Folder)!, terminal.Error) is { } files
            ? enter(new StockEntry(terminal, run, files), run)
            : ExitCode.Usage;
}
