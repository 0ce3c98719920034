using System.Text;
using Ohmstead.Records.Editing;

namespace Ohmstead.Starting;

/// <summary>The text of a record that begins: single values in the order of the format, then a story that waits to be written.</summary>
internal static class BoardText
{
    /// <summary>Writes it.</summary>
    /// <param name="path">Its path from the root of the collection.</param>
    /// <param name="hasSchemas">Whether the collection carries the schemas, so that the record names its own for editors.</param>
    /// <param name="values">Keys with their values, those without a value left out.</param>
    /// <param name="arrived">What is known of its arrival, likewise.</param>
    public static string Write(
        string path,
        bool hasSchemas,
        IEnumerable<(string Key, string? Value)> values,
        IReadOnlyList<(string Key, string? Value)> arrived
    )
    {
        var text = new StringBuilder("---\n");
        if (hasSchemas)
        {
            text.Append("# yaml-language-server: $schema=")
                .Append(string.Concat(Enumerable.Repeat("../", path.Count(letter => letter == '/'))))
                .Append("schema/board.schema.json\n");
        }

        foreach (var (key, value) in values.Where(entry => entry.Value is not null))
        {
            text.Append(key).Append(": ").Append((key == "made" ? FlowText.Scalar(value!) : FlowText.TextScalar(value!))).Append('\n');
        }

        if (arrived.Any(entry => entry.Value is not null))
        {
            text.Append("arrived: ").Append(FlowText.Mapping(arrived)).Append('\n');
        }

        return text.Append("format: 1\n---\n\n## Story\n").ToString();
    }
}
