using System.Collections.Immutable;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Life;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Shelf.Ages;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>Computes everything that follows from the record of a board and the workshop's.</summary>
/// <remarks>It keeps what is the same for many boards in mind, so an instance is used by one thread at a time; each worker has its
/// own.</remarks>
public sealed class Assessor
{
    private readonly Workshop workshop;
    private readonly ReadingJudge judge;
    private readonly LotPiecesMemo lots;
    private readonly LotDatesMemo lotDates = new();

    /// <summary>Assesses boards of a workshop.</summary>
    /// <param name="workshop">What boards refer to.</param>
    public Assessor(Workshop workshop)
        : this(workshop, new()) { }

    /// <summary>Assesses boards of a workshop.</summary>
    /// <param name="workshop">What boards refer to.</param>
    /// <param name="memo">What is known already.</param>
    public Assessor(Workshop workshop, JudgeMemo memo)
    {
        this.workshop = workshop;
        judge = new(workshop, memo);
        lots = new(workshop, judge);
    }

    /// <summary>Assesses one board by itself: it takes the pieces of lots that it asks for.</summary>
    public BoardAssessment Assess(BoardFile board) => Assess(board, PieceShares.None);

    /// <summary>Assesses one board.</summary>
    /// <param name="board">The record.</param>
    /// <param name="pieces">Which fitting has which piece of a lot, once all boards were compared; none before that.</param>
    public BoardAssessment Assess(BoardFile board, PieceShares pieces)
    {
        var design = board.Design is { } name ? workshop.Designs.GetValueOrDefault(name.Value) : null;
        var parts = BoardWithDesign.Merge(board.Parts, design?.Parts ?? []);
        var points = BoardWithDesign.Merge(board.Points, design?.Points ?? []);
        var bench = CorrectedBench.From(InOrder(board.Bench), parts, workshop.Lots);
        var visits = bench.Visits;
        var timeline = new Timeline(visits, parts);
        var read = new BoardReadings(workshop, judge, timeline, parts, points, bench);
        var readings = read.Readings();
        var builder = new PlaceBuilder(workshop, timeline, judge, readings);
        ImmutableArray<PlaceHistory> places = [.. parts.Values.Select(builder.Build)];
        var history = new BoardHistory(
            board,
            design,
            visits,
            places,
            readings,
            [.. points.Values],
            read.Proofs(),
            AnsweredFinding.Collect(visits, timeline, parts, PictureTubes.Among([.. board.Hazards, .. design?.Hazards ?? []])),
            BoardHazards.Collect(board, design, visits, timeline, places),
            timeline.LastWork
        )
        {
            Doubtful = bench.Doubtful,
        };
        var sitting = NewPiece.On(places, lotDates.For);
        var (claims, asked) = new BoardClaims(board, timeline, readings, workshop).Collect(sitting);
        var shares = pieces.IsEmpty ? PieceShares.ShareOut(claims, lots.Passed) : pieces;
        return new(history)
        {
            Claims = claims,
            Fitted = [.. sitting.Zip(asked, (piece, asks) => Fitted(piece, asks, shares))],
            LookAgain = history.Whereabouts.IsKeptUp ? LookAgainAfter(visits) : null,
            Lives = WearOutLife.For(places, BoardDuty.For(board, workshop.Collection), board.Made ?? design?.Made),
            Replacements = Replacement.Collect(history, workshop),
            Drifts = [.. BoardDrifts.Find(history)],
        };
    }

    // Most records are written day after day, and then nothing moves.
    private static ImmutableArray<BenchVisit> InOrder(ImmutableArray<BenchVisit> bench)
    {
        for (var at = 1; at < bench.Length; at++)
        {
            if (bench[at].Date.Value < bench[at - 1].Date.Value)
            {
                return [.. bench.OrderBy(visit => visit.Date.Value)];
            }
        }

        return bench;
    }

    private FittedPiece Fitted(NewPiece piece, PieceAsked asked, PieceShares shares) =>
        new(piece, asked, asked.Claim is { } claim ? shares.For(claim) : null, piece.Work.Lot is { } lot ? lots.DoubtOf(lot.Value) : null);

    private DateOnly? LookAgainAfter(ImmutableArray<BenchVisit> visits) =>
        visits.Length > 0 && workshop.Collection.LookEvery is { } every
            ? CalendarSpan.After(visits[^1].Date.Value, every.Value.Value)
            : null;
}
