using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A replacement does not have the safety class that the place needs.</summary>
public sealed class ReplacementSafetyClassLower : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("replacement-safety-class-lower", Severity.Error, "a replacement does not have the safety class that the place needs");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var (_, work, place, lot) in board.Fittings())
        {
            if (place.Part.Values.SafetyClass is { } was && !MayReplace(was.Value, lot.Values.SafetyClass?.Value))
            {
                yield return board.Finding(
                    Description,
                    work.Spot,
                    $"{place.Part.Ref.Value} needs safety class {was.Value}, lot {lot.Id.Value} has {lot.Values.SafetyClass?.Value ?? "none"}",
                    $"fit a part of class {was.Value} or better; defer to local codes and licensed practice")
                    with { Related = board.InStock(lot) };
            }
        }
    }

    // A Y part may stand in for an X part, never the other way; a lower number stands in for a higher one of the same letter. IEC 60384-14, from memory.
    private static bool MayReplace(string was, string? now) =>
        now is not null && now.Length == 2 && now[1] <= was[1] && (now[0] == was[0] || (now[0] == 'Y' && was[0] == 'X'));
}
