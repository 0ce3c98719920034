namespace Ohmstead.Electronics.Supplies;

/// <summary>The range a supply rail must keep, measured at the pin of the load and not at the regulator.</summary>
/// <param name="Family">What the rail feeds, or what supplies it.</param>
/// <param name="NominalVolts">The nominal voltage, signed.</param>
/// <param name="LowVolts">The lower end of the range, signed: for a negative rail the more negative figure.</param>
/// <param name="HighVolts">The upper end of the range, signed.</param>
/// <param name="Note">What the range leaves out, or null.</param>
/// <param name="Source">Where it comes from; a service manual of the equipment always comes first.</param>
public sealed record RailLimit(string Family, decimal NominalVolts, decimal LowVolts, decimal HighVolts, string? Note, Source Source)
{
    /// <summary>True when a voltage is in the range; exactly on an end is inside. The uncertainty of the reading is not counted
    /// here.</summary>
    public bool Holds(decimal volts) => volts >= LowVolts && volts <= HighVolts;

    internal static RailLimit PlusMinus(string family, decimal nominalVolts, decimal percent, string? note, Source source) =>
        Asymmetric(family, nominalVolts, percent, percent, note, source);

    // The percentages are of the magnitude: a negative rail that is too large is too far below zero.
    internal static RailLimit Asymmetric(
        string family,
        decimal nominalVolts,
        decimal percentOver,
        decimal percentUnder,
        string? note,
        Source source
    )
    {
        decimal small = nominalVolts * (1m - (percentUnder / 100m));
        decimal large = nominalVolts * (1m + (percentOver / 100m));
        return new RailLimit(family, nominalVolts, Math.Min(small, large), Math.Max(small, large), note, source);
    }
}
