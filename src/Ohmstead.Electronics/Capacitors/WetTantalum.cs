namespace Ohmstead.Electronics.Capacitors;

/// <summary>Wet tantalum in a sealed can: how much of its capacitance a sound one may have lost, by its rated voltage. It bears almost no
/// reverse voltage.</summary>
public static class WetTantalum
{
    /// <summary>Where the figures come from.</summary>
    public static Source Source { get; } =
        Source.Published("Vishay 138D data sheet", "life: -25 % at 6 V, -20 % at 8 and 10 V, -15 % at 15 V, -10 % from 20 V");

    /// <summary>The largest loss of capacitance, as a fraction; of a voltage between two the greater.</summary>
    public static decimal LargestDrop(decimal ratedVolts) =>
        ratedVolts switch
        {
            < 8m => 0.25m,
            < 15m => 0.20m,
            < 20m => 0.15m,
            _ => 0.10m,
        };
}
