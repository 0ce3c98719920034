using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Benchmarks.Stages;

/// <summary>One record on its way through the stages: each stage reads what earlier ones left and leaves its own.</summary>
/// <param name="path">The path from the root of the collection.</param>
/// <param name="bytes">The file.</param>
public sealed class Sample(string path, byte[] bytes)
{
    /// <summary>The path from the root of the collection.</summary>
    public string Path { get; } = path;

    /// <summary>The file.</summary>
    public ReadOnlyMemory<byte> Bytes { get; } = bytes;

    /// <summary>Left by the stage that decodes.</summary>
    public SourceText? Source { get; set; }

    /// <summary>Left by the stage that reads nodes.</summary>
    public NodeReading? Nodes { get; set; }

    /// <summary>Left by the stage that binds.</summary>
    public BoardFile? Board { get; set; }
}
