namespace Ohmstead.Electronics.Uncertainty;

/// <summary>How the uncertainty of a reading moves the limit it is held against.</summary>
/// <param name="Name">The name of the rule.</param>
/// <param name="GuardShare">The guard band as a multiple of the expanded uncertainty U (k = 2): the acceptance limit is the limit less
/// this.</param>
/// <param name="FalseAcceptRisk">The largest risk that a reading exactly on the acceptance limit hides a value outside, as a
/// fraction.</param>
/// <param name="Meaning">What the rule asks, in a few words.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record DecisionRule(string Name, decimal GuardShare, double FalseAcceptRisk, string Meaning, Source Source)
{
    private static readonly Source G8 = Source.Published("ILAC-G8:09/2019, as quoted by Harper Metrology, 24 October 2024", "table 1");

    /// <summary>The limit is the limit; uncertainty is not taken off.</summary>
    public static DecisionRule Simple { get; } = new("simple acceptance", 0m, 0.5, "inside counts as inside", G8);

    /// <summary>The full expanded uncertainty is taken off: prove good.</summary>
    public static DecisionRule Guarded { get; } = new("guard band of U", 1m, 0.02275, "accept only what is proved inside", G8);

    /// <summary>1.65 standard uncertainties, the default of ISO 14253-1.</summary>
    public static DecisionRule GuardedFivePercent { get; } =
        new(
            "guard band of 0.83 U",
            0.83m,
            0.0485,
            "at most five in a hundred accepted wrongly",
            Source.Published("ISO 14253-1:2017 and ILAC-G8:09/2019, as quoted by Harper Metrology, 24 October 2024", "table 1")
        );

    /// <summary>Three standard uncertainties.</summary>
    public static DecisionRule ThreeSigma { get; } = new("three sigma", 1.5m, 0.00135, "under 0.16 % accepted wrongly", G8);

    /// <summary>Six standard uncertainties.</summary>
    public static DecisionRule SixSigma { get; } = new("six sigma", 3m, 9.9e-10, "under one in a million accepted wrongly", G8);

    /// <summary>The limit is widened by U: reject only what is proved outside. For parts too rare to throw away on a doubt.</summary>
    public static DecisionRule Uncritical { get; } = new("uncritical", -1m, 0.97725, "reject only what is proved outside", G8);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DecisionRule> All { get; } = [Simple, Guarded, GuardedFivePercent, ThreeSigma, SixSigma, Uncritical];
}
