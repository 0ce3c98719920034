using Ohmstead.Assessment.Boards;
using Ohmstead.Records.Model;

namespace Ohmstead.Collections;

/// <summary>
/// The boards of a collection beside those that a run looks at. Only those count that name a lot or a number of these, or the number of a
/// board that one of these took a part from; they are found by the text of their files, which costs a hundredth of reading the records, and
/// only they are read. What was found is kept for the next run over the same boards.
/// </summary>
/// <remarks>An instance is used by one thread at a time.</remarks>
/// <param name="paths">The files of the other boards.</param>
internal sealed class Neighbours(IReadOnlyList<string> paths)
{
    private readonly HashSet<string> all = [.. paths];
    private readonly HashSet<string> lots = new(StringComparer.Ordinal);
    private readonly HashSet<string> numbers = new(StringComparer.Ordinal);
    private IReadOnlyList<BoardSummary> found = [];

    /// <summary>The lots that count; null for all.</summary>
    public IReadOnlySet<string>? Lots { get; init; }

    /// <summary>Whether a file is that of another board.</summary>
    public bool Holds(string path) => all.Contains(path);

    /// <summary>What is kept of the boards that name a lot or a number of these.</summary>
    /// <param name="boards">The boards that are looked at.</param>
    /// <param name="reader">Reads files.</param>
    /// <param name="judge">Judges boards by themselves.</param>
    public IReadOnlyList<BoardSummary> Find(
        IReadOnlyList<BoardSummary> boards,
        FileReader reader,
        Func<IReadOnlyList<string>, IReadOnlyList<BoardSummary>> judge
    )
    {
        var isNew = false;
        foreach (var board in boards)
        {
            isNew |= numbers.Add(board.Id.Value);
            foreach (var former in board.Formerly)
            {
                isNew |= numbers.Add(former.Value);
            }

            foreach (var taken in board.Transfers.Taken)
            {
                isNew |= BoardPlace.Parse(taken.From.Value) is { } from && numbers.Add(from.Board);
            }

            foreach (var (lot, _) in board.Fittings)
            {
                isNew |= Lots?.Contains(lot) != false && lots.Add(lot);
            }
        }

        if (isNew)
        {
            var names = new NamesInText(lots, numbers);
            found = judge([.. paths.Where(path => reader.Holds(path, names.MayStandIn))]);
        }

        return found;
    }
}
