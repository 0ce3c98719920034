using System.Collections.Immutable;
using Ohmstead.Records.Findings;

namespace Ohmstead.Records.Nodes;

/// <summary>The one door through which text becomes nodes. Everything above it is independent of the YAML library in use.</summary>
/// <remarks>An instance is used by one thread at a time; each worker has its own.</remarks>
public interface INodeReader
{
    /// <summary>Reads one file. Never throws for anything the bytes may hold: what is wrong comes back as findings.</summary>
    /// <param name="path">The path from the root of the collection, for findings.</param>
    /// <param name="bytes">The whole file.</param>
    /// <param name="form">Whether front matter and a Markdown body are expected, or plain YAML.</param>
    /// <param name="limits">How much is read before a file is refused.</param>
    NodeReading Read(string path, ReadOnlyMemory<byte> bytes, FileForm form, ReadingLimits limits);
}

/// <summary>The two forms a file of a collection has.</summary>
public enum FileForm
{
    /// <summary>Markdown with YAML front matter between two lines of three dashes.</summary>
    Markdown,

    /// <summary>YAML alone.</summary>
    Yaml,
}

/// <summary>What reading one file gave.</summary>
/// <param name="Root">The front matter, or null when it could not be read.</param>
/// <param name="Body">The Markdown after the front matter, with its line ends as written; empty for plain YAML.</param>
/// <param name="BodyLine">The line of the file on which the body begins, from 1.</param>
/// <param name="Findings">What is wrong with the text, in order of place.</param>
public sealed record NodeReading(MappingNode? Root, string Body, int BodyLine, ImmutableArray<Finding> Findings);

/// <summary>How much of a file is read before it is refused. Every message about a limit names it.</summary>
/// <param name="FileBytes">The largest file.</param>
/// <param name="FrontMatterBytes">The largest front matter.</param>
/// <param name="BodyBytes">The largest Markdown body.</param>
/// <param name="FieldBytes">The longest single value.</param>
/// <param name="Events">The largest number of YAML events.</param>
/// <param name="Depth">The deepest nesting of mappings and lists.</param>
public sealed record ReadingLimits(
    long FileBytes = 16L << 20,
    long FrontMatterBytes = 8L << 20,
    long BodyBytes = 2L << 20,
    int FieldBytes = 64 << 10,
    int Events = 5_000_000,
    int Depth = 32
)
{
    /// <summary>The limits used when nothing else is asked for.</summary>
    public static ReadingLimits Usual { get; } = new();
}
