using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Running;
using Ohmstead.Starting;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Starts the record of a board, from its design or bare.</summary>
internal sealed class StartBoardCommand(Terminal terminal)
{
    private readonly Argument<string> number = new("NUMBER") { Description = "The number of the new board, such as SP-0021." };
    private readonly Option<string?> design = new("--design")
    {
        CompletionSources = { Completions.Designs },
        Description = "Its design, from designs/: parts, points and hazards come from there and are not repeated.",
        HelpName = "NAME",
    };
    private readonly Option<string?> name = new("--name")
    {
        Description = "What it is; the design's title when not given.",
        HelpName = "TEXT",
    };
    private readonly Option<DateOnly?> on = new("--on")
    {
        Description = "The day it came; today when not given.",
        HelpName = "DATE",
        CustomParser = SharedOptions.Day,
    };
    private readonly Option<string?> from = new("--from") { Description = "Where it came from.", HelpName = "TEXT" };
    private readonly Option<string?> complaint = new("--complaint") { Description = "What was said to be wrong.", HelpName = "TEXT" };
    private readonly Option<string?> serial = new("--serial") { Description = "Its serial number, as printed.", HelpName = "TEXT" };
    private readonly Option<string?> revision = new("--revision") { Description = "Its revision.", HelpName = "TEXT" };
    private readonly Option<string?> maker = new("--maker")
    {
        Description = "Who made it, where the design does not say it.",
        HelpName = "TEXT",
    };
    private readonly Option<string?> made = new("--made")
    {
        Description = "When it was made: a year, a month or a day.",
        HelpName = "DATE",
    };
    private readonly Option<bool> trial = new("--trial", "--dry") { Description = "Show what would be written, and write nothing." };
    private readonly SharedOptions shared = new();

    public Command Build()
    {
        var command = new Command(
            "board",
            """
            Start the record of a board.

            Examples:
              ohmstead start board SP-0021 --design bench-supply --serial 0731 --made 1976
              ohmstead start board SP-0022 --name "Rain gauge clock" --from "lookout hut" --complaint "stops at night"
            """
        )
        {
            number,
            design,
            name,
            on,
            from,
            complaint,
            serial,
            revision,
            maker,
            made,
            trial,
            shared.Folder,
            shared.AsOf,
        };
        command.SetAction(parsed =>
            shared.Read(parsed, terminal.Error, writes: true) is { } run
            && SharedOptions.Open(parsed.GetValue(shared.Folder)!, terminal.Error) is { } files
                ? Start(parsed, files, run)
                : ExitCode.Usage
        );
        return command;
    }

    private int Start(ParseResult parsed, CollectionFolder files, RunOptions run)
    {
        var wanted = parsed.GetValue(number)!;
        if (files.WhyNotWhole is { } closed)
        {
            terminal.Error.WriteLine(Printable.Escape(closed));
            return ExitCode.Incomplete;
        }

        var boards = KnownBoards.In(files);
        var (known, fault) = Design(parsed.GetValue(design), files, run);
        fault ??= NameRules.Fault(wanted) is { } problem
            ? $"'{wanted}' cannot be the number of a board: {problem}"
            : KnownBoards.TakenAndFree(wanted, boards, []);
        if ((fault, parsed.GetValue(name) ?? known?.Title.Value) is not (null, { } title))
        {
            terminal.Error.WriteLine(
                Printable.Escape(
                    fault
                        ?? "nothing says what it is; write --name \"Barograph servo amplifier\", or --design with a design of the "
                            + "collection"
                )
            );
            return ExitCode.Usage;
        }

        var path = BoardFileName.For(wanted, title, boards);
        var text = BoardText.Write(
            path,
            File.Exists(files.Full("schema/board.schema.json")),
            [
                ("board", wanted),
                ("title", title),
                ("design", known?.Id.Value),
                ("serial", parsed.GetValue(serial)),
                ("revision", parsed.GetValue(revision)),
                ("maker", parsed.GetValue(maker)),
                ("made", parsed.GetValue(made)),
            ],
            [
                ("date", IsoDate.Text(parsed.GetValue(on) ?? run.Today)),
                ("from", parsed.GetValue(from)),
                ("complaint", parsed.GetValue(complaint)),
            ]
        );
        var after = new CollectionRun(
            files.Only([path]),
            run with
            {
                Instead = new Dictionary<string, string>(StringComparer.Ordinal) { [path] = text },
            }
        ).Run();
        if (!JudgedFiles.AreSound(terminal, null, after, [path]))
        {
            return ExitCode.Findings;
        }

        if (parsed.GetValue(trial))
        {
            terminal.Out.WriteLine(Printable.Escape($"{path}: would be written"));
            terminal.Out.WriteLine(string.Join('\n', text.TrimEnd('\n').Split('\n').Select(line => Printable.Escape("  " + line))));
            return ExitCode.Clean;
        }

        RecordFile.Create(files.Root, path, text);
        terminal.Out.WriteLine(Printable.Escape($"{path}: written"));
        terminal.Out.WriteLine(
            Printable.Escape(
                known is null
                    ? $"  its parts: ohmstead start parts LIST.csv --board {wanted}"
                    : $"  {known.Parts.Length} parts, {known.Points.Length} points and {known.Hazards.Length} hazards come from "
                        + $"{known.Path}"
            )
        );
        return ExitCode.Clean;
    }

    private static (DesignFile? Known, string? Fault) Design(string? wanted, CollectionFolder files, RunOptions run)
    {
        if (wanted is null)
        {
            return (null, null);
        }

        var designs = new CollectionRun(files.Only([]), run).Run().Workshop.Designs;
        if (designs.TryGetValue(wanted, out var known))
        {
            return (known, null);
        }

        var near = Nearest.To(wanted, designs.Keys);
        return (
            null,
            Nearest.Told(
                $"there is no design '{wanted}'",
                near,
                designs.Count == 0 ? "; designs/ has none" : $"; there are {string.Join(", ", designs.Keys.Order(StringComparer.Ordinal))}"
            )
        );
    }
}
