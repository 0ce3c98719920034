namespace Ohmstead.Synthetic.Parts;

/// <summary>An electrolytic as it is made: parts on boards and lots in the drawer follow the same list, so that each has a
/// replacement.</summary>
/// <param name="Microfarads">Capacitance in µF.</param>
/// <param name="Volts">Rated voltage in V.</param>
/// <param name="Pitch">Lead pitch in mm.</param>
/// <param name="Diameter">Diameter in mm.</param>
/// <param name="Height">Height in mm.</param>
public sealed record ElectrolyticTemplate(int Microfarads, int Volts, decimal Pitch, decimal Diameter, decimal Height)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<ElectrolyticTemplate> All { get; } =
    [
        new(10, 35, 2.5m, 5m, 11m),
        new(22, 25, 2.5m, 5m, 11m),
        new(47, 25, 2.5m, 6.3m, 11m),
        new(47, 63, 3.5m, 8m, 12m),
        new(100, 25, 2.5m, 6.3m, 11m),
        new(100, 50, 3.5m, 8m, 12m),
        new(220, 25, 3.5m, 8m, 12m),
        new(220, 40, 5m, 10m, 16m),
        new(470, 25, 5m, 10m, 16m),
        new(470, 40, 5m, 12.5m, 20m),
        new(1000, 25, 5m, 12.5m, 20m),
        new(2200, 25, 7.5m, 16m, 25m),
    ];

    /// <summary>Capacitance in F.</summary>
    public decimal Farads => Microfarads * 1e-6m;
}
