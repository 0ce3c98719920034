using System.Globalization;

namespace Ohmstead.Benchmarks;

/// <summary>A plain table: the first column to the left, the others to the right.</summary>
/// <param name="Headings">The headings.</param>
public sealed record Table(params IReadOnlyList<string> Headings)
{
    private readonly List<IReadOnlyList<string>> rows = [Headings];

    /// <summary>Adds a row.</summary>
    public void Add(params IReadOnlyList<string> cells) => rows.Add(cells);

    /// <summary>Writes a number with so many decimals.</summary>
    public static string Number(double value, int decimals = 2) =>
        value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>Writes the table and an empty line.</summary>
    public void Print(TextWriter writer)
    {
        var widths = Headings.Select((_, column) => rows.Max(row => row[column].Length)).ToList();
        foreach (var row in rows)
        {
            writer.WriteLine(
                string.Join("  ", row.Select((cell, column) => column == 0 ? cell.PadRight(widths[0]) : cell.PadLeft(widths[column])))
                    .TrimEnd()
            );
        }

        writer.WriteLine();
    }
}
