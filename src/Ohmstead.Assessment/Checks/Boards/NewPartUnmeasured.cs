using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A new part was fitted without having been measured.</summary>
public sealed class NewPartUnmeasured : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("new-part-unmeasured", Severity.Warning, "a new part was fitted without having been measured");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var (visit, work, place, lot) in board.Fittings())
        {
            var measured = board.Assessment.Readings.Any(reading => reading.IsNew && reading.Reading.Lot?.Value == lot.Id.Value && reading.Visit.Date.Value <= visit.Date.Value)
                || board.Workshop.IncomingReadings[lot.Id.Value].Any(pair => pair.Visit.Date.Value <= visit.Date.Value);
            if (!measured && PartKind.Family(lot.Values.Kind.Value) is not (PartFamily.Other or PartFamily.Coil or PartFamily.Transistor))
            {
                yield return board.Finding(
                    Description,
                    work.Spot,
                    $"{place.Part.Ref.Value} was fitted from lot {lot.Id.Value}, of which no reading was taken before",
                    $"add a reading: {{ part: {place.Part.Ref.Value}, lot: {lot.Id.Value}, state: new, ... }}");
            }
        }
    }
}
