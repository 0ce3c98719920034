namespace Ohmstead.Electronics.Life;

/// <summary>A published way to build up the oxide of a stored aluminium electrolytic with liquid electrolyte.</summary>
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
    Source Source
)
{
    /// <summary>What any of these may be used on. Solid tantalum and polymer do not form again and fail short; paper and film have no
    /// oxide.</summary>
    public const string ForParts =
        "only for aluminium electrolytics with liquid electrolyte and a right way round; never for tantalum, polymer, paper or film";

    /// <summary>For which parts among them it is meant.</summary>
    public string Meant { get; init; } = "new parts of a few years";

    /// <summary>The longest at rated voltage, in hours, where the source gives a range; else null.</summary>
    public decimal? HoursAtMost { get; init; }

    /// <summary>The resistor that the source lets the part down through, in ohm for each volt, or null when it names none.</summary>
    public decimal? LetDownOhmsPerVolt { get; init; }

    /// <summary>For parts stored for decades: high resistor, slow, four hours.</summary>
    public static ReformingProcedure LongStored { get; } =
        new(
            "long stored",
            75m,
            10_000m,
            100_000m,
            1m,
            4m,
            null,
            true,
            Source.Published("Cornell Dubilier, letter of October 1993, read in a private copy", "resistor, current and hours")
        )
        {
            Meant = "parts that lay for long, and all whose age is not known",
        };

    /// <summary>Preconditioning of small new parts: low resistor, one hour, then rest.</summary>
    public static ReformingProcedure Preconditioning { get; } =
        new("preconditioning", 100m, 100m, 1_000m, null, 1m, 12m, false, Source.Published("EIA-815:1999", "preconditioning"))
        {
            LetDownOhmsPerVolt = 1m,
        };

    /// <summary>Half an hour to an hour at rated voltage through 1 kohm.</summary>
    public static ReformingProcedure HalfHour { get; } =
        new(
            "half hour",
            1_000m,
            1_000m,
            1_000m,
            null,
            0.5m,
            null,
            false,
            Source.Published("Nippon Chemi-Con FAQ 29BDH9T", "about 1 kΩ, 30 to 60 min")
        )
        {
            HoursAtMost = 1m,
            Meant = "new parts of a few years, never stored hot for long: those are raised slowly",
        };

    /// <summary>Pre-treatment before a leakage measurement.</summary>
    public static ReformingProcedure PreTreatment { get; } =
        new(
            "pre-treatment",
            100m,
            100m,
            1_000m,
            null,
            1m,
            12m,
            false,
            Source.Published(
                "TDK, Aluminum electrolytic capacitors, general technical information",
                "pre-treatment according to the standards"
            )
        );

    /// <summary>All of them, the gentlest first.</summary>
    public static IReadOnlyList<ReformingProcedure> All { get; } = [LongStored, Preconditioning, HalfHour, PreTreatment];
}
