using System.Collections.Immutable;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Merging;

/// <summary>A file of a collection that two people changed.</summary>
/// <param name="Path">Its path, for what is told.</param>
/// <param name="Form">Front matter with a story, or plain YAML.</param>
/// <param name="Shape">What may be written in it; null for a file that is merged as text.</param>
/// <param name="Reader">Reads it.</param>
/// <param name="Findings">What is wrong with what was read, by its path.</param>
/// <param name="MarkSize">How many signs a mark of a conflict has.</param>
public sealed record MergedFile(
    string Path,
    FileForm Form,
    Shape? Shape,
    INodeReader Reader,
    Func<string, NodeReading, ImmutableArray<Finding>> Findings,
    int MarkSize
);

/// <summary>A merged file.</summary>
/// <param name="Content">The whole file, a byte order mark included.</param>
/// <param name="Conflicts">How many places are left to a person, between marks; 0 where none is.</param>
/// <param name="Reasons">Why, one line for each cause; and what else a person should know.</param>
public sealed record MergeOutcome(ReadOnlyMemory<byte> Content, int Conflicts, ImmutableArray<string> Reasons)
{
    /// <summary>The visits of the two in which something was added, each by the initials and the day.</summary>
    public ImmutableArray<string> Visits { get; init; } = [];

    /// <summary>Whether it was merged line by line, since it could not be by entries.</summary>
    public bool IsByLines { get; init; }
}
