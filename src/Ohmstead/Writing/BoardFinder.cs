using Ohmstead.Assessment.Boards;
using Ohmstead.Collections;
using Ohmstead.Output;
using Ohmstead.Records.Findings;

namespace Ohmstead.Writing;

/// <summary>Finds a board of a collection by its number.</summary>
internal static class BoardFinder
{
    /// <summary>The board, assessed, with the files and the findings of its run.</summary>
    /// <param name="folder">The collection's folder.</param>
    /// <param name="number">The number of the board.</param>
    /// <param name="options">How the run is made.</param>
    /// <param name="error">Told, with the nearest number, when there is none.</param>
    public static FoundBoard? Find(string folder, string number, RunOptions options, TextWriter error)
    {
        var files = CollectionFolder.Open(folder);
        // The file need not be named after the board: then all are looked through.
        var likely = files.Boards.Where(path => Path.GetFileNameWithoutExtension(path) == number).ToArray();
        if ((likely.Length > 0 ? In(files.Only(likely), number, options, out _) : null) is { } at)
        {
            return at;
        }

        if (In(files, number, options with { Workers = 1 }, out var numbers) is { } found)
        {
            return found;
        }

        var near = Nearest.To(number, numbers);
        error.WriteLine($"there is no board '{Printable.Of(number)}'" + (near is null ? string.Empty : $", '{near}' is the nearest"));
        return null;
    }

    private static FoundBoard? In(CollectionFolder files, string number, RunOptions options, out IReadOnlyList<string> numbers)
    {
        BoardAssessment? found = null;
        var result = new CollectionRun(files, options).Run(null, _ => assessment => found = assessment.Board.Id.Value == number ? assessment : found);
        numbers = [.. result.Boards.Select(summary => summary.Id.Value)];
        return found is null ? null : new(files.Only([found.Board.Path]), found, result.Findings);
    }
}

/// <summary>A board as it was found.</summary>
/// <param name="Files">The collection, with this board alone.</param>
/// <param name="Assessment">The board.</param>
/// <param name="Findings">What the run found.</param>
internal sealed record FoundBoard(CollectionFolder Files, BoardAssessment Assessment, IReadOnlyList<Finding> Findings);
