namespace Ohmstead.Electronics.Uncertainty;

/// <summary>A decision on a reading against its limits, with what it rests on.</summary>
/// <param name="Conformity">Which of the four it is.</param>
/// <param name="Accepted">Whether the rule accepts it: a yes or no where one is needed.</param>
/// <param name="Probability">How likely the true value is inside, 0 to 1.</param>
/// <param name="GuardBand">The guard band w, in the reading's unit.</param>
/// <param name="LowerAcceptance">The lower limit with the guard band taken off, or null when there is no lower limit.</param>
/// <param name="UpperAcceptance">The upper limit with the guard band taken off, or null when there is no upper limit.</param>
/// <param name="Rule">The rule that was followed.</param>
/// <param name="Arithmetic">The comparison in figures.</param>
/// <param name="Source">Where the four outcomes come from.</param>
public sealed record ConformityStatement(
    Conformity Conformity,
    bool Accepted,
    double Probability,
    decimal GuardBand,
    decimal? LowerAcceptance,
    decimal? UpperAcceptance,
    DecisionRule Rule,
    LazyText Arithmetic,
    Source Source
)
{
    private static readonly Source Statements = Source.FromMemory("ILAC-G8:09/2019, 4.2.3 as read; JCGM 106:2012", "clause 7");

    /// <summary>True when the reading settles the matter.</summary>
    public bool Decides => Conformity is Conformity.Inside or Conformity.Outside;

    /// <summary>Holds a reading against its limits. A reading exactly on a limit, with no uncertainty, is inside.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="expandedUncertainty">Its expanded uncertainty U at k = 2, in the same unit; 0 when the reading is exact.</param>
    /// <param name="lowerLimit">The lower limit, or null.</param>
    /// <param name="upperLimit">The upper limit, or null.</param>
    /// <param name="rule">The rule that says what is accepted and how wide the guard band is.</param>
    /// <remarks>
    /// The four outcomes use the width of the rule's guard band on both sides of a limit; rules without one (simple) and with a
    /// negative one (uncritical) use U, for what a reading proves does not depend on how a doubt is settled.
    /// </remarks>
    public static Outcome<ConformityStatement> Decide(
        decimal reading,
        decimal expandedUncertainty,
        decimal? lowerLimit,
        decimal? upperLimit,
        DecisionRule rule
    )
    {
        if (
            !ConformityDecision
                .Decide(reading, expandedUncertainty, lowerLimit, upperLimit, rule)
                .Is(out ConformityDecision decision, out string? reason)
            || !ConformanceProbability
                .OfExpanded(reading, expandedUncertainty, lowerLimit, upperLimit)
                .Is(out double probability, out reason)
        )
        {
            return Outcome<ConformityStatement>.Refused(reason);
        }

        return Outcome<ConformityStatement>.From(
            new ConformityStatement(
                decision.Conformity,
                decision.Accepted,
                probability,
                decision.GuardBand,
                lowerLimit + decision.GuardBand,
                upperLimit - decision.GuardBand,
                rule,
                Working(reading, expandedUncertainty, lowerLimit, upperLimit, decision, probability),
                Statements
            )
        );
    }

    private static LazyText Working(
        decimal reading,
        decimal expanded,
        decimal? lower,
        decimal? upper,
        ConformityDecision decision,
        double probability
    ) =>
        new(() =>
            $"{Figures.Text(reading)} ± {Figures.Text(expanded, 4)} against {Range(lower, upper)}, guard band "
            + $"{Figures.Text(decision.GuardBand, 4)}: "
            + $"accepted {Range(lower + decision.GuardBand, upper - decision.GuardBand)}; inside with probability "
            + $"{Figures.Text(probability, 4)}"
        );

    private static string Range(decimal? lower, decimal? upper) =>
        (lower, upper) switch
        {
            ({ } l, { } u) => $"{Figures.Text(l)} to {Figures.Text(u)}",
            ({ } l, null) => $"at least {Figures.Text(l)}",
            (null, { } u) => $"at most {Figures.Text(u)}",
            _ => "no limit",
        };
}
