using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters the day before which what was done is taken as it was told: of one board, or of the collection.</summary>
internal sealed class ToldCommand(Terminal terminal)
{
    private const string Key = "told_before";
    private const string CollectionFile = "collection.yaml";

    private readonly Argument<DateOnly?> day = new("DATE")
    {
        Description = "The day: what was done before it stands as it was written down then.",
        Arity = ArgumentArity.ExactlyOne,
        CustomParser = SharedOptions.Day,
    };
    private readonly Argument<string?> number = new("BOARD")
    {
        CompletionSources = { Completions.Boards },
        Description = "The number of the board, such as SP-0007; the whole collection when not given.",
        DefaultValueFactory = _ => null,
    };
    private readonly Option<bool> trial = new("--trial") { Description = "Show what would be written, and write nothing." };
    private readonly Option<bool> sure = new("--sure")
    {
        Description = "Write it though it asks for faults no more that stand today: each was named, and read.",
    };
    private readonly SharedOptions shared = new();

    public Command Build()
    {
        var command = CommandParts.Build(
            "told",
            """
            Take what was done before a day as it was told: for old history that nobody can measure any more.
            A board with no visit since asks for nothing but what can hurt, and proves nothing; old readings stay as history. A day of the
            board's own goes before that of the collection, and a day that is entered again takes the place of the one before. Faults that
            stand today and would be asked for no more are named, and nothing is written without --sure.

            Examples:
              ohmstead told 2020-01-01
              ohmstead told 2024-06-30 SP-0019
            """,
            [day, number, shared.Folder, shared.AsOf, trial, sure]
        );
        command.SetAction(parsed =>
            shared.Read(parsed, terminal.Error, writes: true) is not { } run ? ExitCode.Usage
            : parsed.GetValue(day) is not { } said ? ExitCode.Usage
            : said > run.Today ? Wrong($"{IsoDate.Text(said)} has not come yet: today is {IsoDate.Text(run.Today)}")
            : parsed.GetValue(number) is { } board ? OfBoard(parsed, run, board, IsoDate.Text(said))
            : OfCollection(parsed, run, IsoDate.Text(said))
        );
        return command;
    }

    private int OfBoard(ParseResult parsed, RunOptions run, string board, string text) =>
        BoardFinder.Find(parsed.GetValue(shared.Folder)!, board, run, terminal.Error) is { } found
            ? new BenchEntry(terminal, run).Change(found, isSure: false, parsed.GetValue(trial), editor =>
                (
                    new QuietedFaults(terminal, run, found.Files).Ask(
                        found.Board.Board.Path,
                        editor.Put(FileShapes.Board, Key, text),
                        parsed.GetValue(sure)
                    ),
                    $"{Key}: {text}"
                )
            )
            : ExitCode.Usage;

    private int OfCollection(ParseResult parsed, RunOptions run, string text) =>
        SharedOptions.Open(parsed.GetValue(shared.Folder)!, terminal.Error) is not { } files ? ExitCode.Usage
        : files.Named(CollectionFile) is null ? Wrong($"there is no {CollectionFile} here; write told {text} BOARD for one board")
        : new SharedFileEntry(terminal, run, files, CollectionFile, string.Empty).Change(isSure: false, parsed.GetValue(trial), editor =>
            (
                new QuietedFaults(terminal, run, files).Ask(
                    CollectionFile,
                    editor.Put(FileShapes.Collection, Key, text),
                    parsed.GetValue(sure)
                ),
                $"{Key}: {text}"
            )
        );

    private int Wrong(string why)
    {
        terminal.Error.WriteLine(Printable.Escape(why));
        return ExitCode.Usage;
    }
}
