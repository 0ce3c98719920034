using System.Globalization;
using Ohmstead.Electronics.Quantities;
using Ohmstead.PartsLists;

namespace Ohmstead.MovingIn;

/// <summary>Reads the tables of a run and says what their columns hold.</summary>
internal static class TableReading
{
    private const int MostTitles = 20;
    private static readonly char[] Capitals = [.. "ABCDEFGHIJKLMNOPQRSTUVWXYZ"];
    private static readonly Dimension[] Dimensions = [Dimension.Capacitance, Dimension.Resistance, Dimension.Inductance, Dimension.Voltage];

    /// <summary>A table with its columns, or why there is none.</summary>
    /// <param name="file">The file as it was named.</param>
    /// <param name="sort">What its rows are.</param>
    /// <param name="said">What is said of its columns: kept ones, and over them those of this run.</param>
    /// <param name="needless">What need not have a column, since an option says it.</param>
    /// <param name="mended">Mended rows, by table and row.</param>
    public static (OldTable? Table, string? Fault, string? NextStep) Read(
        string file,
        TableSort sort,
        IReadOnlyDictionary<string, string> said,
        IReadOnlySet<string> needless,
        IReadOnlyDictionary<(string Of, int Row), CsvRow> mended
    )
    {
        var (read, fault, next) = TableReader.Read(file);
        if (read is null)
        {
            return (null, fault, next);
        }

        var words = sort.Words with { Needed = [.. sort.Words.Needed.Where(needed => !needless.Contains(needed.Target))] };
        // Titles and days may stand above the headings: the first row that can be headings is taken for them.
        (ColumnPlan? Plan, string? Fault, string? NextStep) plan = (null, null, null);
        foreach (var row in read.Cells.Rows.Take(MostTitles))
        {
            var tried = ColumnPlan.For(words, row, said);
            plan = plan.Fault is null || tried.Plan is not null ? tried : plan;
            if (tried.Plan is not null)
            {
                break;
            }
        }

        // Whoever names columns by their numbers can name them of a table without headings, whose first row would be lost.
        var head = plan.Plan is { } taken ? read.Cells.Rows.First(row => row.Line == taken.HeadingLine) : read.Cells.Rows[0];
        var data = plan.Plan is null
            ? read.Cells.Rows.Take(MostTitles).All(row => row.Cells.Any(IsData))
                ? head.Cells.First(IsData)
                : null
            : sort
                .Words.Needed.Select(needed => plan.Plan.For(needed.Target)?.Heading)
                .FirstOrDefault(heading => heading is not null && IsData(heading));
        if (data is not null)
        {
            return (
                null,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{file}: line {head.Line} is taken for the headings, and '{CsvTableReader.Excerpt(data)}' in it looks like "
                        + $"a row of the table"
                ),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"put a row of headings above the first row, one for each of its {head.Cells.Count} columns, such as "
                ) + string.Join(", ", HeadingsFor(sort, head.Cells.Count))
            );
        }

        if (plan.Plan is not { } found)
        {
            return (null, $"{file}: {plan.Fault}", plan.NextStep);
        }

        var name = Path.GetFileName(file);
        var width = found.Columns.Count;
        if (mended.FirstOrDefault(one => one.Key.Of == name && one.Value.Cells.Count != width) is { Value: { } odd })
        {
            return (
                null,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"the mended row {odd.Line} of {name} has {odd.Cells.Count} cells, and the table has {width}"
                ),
                "leave all columns as they were written"
            );
        }

        var rows = read.Cells.Rows.Select(row => mended.GetValueOrDefault((name, row.Line)) ?? row).ToArray();
        return (
            new(file, sort, read.Cells with { Rows = rows }, found)
            {
                Figures = mended.Count == 0 ? read.Figures : read.Figures.Where(cell => !mended.ContainsKey((name, cell.Row))).ToHashSet(),
            },
            null,
            null
        );
    }

    // What every such table has, then what most have.
    private static IEnumerable<string> HeadingsFor(TableSort sort, int columns)
    {
        string[] needed = [.. sort.Words.Needed.Select(one => one.Target)];
        return needed.Concat(sort.Words.Targets.Except(needed, StringComparer.Ordinal)).Take(Math.Max(columns, needed.Length));
    }

    // A day, a figure with its unit, or a name with a number, as rows have them and headings do not.
    private static bool IsData(string cell) =>
        cell.Length > 0
        && (
            char.IsAsciiDigit(cell[0])
                ? new ForeignText(null, null).Day(cell) is { Day: not null } or { NextStep: ['-', ..] }
                    || Dimensions.Any(dimension => QuantityText.Parse(cell, dimension).Is(out _, out _))
                : cell.TrimStart(Capitals) is var rest && cell.Length - rest.Length is 1 or 2 or 3 && IsNumber(rest.TrimStart('-'))
        );

    private static bool IsNumber(string rest) => rest.Length > 0 && rest.All(char.IsAsciiDigit);

    /// <summary>Columns that nothing is taken of, with how many cells of each are filled.</summary>
    public static IEnumerable<(PlannedColumn Column, int Filled)> NotUsed(OldTable table) =>
        table
            .Plan.Columns.Where(column => column.Target is null)
            .Select(column => (column, table.Rows.Count(row => column.Index < row.Cells.Count && row.Cells[column.Index].Length > 0)))
            .Where(one => one.Item2 > 0);

    /// <summary>What the columns hold, as it is kept: a heading, or the number of a column whose heading is not the only one of its
    /// kind.</summary>
    public static IReadOnlyDictionary<string, string> Kept(OldTable table, IReadOnlyDictionary<string, string> said) =>
        table
            .Plan.Columns.Where(column => column.Target is not null)
            .Select(column =>
                (
                    column.Target!,
                    column.Heading.Length > 0
                    && !column.Heading.StartsWith('#')
                    && table.Plan.Columns.Count(other => other.Heading.Equals(column.Heading, StringComparison.OrdinalIgnoreCase)) == 1
                        ? column.Heading
                        : string.Create(CultureInfo.InvariantCulture, $"#{column.Index + 1}")
                )
            )
            .Concat(said.Where(pair => pair.Value.Length == 0).Select(pair => (pair.Key, pair.Value)))
            .ToDictionary(pair => pair.Item1, pair => pair.Item2, StringComparer.Ordinal);
}
