using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Notes;

/// <summary>
/// What the inductance of a choke means for the supply it may stand in, and how warm a winding got between two readings of its resistance.
/// </summary>
public static class WindingNotes
{
    // 50 Hz asks for the smaller load resistance of the two mains frequencies: the safe side.
    private const decimal MainsHertz = 50m;

    /// <summary>The notes on one verdict.</summary>
    public static IReadOnlyList<WorkedNote> Compute(BoardAssessment board, AssessedReading reading, Verdict verdict) =>
        verdict.Measured == Measured.Inductance
        && reading.Place?.Values is { Kind.Value: var kind, Role.Value: PartRole.Filter }
        && kind == PartKinds.Inductor
        && verdict.Exact is { } henries
        && ChokeInput.LargestLoadOhms(henries.Value, MainsHertz).Is(out var load, out _)
            ?
            [
                WorkedNote.From(
                    $"if it stands first after a full-wave rectifier at 50 Hz, a load above "
                        + $"{QuantityText.Format(new Quantity(load.Value, Dimension.Resistance), 3)}, bleeder included, lets the "
                        + "voltage climb",
                    load
                ),
            ]
        : Warmed(board, reading, verdict) is { } rise ? [rise]
        : [];

    // Two readings of one winding on one day, the air measured at both: what the second is higher by is the heat of the copper.
    private static WorkedNote? Warmed(BoardAssessment board, AssessedReading reading, Verdict verdict)
    {
        if (
            verdict.Measured != Measured.Resistance
            || reading.Place?.Values.Kind.Value.Family is not (PartFamily.Inductor or PartFamily.Coil)
            || reading.Reading.Temperature is not { } end
            || board.ReadTogether.Before(reading) is not { Reading.Temperature: { } start } cold
            || cold.Place != reading.Place
            || cold.Verdicts.FirstOrDefault(known => known.Measured == Measured.Resistance)?.Exact is not { } coldOhms
            || verdict.Exact is not { } warmOhms
            || warmOhms.Value <= coldOhms.Value
        )
        {
            return null;
        }

        return CopperRise.Kelvin(coldOhms.Value, warmOhms.Value, start.Value.Value, end.Value.Value).Is(out var rise, out _)
            ? WorkedNote.From(
                $"the winding is {QuantityText.Format(new Quantity(rise.Value, Dimension.Number), 3)} K warmer than at the "
                    + $"reading before, if it is copper",
                rise
            )
            : null;
    }
}
