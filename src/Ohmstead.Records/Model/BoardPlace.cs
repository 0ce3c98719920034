namespace Ohmstead.Records.Model;

/// <summary>A place of a board, as another board names it: <c>SP-0003 C4</c>.</summary>
/// <param name="Board">The number of the board.</param>
/// <param name="Place">The place on it.</param>
public readonly record struct BoardPlace(string Board, string Place)
{
    /// <summary>How one is written.</summary>
    public const string Example = "SP-0003 C4";

    /// <summary>Reads one; null where it is no number and place with a space between.</summary>
    public static BoardPlace? Parse(string text) =>
        text.Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var board, var place] ? new(board, place) : null;

    /// <inheritdoc/>
    public override string ToString() => $"{Board} {Place}";
}
