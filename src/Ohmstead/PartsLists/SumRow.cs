namespace Ohmstead.PartsLists;

/// <summary>A row that sums up the others, as spreadsheets end with one: it is none of them, and what it says follows from them.</summary>
internal static class SumRow
{
    /// <summary>What to do with one.</summary>
    public const string NextStep = "take the row out of the table, or empty its cells in the table of refused rows";

    private static readonly string[] Words = ["total", "totals", "sum", "sums", "subtotal", "subtotals", "grandtotal", "grandtotals"];

    /// <summary>What is wrong with a name that is the word of such a row; null where it is none.</summary>
    public static string? Fault(string name) =>
        Words.Contains(new string([.. name.Where(char.IsLetter)]), StringComparer.OrdinalIgnoreCase)
            ? $"'{CsvTableReader.Excerpt(name)}' is the word of a row of sums, and no name"
            : null;
}
