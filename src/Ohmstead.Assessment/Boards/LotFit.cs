using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>Whether the parts of a lot fit a need, by their markings alone: a first sorting of the drawer, not the choice of a replacement.</summary>
/// <remarks>Common practice: the same kind and value; voltage, temperature and power not lower; the safety class the same. What is not written does not fit.</remarks>
public static class LotFit
{
    /// <summary>True when nothing written speaks against it, and enough is written to say so.</summary>
    public static bool Fits(PartValues need, PartValues lot) =>
        need.Kind.Value == lot.Kind.Value
        && IsSameValue(need, lot)
        && IsAtLeast(need.RatedVoltage, lot.RatedVoltage)
        && IsAtLeast(need.Temperature, lot.Temperature)
        && IsAtLeast(need.Power, lot.Power)
        && (need.SafetyClass is null || need.SafetyClass.Value == lot.SafetyClass?.Value)
        && (need.Polarity is null || lot.Polarity is null || PartKind.IsPolarised(need) == PartKind.IsPolarised(lot));

    private static bool IsSameValue(PartValues need, PartValues lot)
    {
        (Written<Quantity>? Need, Written<Quantity>? Lot)[] values =
        [
            (need.Capacitance, lot.Capacitance), (need.Resistance, lot.Resistance), (need.Inductance, lot.Inductance), (need.Frequency, lot.Frequency), (need.Current, lot.Current),
        ];
        var known = values.Where(pair => pair.Need is not null).ToArray();

        // A valve, a transistor or a cell has no value to go by, only its type.
        return known.Length == 0 || need.Type is not null
            ? need.Type is { } type && type.Value == lot.Type?.Value && known.All(IsEqual)
            : known.All(IsEqual);
    }

    private static bool IsEqual((Written<Quantity>? Need, Written<Quantity>? Lot) pair) => pair.Lot is not null && pair.Lot.Value == pair.Need!.Value;

    private static bool IsAtLeast(Written<Quantity>? need, Written<Quantity>? lot) => need is null || (lot is not null && lot.Value.Value >= need.Value.Value);
}
