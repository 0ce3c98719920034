using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>An instrument was used past its calibration.</summary>
public sealed class CalibrationExpired : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "calibration-expired",
            Severity.Warning,
            "an instrument was used past its calibration",
            CheckEffect.SaidElsewhere,
            "readings of an instrument long out of calibration are undecided, and count as such"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var visit in board.Assessment.Visits.Where(visit => visit.Date.Value <= board.Today))
        {
            foreach (var name in Used(visit))
            {
                if (
                    board.Workshop.Instruments.TryGetValue(name.Value, out var instrument)
                    && CalibrationRules.Lapse(instrument, visit.Date.Value) is { } lapse
                )
                {
                    yield return board.Finding(
                        Description,
                        name.Spot,
                        $"instrument {name.Value} was used on {visit.Date.Text}, {lapse}",
                        "take the readings again with a calibrated instrument, or add the calibration to instruments.yaml"
                    );
                }
            }
        }
    }

    // Each instrument once, where it is named first: one or two a visit.
    private static List<Written<string>> Used(BenchVisit visit)
    {
        var used = new List<Written<string>>(2);
        for (var at = 0; at < visit.Readings.Length; at++)
        {
            Add(used, visit.Readings[at].Instrument ?? visit.Instrument);
        }

        for (var at = 0; at < visit.Proofs.Length; at++)
        {
            Add(used, visit.Proofs[at].Instrument ?? visit.Instrument);
        }

        return used;
    }

    private static void Add(List<Written<string>> used, Written<string>? name)
    {
        if (name is null)
        {
            return;
        }

        foreach (var known in used)
        {
            if (known.Value == name.Value)
            {
                return;
            }
        }

        used.Add(name);
    }
}
