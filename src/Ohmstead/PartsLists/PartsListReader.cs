using System.Globalization;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.PartsLists;

/// <summary>Reads the parts out of a table whose columns are known. A line in which anything is not understood is left out as a whole, and
/// told.</summary>
internal sealed class PartsListReader(ColumnPlan plan, ListChoices choices)
{
    private readonly Dictionary<string, ListedPart> parts = new(StringComparer.Ordinal);
    private readonly List<ListedPart> inOrder = [];
    private readonly List<ListFault> faults = [];
    private readonly List<ListFault> contradictions = [];
    private readonly OrderedDictionary<string, List<string>> undecided = new(StringComparer.Ordinal);

    /// <summary>Reads all rows below the headings.</summary>
    public static PartsList Read(CsvTable table, ColumnPlan plan, ListChoices choices)
    {
        var reader = new PartsListReader(plan, choices);
        foreach (var row in table.Rows.Where(row => row.Line > plan.HeadingLine))
        {
            reader.Row(row);
        }

        var all = table
            .Faults.Where(fault => fault.Line > plan.HeadingLine)
            .Concat(reader.faults)
            .OrderBy(fault => fault.Line)
            .ThenBy(fault => fault.Column)
            .ToArray();
        return new(
            reader.inOrder,
            [.. reader.undecided.Select(pair => new UndecidedKind(pair.Key, pair.Value))],
            all,
            reader.contradictions
        );
    }

    private void Row(CsvRow row)
    {
        var width = plan.Columns.Count;
        if (row.Cells.Count < width || row.Cells.Skip(width).Any(cell => cell.Length > 0))
        {
            faults.Add(
                new(
                    row.Line,
                    0,
                    string.Create(CultureInfo.InvariantCulture, $"the line has {row.Cells.Count} cells, the headings have {width}"),
                    "put a cell that holds the separator into quotes"
                )
            );
            return;
        }

        var cells = new Dictionary<string, (PlannedColumn Column, string Text)>(StringComparer.Ordinal);
        foreach (var column in plan.Columns.Where(column => column.Target is not null && row.Cells[column.Index].Length > 0))
        {
            var (text, fault, next) = CellText.Read(
                column.Target == ColumnPlan.Reference ? row.Cells[column.Index].ReplaceLineEndings(",") : row.Cells[column.Index]
            );
            if (fault is not null)
            {
                faults.Add(new(row.Line, column.Index + 1, fault, next));
                return;
            }

            cells[column.Target!] = (column, text);
        }

        if (cells.Count > 0)
        {
            References(row.Line, cells);
        }
    }

    private void References(int line, Dictionary<string, (PlannedColumn Column, string Text)> cells)
    {
        var (column, text) = cells.GetValueOrDefault(ColumnPlan.Reference);
        var (references, fault, next) =
            SumRow.Fault(text ?? string.Empty) is { } sums ? ([], sums, SumRow.NextStep)
            : text is null ? ([], "there is no reference", "write references such as C1, C5-C8, or take the row out where it holds sums")
            : ReferenceList.Read(text);
        if (fault is not null)
        {
            faults.Add(new(line, (column ?? plan.For(ColumnPlan.Reference)!).Index + 1, fault, next));
            return;
        }

        if (cells.TryGetValue(ColumnPlan.Count, out var count) && count.Text != references.Count.ToString(CultureInfo.InvariantCulture))
        {
            faults.Add(
                new(
                    line,
                    count.Column.Index + 1,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"the line names {references.Count} {(references.Count == 1 ? "reference" : "references")} and counts "
                            + $"'{CsvTableReader.Excerpt(count.Text)}'"
                    ),
                    "make them agree, or take the column back with --columns count="
                )
            );
            return;
        }

        // All references of a line, or none: a fault of one kind of part is told once, not for each.
        var read = new List<ListedPart>();
        foreach (var reference in references)
        {
            var (part, wrong) = One(reference, line, cells);
            if (wrong is not null)
            {
                faults.Add(wrong);
                return;
            }

            if (part is not null)
            {
                read.Add(part);
            }
        }

        read.ForEach(Add);
    }

    private void Add(ListedPart part)
    {
        if (parts.TryAdd(part.Reference, part))
        {
            inOrder.Add(part);
        }
        else if (parts[part.Reference] is var other && (other.Kind != part.Kind || !other.Values.SequenceEqual(part.Values)))
        {
            contradictions.Add(
                new(
                    part.Line,
                    0,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{part.Reference} is {InWords(part)}, and {InWords(other)} on line {other.Line}"
                    ),
                    "write what is right on both lines"
                )
            );
        }
    }

    private (ListedPart? Part, ListFault? Fault) One(
        string reference,
        int line,
        Dictionary<string, (PlannedColumn Column, string Text)> cells
    )
    {
        var (kind, isSaid, wrong) = Kind(reference, line, cells);
        if (wrong is not null)
        {
            return (null, wrong);
        }

        if (kind is null)
        {
            var letters = ReferenceList.ClassLetters(reference);
            undecided.TryAdd(letters, []);
            undecided[letters].Add(reference);
            return (null, null);
        }

        var values = new Dictionary<string, string>(StringComparer.Ordinal);
        if (cells.TryGetValue(ColumnPlan.Value, out var cell))
        {
            var (read, fault, next) = ValueText.Read(
                cell.Text,
                kind,
                choices.Units.GetValueOrDefault(ReferenceList.ClassLetters(reference)) ?? cell.Column.Unit
            );
            if (fault is not null)
            {
                return (null, new(line, cell.Column.Index + 1, fault, next));
            }

            foreach (var (key, value) in read)
            {
                values[key] = value;
            }
        }

        foreach (var key in PartShape.Values.Where(key => cells.ContainsKey(key.Name)))
        {
            var (column, text) = cells[key.Name];
            var (value, fault, next) = KeyText.Read(key, text, kind, Nominal(values, kind), column.Unit);
            if (fault is not null)
            {
                return (null, new(line, column.Index + 1, fault, next));
            }

            // A column of type numbers is more exact than the name that stands for a value.
            if (key != PartShape.Type && values.TryGetValue(key.Name, out var known) && known != value)
            {
                return (
                    null,
                    new(
                        line,
                        column.Index + 1,
                        $"{key.Name} is {value} here, and {known} in the column {cell.Column.Heading}",
                        "write what is right into both columns"
                    )
                );
            }

            values[key.Name] = value!;
        }

        return (
            new(
                reference,
                line,
                kind,
                isSaid,
                [.. PartShape.Values.Where(key => values.ContainsKey(key.Name)).Select(key => (key.Name, values[key.Name]))]
            ),
            null
        );
    }

    // What is said of the very part counts before the list, and the list before what follows from letters.
    private (PartKind? Kind, bool IsSaid, ListFault? Fault) Kind(
        string reference,
        int line,
        Dictionary<string, (PlannedColumn Column, string Text)> cells
    )
    {
        var letters = ReferenceList.ClassLetters(reference);
        if (choices.Kinds.TryGetValue(reference, out var said))
        {
            return (said, true, null);
        }

        if (cells.TryGetValue("kind", out var cell))
        {
            return PartKinds.All.Values.FirstOrDefault(kind => kind.Name.Equals(cell.Text, StringComparison.OrdinalIgnoreCase)) is { } known
                ? (known, true, null)
                : (
                    null,
                    false,
                    new(
                        line,
                        cell.Column.Index + 1,
                        $"'{CsvTableReader.Excerpt(cell.Text)}' is no kind of part",
                        Nearest.To(cell.Text, PartKinds.All) is { } near
                            ? $"write {near}"
                            : $"write one of: {string.Join(", ", ClassLetter.Candidates(letters))}"
                    )
                );
        }

        var told = ValueText.KindOf(
            $"{cells.GetValueOrDefault(ColumnPlan.Value).Text} {cells.GetValueOrDefault("note").Text}",
            ClassLetter.Known(letters)
        );
        return told is not null ? (told, true, null)
            : choices.Kinds.TryGetValue(letters, out var usual) ? (usual, true, null)
            : (choices.KindThere(reference) ?? ClassLetter.Kind(letters), false, null);
    }

    private static Quantity? Nominal(Dictionary<string, string> values, PartKind kind)
    {
        var dimension = kind.MarkedIn;
        var key = dimension switch
        {
            Dimension.Capacitance => "capacitance",
            Dimension.Resistance => "resistance",
            Dimension.Inductance => "inductance",
            _ => null,
        };
        return key is not null && values.TryGetValue(key, out var text) && QuantityText.Parse(text, dimension).Is(out var value, out _)
            ? value
            : null;
    }

    private static string InWords(ListedPart part) => string.Join(' ', part.Values.Select(value => value.Value).Prepend(part.Kind.Name));
}
