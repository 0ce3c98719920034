using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Changes;
using Ohmstead.Collections;
using Ohmstead.Records.Entries;

namespace Ohmstead.Comparing;

/// <summary>Which boards can be judged otherwise, beside those whose records differ.</summary>
/// <param name="was">The earlier state.</param>
/// <param name="now">The later one.</param>
/// <param name="pairs">All boards.</param>
/// <param name="shared">What differs in the files that boards share.</param>
internal sealed class ComparedScope(
    ComparedSide was,
    ComparedSide now,
    IReadOnlyList<BoardPair> pairs,
    IReadOnlyList<InputDifference> shared
)
{
    /// <summary>The other boards that name something which differs: a lot, an order, an instrument, a design, or a number or a lot of a
    /// board that differs.</summary>
    /// <param name="looked">The boards that differ.</param>
    /// <param name="results">What is kept of them.</param>
    /// <param name="reader">Reads the later state.</param>
    public BoardPair[] Beside(IReadOnlyList<BoardPair> looked, IReadOnlyList<PairResult> results, FileReader reader)
    {
        var (names, numbers) = (Lots(results), new HashSet<string>(StringComparer.Ordinal));
        names.UnionWith(Designs());
        foreach (var board in results.SelectMany(result => new[] { result.Was, result.Now }).OfType<BoardSummary>())
        {
            numbers.Add(board.Id.Value);
            numbers.UnionWith(board.Formerly.Select(former => former.Value));
            numbers.UnionWith(
                board.Transfers.Taken.Select(taken => Records.Model.BoardPlace.Parse(taken.From.Value)?.Board).OfType<string>()
            );
        }

        // An empty name stands in every text.
        names.Remove(string.Empty);
        if (names.Count + numbers.Count == 0)
        {
            return [];
        }

        var search = new NamesInText(names, numbers);
        var known = looked.ToHashSet();
        return [.. pairs.Where(pair => pair.Now is { } path && !known.Contains(pair) && reader.Holds(path, search.MayStandIn))];
    }

    /// <summary>The lots, instruments and orders that differ, and the lots of boards.</summary>
    public HashSet<string> Lots(IEnumerable<PairResult> results)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var one in shared)
        {
            switch (one.Entry.Entry.Kind)
            {
                case EntryKind.Lot or EntryKind.Order or EntryKind.Instrument:
                    names.Add(one.Entry.Entry.Of);
                    break;
                case EntryKind.Calibration or EntryKind.Accuracy:
                    names.Add(one.Entry.Entry.Of.Split(' ')[0]);
                    break;
                case EntryKind.Reading or EntryKind.Scrapped:
                    names.Add(one.Entry.Entry.Of);
                    break;
            }
        }

        foreach (var board in results.SelectMany(result => new[] { result.Was, result.Now }).OfType<BoardSummary>())
        {
            names.UnionWith(board.Fittings.Select(fitted => fitted.Lot));
        }

        return names;
    }

    /// <summary>What is kept of the boards that are looked at, and of those beside them that share a lot or a number with them.</summary>
    public IReadOnlyList<BoardSummary> All(
        IEnumerable<BoardSummary?> own,
        bool isEarlier,
        IReadOnlyList<BoardPair> looked,
        Func<IReadOnlyList<string>, IReadOnlyList<BoardSummary>> judge
    )
    {
        BoardSummary[] boards = [.. own.OfType<BoardSummary>()];
        var side = isEarlier ? was : now;
        var known = looked.Select(pair => isEarlier ? pair.Was : pair.Now).OfType<string>().ToHashSet(StringComparer.Ordinal);
        string[] others = [.. side.Folder.Boards.Where(path => !known.Contains(path))];
        if (others.Length > 0 && boards.Length > 0)
        {
            // Boards that are not looked at are the same in both states, so that the later one is read, which lies on the disk more often.
            var reader = new FileReader(
                now.Folder,
                Yaml.NodeReaders.ForWorker(0),
                new(default, false, 1, Records.Nodes.ReadingLimits.Usual)
            );
            boards = [.. boards, .. new Neighbours(others).Find(boards, reader, judge)];
        }

        return [.. boards.OrderBy(board => board.Path, StringComparer.Ordinal)];
    }

    private IEnumerable<string> Designs() =>
        shared
            .Where(one => one.File == InputFile.Design)
            .Select(one => Path.GetFileNameWithoutExtension(one.Now ?? one.Was)!)
            .Distinct(StringComparer.Ordinal);
}
