using System.Globalization;
using System.Text;

namespace Ohmstead.PartsLists;

/// <summary>What the columns of a parts list hold: guessed from their headings, or said by a person.</summary>
/// <param name="HeadingLine">The line of the headings.</param>
/// <param name="Columns">All columns in order.</param>
internal sealed record ColumnPlan(int HeadingLine, IReadOnlyList<PlannedColumn> Columns)
{
    /// <summary>The references of a row.</summary>
    public const string Reference = "ref";

    /// <summary>A value with whatever else stands beside it: <c>100n 63V</c>.</summary>
    public const string Value = "value";

    /// <summary>How many parts a row has, to be held against its references.</summary>
    public const string Count = "count";

    /// <summary>What a column may hold: the references, a value, a count, and every key of a part.</summary>
    public static IReadOnlyList<string> Targets => ColumnWords.OfParts.Targets;

    /// <summary>The column that holds something, or null.</summary>
    public PlannedColumn? For(string target) => Columns.FirstOrDefault(column => column.Target == target);

    /// <summary>The plan for one row of headings; null with the reason when it cannot be one.</summary>
    /// <param name="headings">The row.</param>
    /// <param name="said">What a person said: for a target the heading, or #3 for the third column; an empty heading takes a guess
    /// back.</param>
    public static (ColumnPlan? Plan, string? Fault, string? NextStep) For(CsvRow headings, IReadOnlyDictionary<string, string> said) =>
        For(ColumnWords.OfParts, headings, said);

    /// <summary>The plan for one row of headings of a table of any sort.</summary>
    /// <param name="words">What its columns may hold.</param>
    /// <param name="headings">The row.</param>
    /// <param name="said">What a person said, as above.</param>
    public static (ColumnPlan? Plan, string? Fault, string? NextStep) For(
        ColumnWords words,
        CsvRow headings,
        IReadOnlyDictionary<string, string> said
    )
    {
        var targets = new string?[headings.Cells.Count];
        foreach (var (target, heading) in said.Where(pair => pair.Value.Length > 0))
        {
            var found = Find(headings.Cells, heading);
            if (found.Length != 1)
            {
                return (
                    null,
                    found.Length == 0
                        ? $"no column is headed '{heading}'; there are {Names(headings.Cells)}"
                        : $"{found.Length} columns are headed '{heading}'",
                    $"--columns \"{words.Prefix}{target}=#{(found.Length == 0 ? 1 : found[0] + 1)}\" names a column by its number"
                );
            }

            targets[found[0]] = target;
        }

        foreach (var (target, usual) in words.Usual.Where(one => !said.ContainsKey(one.Target)))
        {
            var found = Enumerable
                .Range(0, targets.Length)
                .Where(i => targets[i] is null && usual.Contains(Plain(Split(headings.Cells[i]).Name), StringComparer.Ordinal))
                .ToArray();
            if (found.Length > 1 && words.MustBeCertain.Contains(target, StringComparer.Ordinal))
            {
                return (
                    null,
                    $"columns {string.Join(" and ", found.Select(i => i + 1))} can both be '{target}': "
                        + $"{string.Join(", ", found.Select(i => headings.Cells[i]))}",
                    $"--columns \"{words.Prefix}{target}=#{found[0] + 1}\" says which"
                );
            }

            if (found.Length > 0)
            {
                // The word that comes first in the list is the one most people mean.
                targets[found.MinBy(i => Array.IndexOf(usual, Plain(Split(headings.Cells[i]).Name)))] = target;
            }
        }

        return words.Needed.FirstOrDefault(needed => Array.IndexOf(targets, needed.Target) < 0) is { Target: { } missing } none
            ? (
                null,
                $"no column holds {none.Words}; the headings are {Names(headings.Cells)}",
                $"--columns \"{words.Prefix}{missing}="
                    + $"{CsvTableReader.Excerpt(headings.Cells.FirstOrDefault(cell => cell.Length > 0) ?? "#1")}\" names it"
            )
            : (
                new ColumnPlan(
                    headings.Line,
                    [.. headings.Cells.Select((cell, i) => new PlannedColumn(i, cell, targets[i], Split(cell).Unit))]
                ),
                null,
                null
            );
    }

    /// <summary>The plan as one line, to be looked at and, where it is wrong, overruled.</summary>
    public string InWords()
    {
        var unused = Columns
            .Where(column => column.Target is null && column.Heading.Length > 0)
            .Select(column => CsvTableReader.Excerpt(column.Heading))
            .ToArray();
        return "columns: "
            + string.Join(
                ", ",
                Columns
                    .Where(column => column.Target is not null)
                    .Select(column => $"{column.Target} = {CsvTableReader.Excerpt(column.Heading)}")
            )
            + (unused.Length > 0 ? "; not used: " + string.Join(", ", unused) : string.Empty);
    }

    private static int[] Find(IReadOnlyList<string> cells, string heading) =>
        heading.StartsWith('#') && int.TryParse(heading.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number >= 1 && number <= cells.Count
                ? [number - 1]
                : []
            : [.. Enumerable.Range(0, cells.Count).Where(i => cells[i].Equals(heading.Trim(), StringComparison.OrdinalIgnoreCase))];

    // Voltage (V), Voltage [V] and Voltage / V name the unit of the figures below them.
    private static (string Name, string? Unit) Split(string heading)
    {
        var at = heading.AsSpan().IndexOfAny('(', '[', '/');
        return at <= 0 ? (heading, null) : (heading[..at], heading[(at + 1)..].Trim(' ', ')', ']'));
    }

    private static string Plain(string heading)
    {
        var plain = new StringBuilder(heading.Length);
        foreach (var letter in heading.Where(char.IsAsciiLetterOrDigit))
        {
            plain.Append(char.ToLowerInvariant(letter));
        }

        return plain.ToString();
    }

    private static string Names(IReadOnlyList<string> cells) =>
        string.Join(", ", cells.Take(12).Select(cell => $"'{CsvTableReader.Excerpt(cell)}'"));
}

/// <summary>One column of a parts list.</summary>
/// <param name="Index">Its place, from 0.</param>
/// <param name="Heading">Its heading.</param>
/// <param name="Target">What it holds, or null when it is not used.</param>
/// <param name="Unit">The unit that its heading names for figures without one, or null.</param>
internal sealed record PlannedColumn(int Index, string Heading, string? Target, string? Unit);
