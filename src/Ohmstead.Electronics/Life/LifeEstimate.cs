namespace Ohmstead.Electronics.Life;

/// <summary>
/// How long a wet aluminium electrolytic is expected to stay within its end-of-life criteria: drift, not death, under continuous
/// stress. An estimate, never a promise.
/// </summary>
/// <param name="ComputedHours">What the model gives, in hours of operation.</param>
/// <param name="Model">The model's name: models disagree by several times far from the rated temperature.</param>
/// <param name="Arithmetic">The working.</param>
/// <param name="Source">Where the model comes from.</param>
public sealed record LifeEstimate(double ComputedHours, string Model, LazyText Arithmetic, Source Source)
{
    /// <summary>Fifteen years of 8760 hours: sealing rubber ages whatever the oxide does, and makers stand behind no more.</summary>
    public const double CapHours = 131_400;

    /// <summary>Hours in the year that the cap is counted with.</summary>
    public const double HoursPerYear = 8760;

    /// <summary>Where the cap comes from.</summary>
    public static Source CapSource { get; } = Source.Published("Beckhoff PS9011-2420-0001 documentation", "service life, 15 years at most");

    /// <summary>The hours to plan with: as computed, but not over the cap.</summary>
    public double Hours => Math.Min(ComputedHours, CapHours);

    /// <summary>True when the cap decides.</summary>
    public bool IsCapped => ComputedHours > CapHours;

    /// <summary>The limits of the model that were passed, one line each.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];
}
