using System.Text;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.Running;

namespace Ohmstead.Comparing;

/// <summary>
/// Which lots tie boards together: those of which some pieces were read in the drawer, so that fittings share them out, and those of which
/// more may have been fitted than came. What a board took of any other lot says nothing about the next board.
/// </summary>
/// <param name="sides">What boards refer to, in both states.</param>
/// <param name="folder">The later state, whose files are read.</param>
/// <param name="options">How.</param>
internal sealed class LotsThatMatter(IReadOnlyList<Workshop> sides, CollectionFolder folder, RunOptions options)
{
    /// <summary>Those of some lots that do.</summary>
    /// <param name="lots">The lots.</param>
    public HashSet<string> Among(IReadOnlyCollection<string> lots)
    {
        var matter = lots.Where(lot => sides.Any(side => side.IncomingReadings.Contains(lot))).ToHashSet(StringComparer.Ordinal);
        string[] counted = [.. lots.Where(lot => !matter.Contains(lot) && sides.Any(side => Came(side, lot) is not null))];
        var uses = Count(counted);
        for (var at = 0; at < counted.Length; at++)
        {
            var lot = counted[at];
            if (sides.Any(side => Came(side, lot) is { } came && uses[at] + side.ScrappedOf(lot) > came))
            {
                matter.Add(lot);
            }
        }

        return matter;
    }

    /// <summary>The lots of which two states of boards took other pieces, or ask for others.</summary>
    public static IEnumerable<string> Moved(IEnumerable<PairResult> results) =>
        results.SelectMany(result => Moved(Taken(result.Was), Taken(result.Now))).Distinct(StringComparer.Ordinal);

    private static IEnumerable<string> Moved(Dictionary<string, string> was, Dictionary<string, string> now) =>
        was.Keys.Union(now.Keys, StringComparer.Ordinal).Where(lot => was.GetValueOrDefault(lot) != now.GetValueOrDefault(lot));

    // By lot: where and when pieces of it went in, and what the fittings ask of it. Lines do not count.
    private static Dictionary<string, string> Taken(BoardSummary? board) =>
        board is null
            ? []
            : board
                .Fittings.Select(fitted => (fitted.Lot, Told: fitted.Fitting.ToString()))
                .Concat(board.Claims.Select(claim => (claim.Lot, Told: (claim with { Spot = default, Path = string.Empty }).ToString())))
                .GroupBy(one => one.Lot, StringComparer.Ordinal)
                .ToDictionary(lot => lot.Key, lot => string.Join('\n', lot.Select(one => one.Told)), StringComparer.Ordinal);

    private static int? Came(Workshop side, string lot) => side.Lots.GetValueOrDefault(lot)?.Quantity?.Value;

    // Each fitting names its lot once; a name that stands in a reading or a story as well is counted too often, never too seldom.
    private int[] Count(string[] lots)
    {
        var names = Array.ConvertAll(lots, Encoding.UTF8.GetBytes);
        var uses = new int[lots.Length];
        if (lots.Length > 0)
        {
            SideBySide.Run(folder.Boards.Count, options.Workers, _ =>
            {
                var reader = new FileReader(folder, Yaml.NodeReaders.ForWorker(0), options);
                return at => reader.Holds(folder.Boards[at], text => Add(text, names, uses));
            });
        }

        return uses;
    }

    private static bool Add(ReadOnlySpan<byte> text, byte[][] names, int[] uses)
    {
        for (var at = 0; at < names.Length; at++)
        {
            var count = text.Count(names[at]);
            if (count > 0)
            {
                Interlocked.Add(ref uses[at], count);
            }
        }

        // What is written in escapes is not seen here: it may be any of them.
        if (text.IndexOf((byte)'\\') >= 0)
        {
            for (var at = 0; at < uses.Length; at++)
            {
                Interlocked.Add(ref uses[at], text.Length);
            }
        }

        return true;
    }
}
