using System.Text;
using Ohmstead.Collections;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;
using Ohmstead.Yaml;

namespace Ohmstead.Output;

/// <summary>What programs want to know of the places of findings: columns as editors count them, and what stands there by its
/// meaning.</summary>
/// <param name="folder">The collection.</param>
internal sealed class FindingSources(CollectionFolder folder)
{
    private readonly IFileBytes files = folder.Files.ForWorker(ReadingLimits.Usual);
    private readonly Dictionary<string, Source> known = new(StringComparer.Ordinal);

    /// <summary>The first column of a place and the one behind its last, from 1 in UTF-16 units; a point is one character wide.</summary>
    public (int First, int Behind) Columns(Place place)
    {
        var text = At(place.Path).Text;
        if (text is null || place.Line > text.LineCount)
        {
            return (place.Column, place.Column + Math.Max(place.Length, 1));
        }

        var line = text.Line(place.Line);
        var first = Units(line, place.Column - 1);
        return (first + 1, Math.Max(Units(line, place.Column - 1 + Math.Max(place.Length, 1)), first + 1) + 1);
    }

    /// <summary>What a place is about: the thing that its file records, and the entry that it stands in, whatever line that is
    /// on.</summary>
    public string Meaning(Place place)
    {
        var source = At(place.Path);
        var entry = source.Entries.LastOrDefault(entry => (entry.Spot.Line, entry.Spot.Column).CompareTo((place.Line, place.Column)) <= 0);
        return $"{source.Name}|{entry?.Names[0]}";
    }

    // Code points into UTF-16 units, held within the line.
    private static int Units(ReadOnlySpan<char> line, int points)
    {
        var units = 0;
        while (points > 0 && units < line.Length)
        {
            units += char.IsHighSurrogate(line[units]) && units + 1 < line.Length ? 2 : 1;
            points--;
        }

        return units + points;
    }

    private Source At(string path)
    {
        if (!known.TryGetValue(path, out var source))
        {
            known.Add(path, source = Read(path));
        }

        return source;
    }

    private Source Read(string path)
    {
        if (files.Open(path) is not ({ Length: > 0 } bytes, null))
        {
            return new(path, null, []);
        }

        using var reader = new StreamReader(new MemoryStream(bytes.ToArray()), Encoding.UTF8);
        var text = new SourceText(path, reader.ReadToEnd());
        var isMarkdown = path.EndsWith(".md", StringComparison.Ordinal);
        var root = NodeReaders.ForWorker(0).Read(path, bytes, isMarkdown ? FileForm.Markdown : FileForm.Yaml, ReadingLimits.Usual).Root;
        return root is null ? new(path, text, []) : new(NameOf(path, root), text, [.. RecordEntries.List(root, ShapeOf(path))]);
    }

    // A board that was renamed is the same board.
    private static string NameOf(string path, MappingNode root) =>
        (root.ValueOf("board") ?? root.ValueOf("design")) is ScalarNode { IsNothing: false } name ? name.Text : path;

    private static Shape ShapeOf(string path) =>
        path switch
        {
            "collection.yaml" => FileShapes.Collection,
            "instruments.yaml" => FileShapes.Instruments,
            "stock.yaml" => FileShapes.Stock,
            "meters.yaml" => MeterShape.File,
            _ when path.StartsWith("designs/", StringComparison.Ordinal) => FileShapes.Design,
            _ => FileShapes.Board,
        };

    private sealed record Source(string Name, SourceText? Text, IReadOnlyList<RecordEntry> Entries);
}
