namespace Ohmstead.Electronics.Uncertainty;

/// <summary>What a <see cref="ConformityStatement"/> says, without its working: every reading of a collection asks for it.</summary>
/// <param name="Conformity">Which of the four it is.</param>
/// <param name="Accepted">Whether the rule accepts it.</param>
/// <param name="GuardBand">The guard band w, in the reading's unit.</param>
public readonly record struct ConformityDecision(Conformity Conformity, bool Accepted, decimal GuardBand)
{
    /// <inheritdoc cref="ConformityStatement.Decide"/>
    public static Outcome<ConformityDecision> Decide(
        decimal reading,
        decimal expandedUncertainty,
        decimal? lowerLimit,
        decimal? upperLimit,
        DecisionRule rule
    ) =>
        Domain
            .Require(
                Domain.NotNegative("expanded uncertainty", expandedUncertainty),
                Domain.That(lowerLimit is not null || upperLimit is not null, "no limit is given, expected a lower or an upper one"),
                Domain.That(!(lowerLimit > upperLimit), "the lower limit is above the upper limit")
            )
            .Flatten((reading, expandedUncertainty, lowerLimit, upperLimit, rule), static given =>
                Outcome<ConformityDecision>.From(
                    InRange(given.reading, given.expandedUncertainty, given.lowerLimit, given.upperLimit, given.rule)
                )
            );

    private static ConformityDecision InRange(decimal reading, decimal expanded, decimal? lower, decimal? upper, DecisionRule rule)
    {
        decimal guard = rule.GuardShare * expanded;
        decimal band = rule.GuardShare > 0 ? guard : expanded;
        bool inside = !(reading < lower) && !(reading > upper);
        Conformity conformity = inside
            ? (IsInside(reading, lower, upper, band) ? Conformity.Inside : Conformity.ProbablyInside)
            : (IsInside(reading, lower, upper, -band) ? Conformity.ProbablyOutside : Conformity.Outside);
        return new ConformityDecision(conformity, guard == 0 ? inside : IsInside(reading, lower, upper, guard), guard);
    }

    private static bool IsInside(decimal reading, decimal? lower, decimal? upper, decimal margin) =>
        !(reading < lower + margin) && !(reading > upper - margin);
}
