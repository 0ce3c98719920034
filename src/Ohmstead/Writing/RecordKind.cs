using System.Collections.Immutable;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Writing;

/// <summary>Which of the six files of a collection a file is, told by its path from the root.</summary>
/// <param name="Form">Front matter with a body, or plain YAML.</param>
/// <param name="Shape">What may be written in it.</param>
/// <param name="Findings">What is wrong with its content, as far as it can be told from the file alone.</param>
internal sealed record RecordKind(FileForm Form, Shape Shape, Func<string, NodeReading, ImmutableArray<Finding>> Findings)
{
    private static readonly RecordKind Board = new(FileForm.Markdown, FileShapes.Board, (path, text) =>
        FileBinding.Board(path, text).Findings
    );
    private static readonly RecordKind Design = new(FileForm.Markdown, FileShapes.Design, (path, text) =>
        FileBinding.Design(path, text).Findings
    );
    private static readonly RecordKind Collection = new(FileForm.Yaml, FileShapes.Collection, (path, text) =>
        FileBinding.Collection(path, text).Findings
    );
    private static readonly RecordKind Instruments = new(FileForm.Yaml, FileShapes.Instruments, (path, text) =>
        FileBinding.Instruments(path, text).Findings
    );
    private static readonly RecordKind Meters = new(FileForm.Yaml, MeterShape.File, (path, text) =>
        MeterBinding.Meters(path, text).Findings
    );
    private static readonly RecordKind Stock = new(FileForm.Yaml, FileShapes.Stock, (path, text) => FileBinding.Stock(path, text).Findings);

    /// <summary>True for a board, whose readings have verdicts.</summary>
    public bool IsBoard => ReferenceEquals(this, Board);

    /// <summary>True for the meters, whose descriptions have no entries that two people add.</summary>
    public bool IsMeters => ReferenceEquals(this, Meters);

    /// <summary>The kind, or null for a file that is no part of a collection.</summary>
    public static RecordKind? Find(string path) =>
        path switch
        {
            "collection.yaml" => Collection,
            "instruments.yaml" => Instruments,
            "meters.yaml" => Meters,
            "stock.yaml" => Stock,
            _ when !path.EndsWith(".md", StringComparison.Ordinal) => null,
            _ => path.StartsWith("designs/", StringComparison.Ordinal) ? Design : Board,
        };
}
