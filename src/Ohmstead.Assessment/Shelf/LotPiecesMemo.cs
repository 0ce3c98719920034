using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Shelf;

/// <summary>What was read of the lots in the drawer. Lots are few, and their parts go to many boards. Used by one thread at a
/// time.</summary>
/// <param name="workshop">The drawer.</param>
/// <param name="judge">Judges what was read.</param>
internal sealed class LotPiecesMemo(Workshop workshop, ReadingJudge judge)
{
    private readonly Dictionary<string, LotPieces> pieces = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string?> doubts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IReadOnlyList<PassedPiece>> passed = new(StringComparer.Ordinal);

    /// <summary>
    /// The pieces of a lot that were read in the drawer after it came, passed and are not in the bin, in order of the day on which they
    /// passed.
    /// </summary>
    internal IReadOnlyList<PassedPiece> Passed(string lot)
    {
        if (!passed.TryGetValue(lot, out var known))
        {
            passed[lot] = known = workshop.Lots.TryGetValue(lot, out var of)
                ? [.. PassedOf(of).OrderBy(one => one.By.Visit.Date.Value)]
                : [];
        }

        return known;
    }

    private IEnumerable<PassedPiece> PassedOf(Lot lot)
    {
        var (came, kind) = (lot.Received?.Value.Earliest ?? DateOnly.MinValue, lot.Values.Kind.Value);
        bool IsPass(AssessedReading reading) => reading.Visit.Date.Value >= came && NewPiece.Passes(reading, kind);
        foreach (var piece in PiecesOf(lot.Id.Value).Pieces)
        {
            if (!piece.IsScrapped && piece.Readings.FirstOrDefault(IsPass) is { } by)
            {
                yield return new(by.Reading.Piece?.Value, by);
            }
        }
    }

    /// <summary>Why a lot is doubted as a whole, in words; null when it is not.</summary>
    internal string? DoubtOf(string lot)
    {
        if (!doubts.TryGetValue(lot, out var doubt))
        {
            doubts[lot] = doubt = PiecesOf(lot) is { IsDoubted: true } doubted ? doubted.DoubtInWords : null;
        }

        return doubt;
    }

    private LotPieces PiecesOf(string lot)
    {
        if (!pieces.TryGetValue(lot, out var known))
        {
            pieces[lot] = known = LotPieces.Gather(workshop, judge, lot);
        }

        return known;
    }
}
