using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>An instrument was used past its calibration.</summary>
public sealed class CalibrationExpired : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("calibration-expired", Severity.Warning, "an instrument was used past its calibration");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var visit in board.Assessment.Visits.Where(visit => visit.Date.Value <= board.Today))
        {
            var used = visit.Readings.Select(reading => reading.Instrument ?? visit.Instrument).Concat(visit.Proofs.Select(proof => proof.Instrument ?? visit.Instrument)).OfType<Written<string>>();
            foreach (var name in used.DistinctBy(name => name.Value, StringComparer.Ordinal))
            {
                if (board.Workshop.Instruments.TryGetValue(name.Value, out var instrument) && CalibrationRules.Lapse(instrument, visit.Date.Value) is { } lapse)
                {
                    yield return board.Finding(Description, name.Spot, $"instrument {name.Value} was used on {visit.Date.Text}, {lapse}", "take the readings again with a calibrated instrument, or add the calibration to instruments.yaml");
                }
            }
        }
    }
}
