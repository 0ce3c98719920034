using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.History;

/// <summary>
/// What a fitting asks of its lot: that the piece which went in is one of those that were read in the drawer, or the one of a name. A piece
/// was in one place, so only the fittings of all boards together show who can have had it.
/// </summary>
/// <param name="Lot">The lot.</param>
/// <param name="Piece">The name of the piece that was read for the place; null where it is to be any piece that was read in the
/// drawer.</param>
/// <param name="Board">The number of the board.</param>
/// <param name="Path">Its file.</param>
/// <param name="Reference">The place.</param>
/// <param name="Day">The day on which it was fitted.</param>
/// <param name="Gone">The day on which it left the place again; null while it sits there.</param>
/// <param name="Spot">Where the work is written.</param>
public sealed record PieceClaim(
    string Lot,
    string? Piece,
    string Board,
    string Path,
    string Reference,
    DateOnly Day,
    DateOnly? Gone,
    Spot Spot
)
{
    /// <summary>The place, as it is told on a board: with the number of the board where that is another.</summary>
    internal string ToldOn(string path) => path == Path ? Reference : $"{Board} {Reference}";
}

/// <summary>What a piece that sits in a place asks of its lot.</summary>
/// <param name="Loose">A piece of the lot that was read at the bench of this board, for no place, and went in here; null when there is
/// none.</param>
/// <param name="Claim">What it asks; null where it was read itself, or nothing was read in the drawer.</param>
internal readonly record struct PieceAsked(AssessedReading? Loose, PieceClaim? Claim);

/// <summary>What a fitting gets of what it asks.</summary>
/// <param name="By">The reading in the drawer of the piece that it can have had; null where no such piece is left, and for a piece of a
/// name.</param>
/// <param name="Instead">The fitting that has the piece, or may have it; null where nobody else has.</param>
/// <param name="IsTied">True when both were fitted on one day, so that which of the two has it is not known.</param>
public sealed record PieceShare(AssessedReading? By, PieceClaim? Instead, bool IsTied)
{
    /// <summary>Why there is no piece for it, as it is told on a board; null where nobody else has one.</summary>
    internal string? Told(string path) =>
        Instead is not { } other ? null
        : IsTied
            ? $"fewer pieces were read in the drawer than were fitted that day, here and at {other.ToldOn(path)}, and which is not known"
        : $"what was read in the drawer counts for {other.ToldOn(path)}, which was fitted before it";

    /// <summary>Whether two shares say the same.</summary>
    internal bool IsLike(PieceShare? other) =>
        other is not null && IsTied == other.IsTied && Equals(Instead, other.Instead) && ReferenceEquals(By?.Reading, other.By?.Reading);
}

/// <summary>A piece that was read in the drawer and passed.</summary>
/// <param name="Name">Its name, or null.</param>
/// <param name="By">The reading that passed it.</param>
public sealed record PassedPiece(string? Name, AssessedReading By);
