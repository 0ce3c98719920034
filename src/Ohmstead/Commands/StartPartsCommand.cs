using System.CommandLine;
using System.Globalization;
using Ohmstead.Collections;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;
using Ohmstead.Running;
using Ohmstead.Starting;
using Ohmstead.Writing;
using Ohmstead.Yaml;

namespace Ohmstead.Commands;

/// <summary>Starts a parts list out of a table that another program wrote.</summary>
internal sealed class StartPartsCommand(Terminal terminal)
{
    private readonly Argument<string> list = new("FILE")
    {
        Description =
            "The table, with headings: separated by commas, semicolons or tabs, in UTF-8; or a sheet of a workbook, as book.xlsx#Sheet.",
    };
    private readonly Option<string?> design = new("--design")
    {
        CompletionSources = { Completions.Designs },
        Description = "The design that the parts belong to.",
        HelpName = "NAME",
    };
    private readonly Option<string?> board = new("--board")
    {
        CompletionSources = { Completions.Boards },
        Description = "The board that the parts belong to, where it has no design.",
        HelpName = "NUMBER",
    };
    private readonly Option<bool> trial = new("--trial", "--dry") { Description = "Show what would be written, and write nothing." };
    private readonly StartPartsOptions pairs = new();
    private readonly SharedOptions shared = new();

    public Command Build()
    {
        var command = new Command(
            "parts",
            """
            Start a parts list out of a table: grouped references (C1, C2, C5-C8), values with what stands beside them (100n 63V, 10k 1%).
            A line in which anything is not understood is left out and told. Parts that are there already stay as they are; when one
            has another value than the list says, both are told and nothing is written.

            Examples:
              ohmstead start parts records/lists/output.csv --board SP-0019 --kind "C=polyester film" --unit C=uF --trial
              ohmstead start parts records/lists/output.csv --board SP-0019 --kind "C=polyester film" --unit C=uF --columns value=Val
            """
        )
        {
            list,
            design,
            board,
            pairs.Columns,
            pairs.Kinds,
            pairs.Units,
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
        var (toDesign, toBoard) = (parsed.GetValue(design), parsed.GetValue(board));
        if (toDesign is null == toBoard is null)
        {
            return Refuse("parts go into a design or into a board", "say --design NAME or --board NUMBER");
        }

        var file = parsed.GetValue(list)!;
        var taker = new PartsListTaker(terminal, pairs);
        if (taker.Open(parsed, file) is not { } opened)
        {
            return ExitCode.Usage;
        }

        return
            (
                toDesign is null
                    ? ListTarget.Board(files, toBoard!, run, terminal.Error)
                    : ListTarget.Design(files, toDesign, run, terminal.Error)
            )
                is { } target
            ? taker.Take(parsed, file, opened, target, items => Write(target, items, parsed.GetValue(trial), run))
            : ExitCode.Usage;
    }

    private int Write(ListTarget target, IReadOnlyList<string> items, bool isTrial, RunOptions run)
    {
        (string, string)? written = null;
        var exit = RecordFile.Change(target.Files.Root, target.Path, terminal.Error, text =>
        {
            var (changed, end) = Changed(target, items, run, text);
            written = changed is null || isTrial ? null : (text, changed);
            return (isTrial ? null : changed, end);
        });
        if (exit == ExitCode.Clean)
        {
            EntryTold.Tell(terminal, target.Files.Root, target.Path, written, () => Tell(target.Path, items, isTrial));
        }

        return exit;
    }

    private void Tell(string path, IReadOnlyList<string> items, bool isTrial)
    {
        if (isTrial)
        {
            new PartsListTaker(terminal, pairs).Show(items);
        }

        terminal.Out.WriteLine(
            Printable.Escape(
                string.Create(CultureInfo.InvariantCulture, $"{path}: {(isTrial ? "would add" : "added")} {items.Count} parts")
            )
        );
    }

    private (string? Text, int Exit) Changed(ListTarget target, IReadOnlyList<string> items, RunOptions run, string text)
    {
        if (RecordEditor.Open(target.Path, text, FileForm.Markdown, new YamlNodeReader(), out _) is not { } editor)
        {
            return (null, Refuse($"{target.Path} holds what cannot be read; mend it first, 'check' says where", null, ExitCode.Findings));
        }

        var outcome = editor.AppendAll(target.Shape, "parts", items);
        if (outcome.Text is not { } changed)
        {
            return (null, Refuse($"{target.Path}: {outcome.Refusal!.Message}", outcome.Refusal.NextStep, ExitCode.Findings));
        }

        var after = new CollectionRun(
            target.Files,
            run with
            {
                Instead = new Dictionary<string, string>(StringComparer.Ordinal) { [target.Path] = changed },
            }
        ).Run();
        return JudgedFiles.AreSound(terminal, target.Before, after, [target.Path]) ? (changed, ExitCode.Clean) : (null, ExitCode.Findings);
    }

    private int Refuse(string problem, string? next, int exit = ExitCode.Usage)
    {
        PartsListTaker.Refuse(terminal, problem, next);
        return exit;
    }
}
