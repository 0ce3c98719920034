namespace Ohmstead.Electronics.Life;

/// <summary>A published way to build up the oxide of a stored aluminium electrolytic.</summary>
/// <param name="Name">A short name.</param>
/// <param name="BoundVolts">The rated voltage up to which the first resistor is used; above it the second.</param>
/// <param name="OhmsUpTo">The series resistor up to the bound.</param>
/// <param name="OhmsAbove">The series resistor above it.</param>
/// <param name="LargestMilliamperes">The current not to pass, or null when only the resistor limits.</param>
/// <param name="HoursAtRated">How long at rated voltage, in hours.</param>
/// <param name="RestHours">How long to rest before leakage is judged, in hours; the least, or null when not asked for.</param>
/// <param name="Gradual">True when the voltage is raised slowly.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record ReformingProcedure(
    string Name,
    decimal BoundVolts,
    decimal OhmsUpTo,
    decimal OhmsAbove,
    decimal? LargestMilliamperes,
    decimal HoursAtRated,
    decimal? RestHours,
    bool Gradual,
    Source Source)
{
    /// <summary>For parts stored for decades: high resistor, slow, four hours.</summary>
    public static ReformingProcedure LongStored { get; } = new(
        "long stored", 75m, 10_000m, 100_000m, 1m, 4m, null, true,
        Source.Published("Cornell Dubilier, October 1993, as quoted at wa4bpj.com", null));

    /// <summary>Preconditioning of small new parts: low resistor, one hour, then rest.</summary>
    public static ReformingProcedure Preconditioning { get; } = new(
        "preconditioning", 100m, 100m, 1_000m, null, 1m, 12m, false, Source.Published("EIA-815:1999", "preconditioning"));

    /// <summary>Half an hour at rated voltage through 1 kohm.</summary>
    public static ReformingProcedure HalfHour { get; } = new(
        "half hour", 1_000m, 1_000m, 1_000m, null, 0.5m, null, false, Source.Published("Panasonic, as quoted at allpcb.com 3949", null));

    /// <summary>Pre-treatment before a leakage measurement.</summary>
    public static ReformingProcedure PreTreatment { get; } = new(
        "pre-treatment", 100m, 100m, 1_000m, null, 1m, 12m, false, Source.FromMemory("IEC 60384-4", "pre-treatment"));

    /// <summary>All of them, the gentlest first.</summary>
    public static IReadOnlyList<ReformingProcedure> All { get; } = [LongStored, Preconditioning, HalfHour, PreTreatment];
}
