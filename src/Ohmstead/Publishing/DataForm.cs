using System.Buffers;
using System.Text.Encodings.Web;
using Ohmstead.Output;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing;

/// <summary>The small forms of the files for programs.</summary>
internal static class DataForm
{
    /// <summary>Writes the head line of a CSV file.</summary>
    public static void CsvHead(IBufferWriter<byte> lines, Shape row) => CsvRows.Append(lines, [.. row.Keys.Select(key => key.Name)]);

    /// <summary>A text as a JSON string, quotes included.</summary>
    public static string Quoted(string text) => $"\"{JavaScriptEncoder.Default.Encode(text)}\"";
}
