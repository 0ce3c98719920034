using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Changes;
using Ohmstead.Collections;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Model;

namespace Ohmstead.Comparing;

/// <summary>Which boards can be judged otherwise, beside those whose records differ.</summary>
/// <param name="sides">The two states.</param>
/// <param name="pairs">All boards.</param>
/// <param name="shared">What differs in the files that boards share.</param>
/// <param name="ties">Which lots tie boards together.</param>
internal sealed class ComparedScope(
    (ComparedSide Was, ComparedSide Now) sides,
    IReadOnlyList<BoardPair> pairs,
    IReadOnlyList<InputDifference> shared,
    LotsThatMatter ties
)
{
    /// <summary>The other boards that name something which differs: a lot, an order, an instrument, a design, or a number or a lot of a
    /// board that differs.</summary>
    /// <param name="looked">The boards that differ.</param>
    /// <param name="results">What is kept of them.</param>
    /// <param name="reader">Reads the later state.</param>
    public BoardPair[] Beside(IReadOnlyList<BoardPair> looked, IReadOnlyList<PairResult> results, FileReader reader)
    {
        var names = Touched();
        names.UnionWith(Designs());
        names.UnionWith(ties.Among([.. LotsThatMatter.Moved(results)]));
        var numbers = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (old, board) in results.Select(result => (result.Was, result.Now)))
        {
            // What a board is named, and from which others it took parts, matters to those only where it differs.
            var (before, after) = (NumbersOf(old), NumbersOf(board));
            before.SymmetricExceptWith(after);
            numbers.UnionWith(before);
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

    /// <summary>The lots of which anything differs: what the stock says of them, or what boards took of them.</summary>
    public HashSet<string> Lots(IEnumerable<PairResult> results)
    {
        var names = Touched();
        names.UnionWith(LotsThatMatter.Moved(results));
        return names;
    }

    // The lots, orders and instruments that differ.
    private HashSet<string> Touched()
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var one in shared)
        {
            switch (one.Entry.Entry.Kind)
            {
                case EntryKind.Lot or EntryKind.Order or EntryKind.Instrument or EntryKind.Reading or EntryKind.Scrapped:
                    names.Add(one.Entry.Entry.Of);
                    break;
                case EntryKind.Calibration or EntryKind.Accuracy:
                    names.Add(one.Entry.Entry.Of.Split(' ')[0]);
                    break;
            }
        }

        return names;
    }

    private static HashSet<string> NumbersOf(BoardSummary? board) =>
        board is null
            ? []
            :
            [
                board.Id.Value,
                .. board.Formerly.Select(former => former.Value),
                .. board.Transfers.Taken.Select(taken => BoardPlace.Parse(taken.From.Value)?.Board).OfType<string>(),
            ];

    /// <summary>What is kept of the boards that are looked at, and of those beside them that share a lot or a number with them.</summary>
    public IReadOnlyList<BoardSummary> All(
        IReadOnlyList<PairResult> results,
        bool isEarlier,
        IReadOnlyList<BoardPair> looked,
        Func<IReadOnlyList<string>, IReadOnlyList<BoardSummary>> judge
    )
    {
        BoardSummary[] boards = [.. results.Select(result => isEarlier ? result.Was : result.Now).OfType<BoardSummary>()];
        var side = isEarlier ? sides.Was : sides.Now;
        var known = looked.Select(pair => isEarlier ? pair.Was : pair.Now).OfType<string>().ToHashSet(StringComparer.Ordinal);
        string[] others = [.. side.Folder.Boards.Where(path => !known.Contains(path))];
        if (others.Length > 0 && boards.Length > 0)
        {
            // Boards that are not looked at are the same in both states, so that the later one is read, which lies on the disk more often.
            var reader = new FileReader(
                sides.Now.Folder,
                Yaml.NodeReaders.ForWorker(0),
                new(default, false, 1, Records.Nodes.ReadingLimits.Usual)
            );
            var lots = Lots(results);
            lots.UnionWith(ties.Among([.. boards.SelectMany(board => board.Fittings).Select(fitted => fitted.Lot).Distinct()]));
            boards = [.. boards, .. new Neighbours(others) { Lots = lots }.Find(boards, reader, judge)];
        }

        return [.. boards.OrderBy(board => board.Path, StringComparer.Ordinal)];
    }

    private IEnumerable<string> Designs() =>
        shared
            .Where(one => one.File == InputFile.Design)
            .Select(one => Path.GetFileNameWithoutExtension(one.Now ?? one.Was)!)
            .Distinct(StringComparer.Ordinal);
}
