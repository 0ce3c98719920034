using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Notes;

/// <summary>What the inductance of a choke means for the supply it may stand in.</summary>
public static class WindingNotes
{
    // 50 Hz asks for the smaller load resistance of the two mains frequencies: the safe side.
    private const decimal MainsHertz = 50m;

    /// <summary>The notes on one verdict.</summary>
    public static IReadOnlyList<WorkedNote> Of(AssessedReading reading, Verdict verdict) =>
        verdict.Measured == Measured.Inductance && reading.Place?.Values is { Kind.Value: "inductor", Role.Value: "filter" }
        && ChokeInput.LargestLoadOhms(verdict.Reading.Value.Value, MainsHertz).Is(out var load, out _)
            ? [WorkedNote.Of($"if it stands first after a full-wave rectifier at 50 Hz, a load above {QuantityText.Format(new Quantity(load.Value, Dimension.Resistance), 3)}, bleeder included, lets the voltage climb", load)]
            : [];
}
