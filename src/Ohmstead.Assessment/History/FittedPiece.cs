using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>A new piece that sits in a place, with what it has of its lot.</summary>
public sealed record FittedPiece : NewPiece
{
    /// <summary>Joins what is known of a piece.</summary>
    /// <param name="piece">The piece, as the history of its place tells it.</param>
    /// <param name="asked">What it asks of its lot.</param>
    /// <param name="share">What it gets of that, as far as is known; null where it asks nothing.</param>
    /// <param name="lotDoubt">Why its lot is doubted as a whole, in words; null when it is not.</param>
    internal FittedPiece(NewPiece piece, PieceAsked asked, PieceShare? share, string? lotDoubt)
        : base(piece) => (Loose, Claim, Share, LotDoubt) = (asked.Loose, asked.Claim, share, lotDoubt);

    /// <summary>The reading that measured this very piece and passed it, before it was fitted or since; null when there is none.</summary>
    public AssessedReading? MeasuredBy => ReadAt is not null ? null : Own ?? (IsAmongBad ? null : Loose ?? Share?.By);

    /// <summary>
    /// The fitting for which a piece of the same name of the same lot was read already, so that it cannot be this one; null when there is
    /// none.
    /// </summary>
    public PieceClaim? ReadAt => Claim?.Piece is null ? null : Share?.Instead;

    /// <summary>What it asks of its lot; null where it was read itself, or nothing was read in the drawer.</summary>
    public PieceClaim? Claim { get; }

    /// <summary>What it gets of that, as far as is known; null where it asks nothing.</summary>
    public PieceShare? Share { get; }

    /// <summary>Why its lot is doubted as a whole, in words; null when it is not.</summary>
    public string? LotDoubt { get; }

    /// <summary>
    /// A piece of the lot that was read at the bench of this board, for no place, and went in here; null when there is none.
    /// </summary>
    internal AssessedReading? Loose { get; }

    /// <summary>Its name among the pieces of its lot, where what was read of it itself gives it one.</summary>
    internal Written<string>? Named => (Own ?? Loose)?.Reading.Piece;

    // Where a piece of the lot was bad and nothing says which went in, what was read of another says nothing of this one.
    private bool IsAmongBad => Place.Counting.Any(static reading => reading.Place is null && reading.Overall == VerdictOutcome.Outside);
}
