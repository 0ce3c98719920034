namespace Ohmstead.Electronics.Parts;

/// <summary>How long a fuse may carry an overload. A rating in one system is not a rating in the other.</summary>
/// <param name="System">The system of the rating.</param>
/// <param name="Speed">The speed: F is quick, T is slow; null for any.</param>
/// <param name="TimesRated">The overload as a multiple of the rated current.</param>
/// <param name="OpensWithinSeconds">It must open within this many seconds.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record FuseFigures(string System, char? Speed, decimal TimesRated, decimal OpensWithinSeconds, Source Source)
{
    private static readonly Source International = Source.FromMemory("IEC 60127-2", "time-current characteristics");

    /// <summary>What a whole fuse does not prove.</summary>
    public const string Meaning = "a whole fuse is no evidence that the current was below its rating";

    /// <summary>The figures known here.</summary>
    public static IReadOnlyList<FuseFigures> All { get; } =
    [
        new("IEC", 'F', 2.1m, 1800m, International),
        new("IEC", 'T', 2.1m, 120m, International),
        new("IEC", 'F', 10m, 0.020m, International),
        new("IEC", 'T', 10m, 0.300m, International),
        new("UL", null, 1.35m, 3600m, Source.FromMemory("UL 248-14", null)),
    ];

    /// <summary>Whether one fuse may stand for another: the rating is kept, never raised; so are speed, system, breaking capacity and
    /// size.</summary>
    public static Worked<bool> MayReplace(Fuse original, Fuse offered)
    {
        string? against = offered.RatedAmperes != original.RatedAmperes
            ? $"rated {Figures.Text(offered.RatedAmperes)} A where {Figures.Text(original.RatedAmperes)} A stood"
            : offered.Speed != original.Speed ? $"speed {offered.Speed} where {original.Speed} stood"
            : offered.System != original.System ? $"an {offered.System} rating where an {original.System} rating stood"
            : offered.RatedVolts < original.RatedVolts
                ? $"for {Figures.Text(offered.RatedVolts)} V where {Figures.Text(original.RatedVolts)} V stood"
            : offered.BreakingAmperes < original.BreakingAmperes
                ? $"breaks {Figures.Text(offered.BreakingAmperes)} A where {Figures.Text(original.BreakingAmperes)} A stood"
            : offered.Size != original.Size ? $"size {offered.Size} where {original.Size} stood"
            : null;
        return new Worked<bool>(against is null, against ?? "same rating, speed, system, breaking capacity and size",
            Source.CommonPractice);
    }
}

/// <summary>A fuse.</summary>
/// <param name="RatedAmperes">Rated current in ampere.</param>
/// <param name="Speed">F for quick, T for slow.</param>
/// <param name="System">The system of the rating, IEC or UL.</param>
/// <param name="RatedVolts">Rated voltage in volt.</param>
/// <param name="BreakingAmperes">Breaking capacity in ampere.</param>
/// <param name="Size">Its size, such as 5 x 20.</param>
public sealed record Fuse(decimal RatedAmperes, char Speed, string System, decimal RatedVolts, decimal BreakingAmperes, string Size);
