using System.Text;
using System.Text.Json;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing;

/// <summary>A table for programs.</summary>
/// <param name="Name">Its name in the file.</param>
/// <param name="Row">What a row of the file holds.</param>
/// <param name="Names">The names of its keys with quotes and colon, ready to be written a million times.</param>
internal readonly record struct DataTable(string Name, Shape Row, byte[][] Names)
{
    /// <summary>A table of rows of that shape.</summary>
    public static DataTable For(string name, Shape row) =>
        new(name, row, [.. row.Keys.Select(key => Encoding.UTF8.GetBytes($"\"{JsonEncodedText.Encode(key.Name)}\":"))]);
}
