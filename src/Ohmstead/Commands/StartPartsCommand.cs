using System.CommandLine;
using System.Globalization;
using Ohmstead.Collections;
using Ohmstead.PartsLists;
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
    private const int MostTold = 40;

    private readonly Argument<string> list = new("FILE")
    {
        Description = "The table: separated by commas, semicolons or tabs, with headings, in UTF-8.",
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

        if (!ListFile.Read(parsed.GetValue(list)!).Is(out var text, out var problem))
        {
            return Refuse(problem, null);
        }

        var table = CsvTableReader.Read(text);
        var (plan, fault, next) = PlanOf(table, parsed.GetValue(pairs.Columns)!);
        if (plan is null)
        {
            return Refuse($"{parsed.GetValue(list)}: {fault}", next);
        }

        return
            (
                toDesign is null
                    ? ListTarget.Board(files, toBoard!, run, terminal.Error)
                    : ListTarget.Design(files, toDesign, run, terminal.Error)
            )
                is { } target
            ? Take(parsed, table, plan, target, run)
            : ExitCode.Usage;
    }

    // Titles and dates may stand above the headings: the first of the first rows that can be headings is taken for them.
    private static (ColumnPlan? Plan, string? Fault, string? NextStep) PlanOf(CsvTable table, IReadOnlyDictionary<string, string> said)
    {
        if (table.Rows.Count == 0)
        {
            return (
                null,
                table.Faults.Count > 0 ? $"{table.Faults[0].Place}: {table.Faults[0].Message}" : "there is no row in it",
                table.Faults.Count > 0 ? table.Faults[0].NextStep : null
            );
        }

        var plans = table.Rows.Take(20).Select(row => ColumnPlan.For(row, said)).ToArray();
        var found = plans.FirstOrDefault(plan => plan.Plan is not null);
        return found.Plan is not null ? found : plans[0];
    }

    private int Take(ParseResult parsed, CsvTable table, ColumnPlan plan, ListTarget target, RunOptions run)
    {
        terminal.Out.WriteLine(Printable.Escape(plan.InWords()));
        var choices = new ListChoices(parsed.GetValue(pairs.Kinds)!, parsed.GetValue(pairs.Units)!, reference =>
            target.Known.GetValueOrDefault(reference)?.Part.Values.Kind.Value
        );
        var read = PartsListReader.Read(table, plan, choices);
        var compared = ListComparison.Compare(read.Parts, target.Known);
        var against = read.Contradictions.Concat(compared.Conflicts).OrderBy(one => one.Line).ToArray();
        Tell(parsed.GetValue(list)!, against);
        if (against.Length > 0)
        {
            terminal.Error.WriteLine("nothing was written");
            return ExitCode.Findings;
        }

        var left = read.Faults.Concat(compared.Alike).OrderBy(one => one.Line).ThenBy(one => one.Column).ToArray();
        Tell(parsed.GetValue(list)!, left);
        Tell(read.Undecided);
        var exit =
            compared.New.Count == 0 ? ExitCode.Clean : Write(target, [.. compared.New.Select(PartLine.Write)], parsed.GetValue(trial), run);
        if (exit != ExitCode.Clean)
        {
            return exit;
        }

        Count(compared, left.Length, read.Undecided.Sum(one => one.References.Count), target.Path);
        return left.Length > 0 || read.Undecided.Count > 0 ? ExitCode.Findings : ExitCode.Clean;
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
        foreach (var item in isTrial ? items : [])
        {
            terminal.Out.WriteLine(Printable.Escape($"  - {item}"));
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

    private void Tell(string file, ListFault[] faults)
    {
        foreach (var fault in faults.Take(MostTold))
        {
            terminal.Error.WriteLine(Printable.Escape($"{file}, {fault.Place}: {fault.Message}"));
            if (fault.NextStep is not null)
            {
                terminal.Error.WriteLine(Printable.Escape($"  = {fault.NextStep}"));
            }
        }

        if (faults.Length > MostTold)
        {
            terminal.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{faults.Length - MostTold} more are not shown"));
        }
    }

    private void Tell(IReadOnlyList<UndecidedKind> undecided)
    {
        foreach (var (letters, references) in undecided)
        {
            var candidates = ClassLetter.Candidates(letters);
            var some =
                string.Join(", ", references.Take(12))
                + (
                    references.Count > 12 ? string.Create(CultureInfo.InvariantCulture, $" and {references.Count - 12} more") : string.Empty
                );
            terminal.Error.WriteLine(Printable.Escape($"left out, since '{letters}' does not say which kind of part it is: {some}"));
            terminal.Error.WriteLine(
                Printable.Escape(
                    $"  = --kind \"{(letters.Length > 0 ? letters : references[0])}={candidates[0]}\", or one of: "
                        + $"{string.Join(", ", candidates)}"
                )
            );
        }
    }

    private void Count(ListComparison compared, int left, int undecided, string path)
    {
        if (compared.Same.Count > 0)
        {
            terminal.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {compared.Same.Count} were there already"));
        }

        foreach (var less in compared.Less.Take(MostTold))
        {
            terminal.Out.WriteLine(Printable.Escape($"  {less}"));
        }

        if (left + undecided > 0)
        {
            terminal.Out.WriteLine(
                Printable.Escape(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"  left out: {left} lines not understood, {undecided} parts of unknown kind; the same list can be taken again, "
                            + $"{path} then gets the rest"
                    )
                )
            );
        }
    }

    private int Refuse(string problem, string? next, int exit = ExitCode.Usage)
    {
        terminal.Error.WriteLine(Printable.Escape(problem));
        if (next is not null)
        {
            terminal.Error.WriteLine(Printable.Escape($"  = {next}"));
        }

        return exit;
    }
}
