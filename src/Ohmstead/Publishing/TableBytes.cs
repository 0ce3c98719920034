using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing;

/// <summary>Rows of a table in both forms.</summary>
/// <param name="Csv">As lines of CSV.</param>
/// <param name="Json">As JSON objects, each followed by a comma.</param>
internal readonly record struct TableBytes(byte[] Csv, byte[] Json)
{
    /// <summary>Writes rows in both forms.</summary>
    public static TableBytes Of(Shape shape, IEnumerable<string?[]> rows)
    {
        string?[][] all = [.. rows];
        return new(DataForm.Csv(all), DataForm.Json(shape, all));
    }
}
