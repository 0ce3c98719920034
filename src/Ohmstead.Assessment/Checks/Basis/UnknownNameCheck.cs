using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>A check of names that must be known elsewhere.</summary>
/// <param name="description">What it is called and looks for.</param>
/// <param name="key">The key that the name stands behind, for the text to write.</param>
internal sealed class UnknownNameCheck(CheckDescription description, string key) : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description => description;

    /// <summary>The names that the record uses.</summary>
    public required Func<BoardUnderCheck, IEnumerable<Written<string>>> Named { get; init; }

    /// <summary>Whether something has the name, or may have it and could not be read.</summary>
    public required Func<BoardUnderCheck, string, bool> Has { get; init; }

    /// <summary>All names that are known, of which the nearest is told.</summary>
    public required Func<BoardUnderCheck, IEnumerable<string>> Known { get; init; }

    /// <summary>What is missing.</summary>
    public required Func<string, string> Missing { get; init; }

    /// <summary>How to make the name known, as words that can follow 'or'.</summary>
    public required Func<string, string> Add { get; init; }

    /// <summary>How to go on when no known name is near, where that is more than to add it.</summary>
    public Func<string, string>? Otherwise { get; init; }

    /// <summary>What is told of a name that is several of those that are known, and what to write; null where it is one name.</summary>
    public Func<BoardUnderCheck, string, (string Message, string Next)?>? Several { get; init; }

    // More names in one line are not read to their end.
    private const int MostListed = 6;

    private string[]? Listed(BoardUnderCheck board) =>
        Otherwise is null && Known(board).Take(MostListed + 1).ToArray() is { Length: > 0 and <= MostListed } few ? few : null;

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        KnownNames? known = null;
        string[]? listed = null;
        foreach (var name in Named(board))
        {
            if (!Has(board, name.Value) && Several?.Invoke(board, name.Value) is var (message, next))
            {
                yield return new(Description.Name, Description.Severity, name.Spot.In(board.Board.Path), message, next);
            }
            else if (!Has(board, name.Value))
            {
                if (known is null)
                {
                    (known, listed) = (new(Known(board)), Listed(board));
                }

                yield return new UnknownName(key, Add(name.Value)) { Otherwise = Otherwise?.Invoke(name.Value), Listed = listed }.In(
                    board.Board.Path,
                    Description,
                    name,
                    Missing(name.Value),
                    known
                );
            }
        }
    }
}
