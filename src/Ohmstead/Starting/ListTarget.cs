using Ohmstead.Collections;
using Ohmstead.PartsLists;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Starting;

/// <summary>The record that a parts list goes into: a design, or a board.</summary>
/// <param name="Files">The collection, with that board alone or with no board.</param>
/// <param name="Path">The record.</param>
/// <param name="Shape">Its shape.</param>
/// <param name="Known">The parts it has already, a board's design's included.</param>
/// <param name="Before">What a run over it found.</param>
internal sealed record ListTarget(
    CollectionFolder Files,
    string Path,
    Shape Shape,
    IReadOnlyDictionary<string, KnownPart> Known,
    RunResult Before
)
{
    /// <summary>True for a record that is not there yet.</summary>
    public bool IsNew { get; private init; }

    /// <summary>A design that is not there yet.</summary>
    public static ListTarget NewDesign(CollectionFolder files, string path, RunOptions run)
    {
        var alone = files.Only([]);
        return new(
            alone.WithDesign(path),
            path,
            FileShapes.Design,
            new Dictionary<string, KnownPart>(StringComparer.Ordinal),
            new CollectionRun(alone, run).Run()
        )
        {
            IsNew = true,
        };
    }

    /// <summary>A design; null, told with the nearest name, when there is none.</summary>
    public static ListTarget? Design(CollectionFolder files, string name, RunOptions run, TextWriter error)
    {
        var alone = files.Only([]);
        var result = new CollectionRun(alone, run).Run();
        if (!result.Workshop.Designs.TryGetValue(name, out var design))
        {
            var near = Nearest.To(name, result.Workshop.Designs.Keys);
            error.WriteLine(Printable.Escape(Nearest.Told($"there is no design '{name}'", near)));
            return null;
        }

        var known = design
            .Parts.DistinctBy(part => part.Ref.Value, StringComparer.Ordinal)
            .ToDictionary(part => part.Ref.Value, part => new KnownPart(part, design.Path), StringComparer.Ordinal);
        return new(alone, design.Path, FileShapes.Design, known, result);
    }

    /// <summary>A board; null, told with the nearest number, when there is none.</summary>
    public static ListTarget? Board(CollectionFolder files, string number, RunOptions run, TextWriter error)
    {
        if (BoardFinder.Find(files.Root, number, run, error) is not { } board)
        {
            return null;
        }

        var path = board.Board.Board.Path;
        var parts = Assessment.History.BoardWithDesign.Merge(board.Board.Board.Parts, board.Board.Design?.Parts ?? []);
        var known = parts.ToDictionary(
            pair => pair.Key,
            pair => new KnownPart(pair.Value, pair.Value.FromDesign ?? path),
            StringComparer.Ordinal
        );
        return new(board.Files, path, FileShapes.Board, known, new CollectionRun(board.Files, run).Run());
    }
}
