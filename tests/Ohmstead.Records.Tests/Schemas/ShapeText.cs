using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Tests.Schemas;

/// <summary>Writes files from the examples of the shapes themselves.</summary>
internal static class ShapeText
{
    /// <summary>Every mapping of every file: the keys that lead to it, the last one first written.</summary>
    internal static IEnumerable<(string SchemaName, IReadOnlyList<Key> Way, Shape Shape)> Mappings() =>
        FileShapes.All.SelectMany(file => Below(file.Shape, []).Select(found => (file.SchemaName, found.Way, found.Shape)));

    /// <summary>A file with one mapping of the shape written out, each of its entries on a line of its own.</summary>
    internal static string File(string schemaName, IReadOnlyList<Key> way, IEnumerable<(string Key, string Value)> entries)
    {
        var file = FileShapes.All.Single(known => known.SchemaName == schemaName).Shape;
        var lines = new List<string>();
        Write(lines, file, way, entries, 0);
        return Reads.InFile(schemaName, string.Join('\n', lines) + "\n");
    }

    /// <summary>The keys that a mapping needs, with their examples, but for one.</summary>
    internal static IEnumerable<(string Key, string Value)> Needed(Shape shape, Key? without = null) =>
        shape.Keys.Where(key => key.IsNeeded && key.Name != without?.Name).Select(key => (key.Name, Example(key)));

    /// <summary>The example of a key as YAML.</summary>
    internal static string Example(Key key) =>
        key.Kind == ValueKind.List ? $"[{key.Example}]"
        : key.Example.Contains(", ", StringComparison.Ordinal) && key.Inner is null ? $"'{key.Example}'"
        : key.Example;

    private static void Write(
        List<string> lines,
        Shape shape,
        IReadOnlyList<Key> way,
        IEnumerable<(string Key, string Value)> entries,
        int depth
    )
    {
        var indent = new string(' ', depth * 4);
        foreach (var (key, value) in way.Count == 0 ? entries : Needed(shape))
        {
            lines.Add($"{indent}{key}: {value}");
        }

        if (way.Count == 0)
        {
            return;
        }

        lines.Add($"{indent}{way[0].Name}:");
        var first = lines.Count;
        Write(lines, way[0].Inner!, [.. way.Skip(1)], entries, depth + 1);
        if (way[0].Kind == ValueKind.List)
        {
            lines[first] = string.Concat(lines[first].AsSpan(0, (depth * 4) + 2), "- ", lines[first].AsSpan((depth * 4) + 4));
        }
    }

    private static IEnumerable<(IReadOnlyList<Key> Way, Shape Shape)> Below(Shape shape, IReadOnlyList<Key> way) =>
        shape.Keys.Where(key => key.Inner is not null).SelectMany(key => Below(key.Inner!, [.. way, key])).Prepend((way, shape));
}
