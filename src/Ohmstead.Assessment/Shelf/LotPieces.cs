using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Shelf;

/// <summary>One piece of a lot that was read in the drawer.</summary>
/// <param name="Readings">What was read of it, oldest first.</param>
/// <param name="IsFailed">True when what stands of it is outside its limit, or its test failed.</param>
/// <param name="IsScrapped">True when it went to the bin.</param>
public sealed record LotPiece(ImmutableArray<AssessedReading> Readings, bool IsFailed, bool IsScrapped);

/// <summary>
/// A lot as the pieces that it is: which of them were read, which failed, which went to the bin. One bad piece condemns itself alone; a lot
/// is doubted as a whole when pieces of it fail again and again.
/// </summary>
public sealed class LotPieces
{
    /// <summary>From this share of bad pieces on, the lot is doubted as a whole. Common practice: of new parts hardly one in a hundred is
    /// bad.</summary>
    public const double DoubtedShare = 0.2;

    /// <summary>A single bad piece is no pattern, however few were looked at. Common practice.</summary>
    public const int FewestBad = 2;

    private LotPieces(ImmutableArray<LotPiece> pieces, int scrapped, int goodOnBoards)
    {
        Pieces = pieces;
        Scrapped = scrapped;
        Bad = scrapped + pieces.Count(piece => piece is { IsFailed: true, IsScrapped: false });
        Looked = Bad + goodOnBoards + pieces.Count(piece => piece is { IsFailed: false, IsScrapped: false });
    }

    /// <summary>The pieces that were read in the drawer, in order of their first reading.</summary>
    public ImmutableArray<LotPiece> Pieces { get; }

    /// <summary>How many went to the bin.</summary>
    public int Scrapped { get; }

    /// <summary>How many were bad: those in the bin, and those that failed and are still with the others.</summary>
    public int Bad { get; }

    /// <summary>How many were looked at: read in the drawer or for the place that they went to, or thrown away.</summary>
    public int Looked { get; }

    /// <summary>The visit of the first piece that failed and was not thrown away; null when there is none.</summary>
    public BenchVisit? FailedOn =>
        Pieces
            .FirstOrDefault(piece => piece is { IsFailed: true, IsScrapped: false })
            ?.Readings.First(reading => reading.Overall == VerdictOutcome.Outside)
            .Visit;

    /// <summary>What was read of pieces that are not in the bin.</summary>
    public IEnumerable<AssessedReading> StillThere => Pieces.Where(piece => !piece.IsScrapped).SelectMany(piece => piece.Readings);

    /// <summary>Whether the lot is doubted as a whole.</summary>
    public bool IsDoubted => Bad >= FewestBad && Bad >= DoubtedShare * Looked;

    /// <summary>The share of bad pieces in words, with its interval where enough were looked at; null when none was bad.</summary>
    public string? ShareInWords =>
        Bad == 0
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"{Bad} of {Looked} looked at {(Bad == 1 ? "was" : "were")} bad")
                + (
                    ShareFailed.Compute(Bad, Looked) is { } share
                        ? string.Create(
                            CultureInfo.InvariantCulture,
                            $" ({FamilyWords.Percent(share.Share)}, with 95 % between {FamilyWords.Percent(share.Low)} and "
                                + $"{FamilyWords.Percent(share.High)})"
                        )
                        : string.Empty
                );

    /// <summary>Why a lot is doubted as a whole, with the rule.</summary>
    public string DoubtInWords =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{ShareInWords}: from {FewestBad} pieces and {FamilyWords.Percent(DoubtedShare)} on a lot is doubted as a whole (common "
                + $"practice)"
        );

    /// <summary>The pieces of a lot.</summary>
    /// <param name="workshop">The drawer.</param>
    /// <param name="judge">Judges what was read.</param>
    /// <param name="lot">The name of the lot.</param>
    /// <param name="goodOnBoards">How many were read for the place that they went to, and did not fail.</param>
    public static LotPieces Gather(Workshop workshop, ReadingJudge judge, string lot, int goodOnBoards = 0)
    {
        var read = Grouped(
            workshop
                .IncomingReadings[lot]
                .OrderBy(pair => pair.Visit.Date.Value)
                .Select(pair => judge.AssessIncoming(pair.Visit, pair.Reading))
        );
        var scraps = workshop.Scrapped[lot].ToArray();
        var isFailed = read.ConvertAll(IsFailed);
        var isScrapped = new bool[read.Count];
        foreach (var (_, scrap) in scraps)
        {
            if (scrap.Piece is { } name && read.FindIndex(piece => piece[0].Reading.Piece?.Value == name.Value) is >= 0 and var at)
            {
                isScrapped[at] = true;
            }
        }

        // Whoever throws a piece away without saying which throws away one that had failed by then.
        foreach (var (visit, scrap) in scraps.Where(pair => pair.Scrapped.Piece is null))
        {
            var left = scrap.Count.Value;
            for (var at = 0; at < read.Count && left > 0; at++)
            {
                if (isFailed[at] && !isScrapped[at] && read[at][0].Visit.Date.Value <= visit.Date.Value)
                {
                    isScrapped[at] = true;
                    left--;
                }
            }
        }

        return new(
            [.. read.Select((piece, at) => new LotPiece([.. piece], isFailed[at], isScrapped[at]))],
            scraps.Sum(pair => pair.Scrapped.Count.Value),
            goodOnBoards
        );
    }

    /// <summary>Incoming readings of the pieces of a lot that are not in the bin.</summary>
    internal static IEnumerable<(BenchVisit Visit, Reading Reading)> ReadingsStillThere(Workshop workshop, string lot) =>
        workshop.Scrapped.Contains(lot)
            ? Gather(workshop, new ReadingJudge(workshop), lot).StillThere.Select(reading => (reading.Visit, reading.Reading))
            : workshop.IncomingReadings[lot];

    // Readings that name a piece are of that piece. Of those that name none, the readings of one visit are of one piece until a quantity
    // comes again.
    internal static List<List<AssessedReading>> Grouped(IEnumerable<AssessedReading> readings)
    {
        var pieces = new List<List<AssessedReading>>();
        List<AssessedReading>? unnamed = null;
        foreach (var reading in readings)
        {
            if (reading.Reading.Piece is { } name)
            {
                Add(pieces, pieces.Find(piece => piece[0].Reading.Piece?.Value == name.Value), reading);
            }
            else
            {
                unnamed =
                    unnamed is not null
                    && ReferenceEquals(unnamed[0].Visit, reading.Visit)
                    && !unnamed.Exists(other => HaveOneQuantity(other, reading))
                        ? unnamed
                        : null;
                unnamed = Add(pieces, unnamed, reading);
            }
        }

        return pieces;
    }

    private static List<AssessedReading> Add(List<List<AssessedReading>> pieces, List<AssessedReading>? piece, AssessedReading reading)
    {
        if (piece is null)
        {
            pieces.Add(piece = []);
        }

        piece.Add(reading);
        return piece;
    }

    private static bool HaveOneQuantity(AssessedReading one, AssessedReading other) =>
        one.Reading.Values.Any(value => other.Reading.Values.Any(known => known.Measured == value.Measured))
        || (one.Reading.Result is not null && other.Reading.Result is not null);

    // Of one quantity what was read later stands, as it does at a place.
    private static bool IsFailed(List<AssessedReading> piece)
    {
        var standing = new Dictionary<Measured, VerdictOutcome>();
        var outside = false;
        foreach (var reading in piece)
        {
            foreach (var verdict in reading.Verdicts)
            {
                if (!standing.TryGetValue(verdict.Measured, out var before) || Outcomes.Outweighs(verdict.Outcome, before))
                {
                    standing[verdict.Measured] = verdict.Outcome;
                }
            }

            outside = reading.Reading.Result is null ? outside : Outcomes.Together([], reading.Reading.Result) == VerdictOutcome.Outside;
        }

        return outside || standing.ContainsValue(VerdictOutcome.Outside);
    }
}
