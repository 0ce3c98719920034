using System.Collections.Immutable;
using System.Text;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Collections;
using Ohmstead.Records.Nodes;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>A collection whose records are texts in memory, beside the photographs of the demo.</summary>
/// <param name="texts">The records, by path.</param>
internal sealed class TextFiles(ImmutableSortedDictionary<string, string> texts) : IRecordFiles
{
    /// <summary>The collection.</summary>
    public static CollectionFolder Open(ImmutableSortedDictionary<string, string> texts) =>
        new("texts", Below(texts, "boards/"), Below(texts, "designs/")) { Files = new TextFiles(texts) };

    /// <summary>The records of a folder.</summary>
    public static ImmutableSortedDictionary<string, string> Read(string folder) =>
        new[] { folder, Path.Combine(folder, "boards"), Path.Combine(folder, "designs") }
            .SelectMany(place => Directory.EnumerateFiles(place))
            .Select(path => (Full: path, Path: Path.GetRelativePath(folder, path).Replace('\\', '/')))
            .Where(file => file.Path.Contains('/', StringComparison.Ordinal) || CollectionRun.SharedFiles.Contains(file.Path))
            .ToImmutableSortedDictionary(file => file.Path, file => File.ReadAllText(file.Full), StringComparer.Ordinal);

    /// <inheritdoc/>
    public bool Has(string name) => texts.ContainsKey(name);

    /// <inheritdoc/>
    public IFileBytes ForWorker(ReadingLimits limits) => new Texts(texts);

    /// <inheritdoc/>
    public IPictures Pictures(RunOptions options) => CollectionFolder.Open(CollectionCopy.Untouched).Files.Pictures(options);

    private static string[] Below(ImmutableSortedDictionary<string, string> texts, string folder) =>
        [.. texts.Keys.Where(path => path.StartsWith(folder, StringComparison.Ordinal))];

    private sealed class Texts(ImmutableSortedDictionary<string, string> texts) : IFileBytes
    {
        public (ReadOnlyMemory<byte> Bytes, NodeReading? Refused) Open(string path) => (Encoding.UTF8.GetBytes(texts[path]), null);
    }
}
