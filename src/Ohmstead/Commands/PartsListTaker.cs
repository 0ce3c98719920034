using System.CommandLine;
using System.Globalization;
using Ohmstead.MovingIn;
using Ohmstead.PartsLists;
using Ohmstead.Running;
using Ohmstead.Starting;

namespace Ohmstead.Commands;

/// <summary>Takes the parts of a table for a record: what the columns hold is said, and whatever is not understood is left out and
/// told.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="pairs">What a person says of columns, kinds and units.</param>
internal sealed class PartsListTaker(Terminal terminal, StartPartsOptions pairs)
{
    private const int MostTold = 40;

    /// <summary>Reads the table and finds its headings; null, told, where there are none.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="file">The table: CSV, or a workbook as <c>book.xlsx#Sheet</c>.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public (CsvTable Table, ColumnPlan Plan)? Open(ParseResult parsed, string file)
    {
        var (table, problem, step) = TableReader.ReadRows(file);
        if (table is null)
        {
            Refuse(terminal, problem!, step);
            return null;
        }

        var (plan, fault, next) = PlanOf(table, parsed.GetValue(pairs.Columns)!);
        if (plan is null)
        {
            Refuse(terminal, $"{file}: {fault}", next);
            return null;
        }

        return (table, plan);
    }

    /// <summary>Takes what the table holds and the record does not.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="file">The table, as it was named.</param>
    /// <param name="list">The table and what its columns hold.</param>
    /// <param name="target">The record.</param>
    /// <param name="write">Writes the parts, each as one line of YAML; called where there is one, or where the record is new.</param>
    /// <returns>The exit code.</returns>
    public int Take(
        ParseResult parsed,
        string file,
        (CsvTable Table, ColumnPlan Plan) list,
        ListTarget target,
        Func<IReadOnlyList<string>, int> write
    )
    {
        terminal.Out.WriteLine(Printable.Escape(list.Plan.InWords()));
        var choices = new ListChoices(parsed.GetValue(pairs.Kinds)!, parsed.GetValue(pairs.Units)!, reference =>
            target.Known.GetValueOrDefault(reference)?.Part.Values.Kind.Value
        );
        var read = PartsListReader.Read(list.Table, list.Plan, choices);
        var compared = ListComparison.Compare(read.Parts, target.Known);
        var against = read.Contradictions.Concat(compared.Conflicts).OrderBy(one => one.Line).ToArray();
        Tell(file, against);
        if (against.Length > 0)
        {
            terminal.Error.WriteLine("nothing was written");
            return ExitCode.Findings;
        }

        var left = read.Faults.Concat(compared.Alike).OrderBy(one => one.Line).ThenBy(one => one.Column).ToArray();
        Tell(file, left);
        Tell(read.Undecided);
        var exit = compared.New.Count == 0 && !target.IsNew ? ExitCode.Clean : write([.. compared.New.Select(PartLine.Write)]);
        if (exit != ExitCode.Clean)
        {
            return exit;
        }

        Count(compared, left.Length, read.Undecided.Sum(one => one.References.Count), target.Path);
        return left.Length > 0 || read.Undecided.Count > 0 ? ExitCode.Findings : ExitCode.Clean;
    }

    /// <summary>Shows parts that would be written.</summary>
    public void Show(IReadOnlyList<string> items)
    {
        foreach (var item in items)
        {
            terminal.Out.WriteLine(Printable.Escape($"  - {item}"));
        }
    }

    /// <summary>Tells what keeps a command from doing anything, and what to do.</summary>
    public static void Refuse(Terminal terminal, string problem, string? next)
    {
        terminal.Error.WriteLine(Printable.Escape(problem));
        if (next is not null)
        {
            terminal.Error.WriteLine(Printable.Escape($"  = {next}"));
        }
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
}
