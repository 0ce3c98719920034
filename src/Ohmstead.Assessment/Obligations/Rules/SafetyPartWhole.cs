using Ohmstead.Assessment.Boards;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>
/// A part that people rely on not to be hurt is not repaired, modified or set: a fuse that was bridged is none. It is replaced by its like. Common practice;
/// defer to local codes and licensed practice.
/// </summary>
public sealed class SafetyPartWhole : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "safety-part-whole";

    /// <inheritdoc/>
    public string Asks => "a part that people rely on not to be hurt was not repaired, modified or set, but replaced";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Of(BoardUnderObligation board)
    {
        foreach (var place in board.Board.Places.Where(place => place.IsSafetyRelevant && !place.IsEmpty))
        {
            for (var order = Math.Max(place.Since.Visit, 0); order < board.Board.Visits.Length; order++)
            {
                foreach (var work in board.Board.Visits[order].Work)
                {
                    if (work.Did.Value is WorkKind.Repaired or WorkKind.Modified or WorkKind.Adjusted && IsAt(work, place) && Moment.Of(order, work.Spot) > place.Since)
                    {
                        yield return Obligation.Open(
                            Kind, BoardState.FaultStands, place.Part.Ref.Value,
                            $"{place.Values.Kind.Text}, {work.Did.Text} on {BoardUnderObligation.Day(board.Board.Visits[order])}: people rely on it not to be hurt", "replace it by its like; defer to local codes and licensed practice") with { NeedsPart = true };
                    }
                }
            }
        }
    }

    private static bool IsAt(WorkEntry work, PlaceHistory place) => work.Part?.Value == place.Part.Ref.Value || work.At?.Value == place.Part.Ref.Value;
}
