using System.CommandLine;
using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Collections;
using Ohmstead.MovingIn;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;
using Ohmstead.Running;
using Ohmstead.Starting;
using Ohmstead.Writing;
using Ohmstead.Yaml;

namespace Ohmstead.Commands;

/// <summary>Starts a design out of what one board lists, so that the next board of its kind need not list it again; or straight from a
/// parts list.</summary>
internal sealed class StartDesignCommand(Terminal terminal)
{
    private readonly Argument<string> name = new("NAME") { Description = "The name of the new design, such as pulse-shaper." };
    private readonly Option<string> from = new("--from")
    {
        CompletionSources = { Completions.Boards },
        Description =
            "The board whose parts, points and hazards become the design's; or a parts list: a table with headings, as CSV or as "
            + "book.xlsx#Sheet.",
        HelpName = "BOARD|FILE",
        Required = true,
    };
    private readonly Option<string?> title = new("--name")
    {
        Description = "What it is; the board's title, or of a list the name, when not given.",
        HelpName = "TEXT",
    };
    private readonly Option<bool> trial = new("--trial", "--dry") { Description = "Say what would be written, and write nothing." };
    private readonly StartPartsOptions pairs = new();
    private readonly SharedOptions shared = new();

    public Command Build()
    {
        var command = new Command(
            "design",
            """
            Start a design out of a board: the lines of its parts, points and hazards move as they stand, and the board names the design.
            Readings, work, serial and date codes stay with the board, and every verdict stays what it was. Or straight from a parts list,
            read as 'start parts' reads it: a line in which anything is not understood is left out and told.

            Examples:
              ohmstead start design pulse-shaper --from SP-0019 --name "Wind pulse shaper" --trial
              ohmstead start design pulse-shaper --from SP-0019
              ohmstead start design output-stage --from records/lists/output.csv --kind "C=polyester film" --unit C=uF --trial
            """
        )
        {
            name,
            from,
            title,
            pairs.Columns,
            pairs.Kinds,
            pairs.Units,
            trial,
            shared.Folder,
            shared.AsOf,
        };
        command.SetAction(parsed =>
        {
            if (shared.Read(parsed, terminal.Error, writes: true) is not { } run)
            {
                return ExitCode.Usage;
            }

            if (TableReader.IsNamed(parsed.GetValue(from)!))
            {
                return SharedOptions.Open(parsed.GetValue(shared.Folder)!, terminal.Error) is not { } folder ? ExitCode.Usage
                    : Taken(parsed.GetValue(name)!, folder) is { } other ? Refuse(other, null, ExitCode.Usage)
                    : new DesignFromList(terminal, pairs).Start(
                        parsed,
                        new(parsed.GetValue(name)!, parsed.GetValue(title), parsed.GetValue(from)!, parsed.GetValue(trial)),
                        folder,
                        run
                    );
            }

            if (Tied(parsed) is { } option)
            {
                return Refuse($"{option} is said of a parts list, and '{parsed.GetValue(from)}' names no table", null, ExitCode.Usage);
            }

            if (
                SharedOptions.OpenBoards(parsed.GetValue(shared.Folder)!, terminal.Error) is not { } files
                || BoardFinder.Find(files.Root, parsed.GetValue(from)!, run, terminal.Error) is not { } board
            )
            {
                return ExitCode.Usage;
            }

            var wanted = parsed.GetValue(name)!;
            return Taken(wanted, files) is { } taken ? Refuse(taken, null, ExitCode.Usage) : Split(parsed, board, wanted, run);
        });
        return command;
    }

    private static string? Taken(string wanted, CollectionFolder files) =>
        NameRules.Fault(wanted) is { } problem ? $"'{wanted}' cannot be the name of a design: {problem}"
        : files.Designs.FirstOrDefault(path =>
            Appearance
                .Skeleton(Path.GetFileNameWithoutExtension(path))
                .Equals(Appearance.Skeleton(wanted), StringComparison.OrdinalIgnoreCase)
        )
            is { } there
            ? $"there is {there}, which is '{wanted}' or can be taken for it"
        : null;

    private string? Tied(ParseResult parsed) =>
        new Option[] { pairs.Columns, pairs.Kinds, pairs.Units }
            .FirstOrDefault(option => parsed.GetResult(option) is { Implicit: false })
            ?.Name;

    private int Split(ParseResult parsed, FoundBoard board, string wanted, RunOptions run)
    {
        var path = board.Board.Board.Path;
        var designPath = $"designs/{wanted}.md";
        Action? tell = null;
        var exit = RecordFile.Change(board.Files.Root, path, terminal.Error, text =>
        {
            if (RecordEditor.Open(path, text, FileForm.Markdown, new YamlNodeReader(), out _) is not { } editor)
            {
                return (null, Refuse($"{path} holds what cannot be read; mend it first, 'check' says where", null, ExitCode.Findings));
            }

            var remark = DesignFromList.SchemaLine(board.Files);
            var split = DesignSplitter.Split(
                editor,
                wanted,
                parsed.GetValue(title) ?? board.Board.Board.Title.Value,
                remark,
                new YamlNodeReader()
            );
            if (split.Refusal is { } refusal)
            {
                return (null, Refuse($"{path}: {refusal.Message}", refusal.NextStep, ExitCode.Findings));
            }

            if (!IsJudgedAlike(board, run, designPath, split))
            {
                return (null, ExitCode.Findings);
            }

            if (!parsed.GetValue(trial))
            {
                // The design first: a board whose own list stands beside a design of the same parts is still right.
                RecordFile.Create(board.Files.Root, designPath, split.Design!);
            }

            tell = () => Tell(parsed.GetValue(trial), path, designPath, wanted, split);
            return (parsed.GetValue(trial) ? null : split.Board, ExitCode.Clean);
        });
        tell?.Invoke();
        return exit;
    }

    private bool IsJudgedAlike(FoundBoard board, RunOptions run, string designPath, DesignSplit split)
    {
        var path = board.Board.Board.Path;
        var (before, found) = Judge(board.Files, run);
        var (after, result) = Judge(
            board.Files.WithDesign(designPath),
            run with
            {
                Instead = new Dictionary<string, string>(StringComparer.Ordinal) { [path] = split.Board!, [designPath] = split.Design! },
            }
        );
        if (!JudgedFiles.AreSound(terminal, found, result, [path, designPath]))
        {
            return false;
        }

        if (before is null || after is null || SameVerdicts.Difference(before, after) is not { } difference)
        {
            return before is not null && after is not null;
        }

        Refuse($"{path}: {difference}; nothing was written", null, ExitCode.Findings);
        return false;
    }

    private void Tell(bool isTrial, string path, string designPath, string wanted, DesignSplit split)
    {
        var (made, named) = isTrial ? ("would be written", "would name") : ("written", "names");
        terminal.Out.WriteLine(
            Printable.Escape(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{designPath}: {made}, {split.Parts} parts, {split.Points} points, {split.Hazards} hazards"
                )
            )
        );
        terminal.Out.WriteLine(Printable.Escape($"{path}: {named} the design '{wanted}'; every verdict stays what it was"));
        if (split.Kept.Count > 0)
        {
            terminal.Out.WriteLine(Printable.Escape($"  kept on the board as well, for their date codes: {string.Join(", ", split.Kept)}"));
        }

        terminal.Out.WriteLine("  remarks went along with their parts: look whether one speaks of this unit alone");
    }

    private int Refuse(string problem, string? next, int exit)
    {
        PartsListTaker.Refuse(terminal, problem, next);
        return exit;
    }

    private static (JudgedBoard? Board, RunResult Result) Judge(CollectionFolder files, RunOptions run)
    {
        JudgedBoard? board = null;
        var result = new CollectionRun(files, run).Run(seen: assessment => board = assessment);
        return (board, result);
    }
}
