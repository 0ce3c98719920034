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
    Source Source)
{
    private static readonly Source Statements = Source.FromMemory("ILAC-G8:09/2019; JCGM 106:2012", "4.2; clause 7");

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
    public static Outcome<ConformityStatement> Of(
        decimal reading, decimal expandedUncertainty, decimal? lowerLimit, decimal? upperLimit, DecisionRule rule)
    {
        Domain domain = Domain.Of(
            Domain.NotNegative("expanded uncertainty", expandedUncertainty),
            Domain.That(lowerLimit is not null || upperLimit is not null, "no limit is given, expected a lower or an upper one"),
            Domain.That(!(lowerLimit > upperLimit), "the lower limit is above the upper limit"));
        if (domain.Fault is { } fault)
        {
            return Outcome<ConformityStatement>.Refused(fault);
        }

        if (!ConformanceProbability.Of((double)reading, (double)expandedUncertainty / 2, (double?)lowerLimit, (double?)upperLimit)
            .Is(out double probability, out string? reason))
        {
            return Outcome<ConformityStatement>.Refused(reason);
        }

        try
        {
            return Outcome<ConformityStatement>.Of(Decide(reading, expandedUncertainty, lowerLimit, upperLimit, rule, probability));
        }
        catch (Exception e) when (Domain.IsBeyond(e))
        {
            return Outcome<ConformityStatement>.Refused(Domain.Beyond);
        }
    }

    private static ConformityStatement Decide(
        decimal reading, decimal expanded, decimal? lower, decimal? upper, DecisionRule rule, double probability)
    {
        decimal guard = rule.GuardShare * expanded;
        decimal band = rule.GuardShare > 0 ? guard : expanded;
        bool inside = IsInside(reading, lower, upper, 0m);
        Conformity conformity = inside
            ? (IsInside(reading, lower, upper, band) ? Conformity.Inside : Conformity.ProbablyInside)
            : (IsInside(reading, lower, upper, -band) ? Conformity.ProbablyOutside : Conformity.Outside);
        Working working = new(reading, expanded, lower, upper, guard, probability);
        return new ConformityStatement(
            conformity, IsInside(reading, lower, upper, guard), probability, guard, lower + guard, upper - guard, rule, working,
            Statements);
    }

    private static bool IsInside(decimal reading, decimal? lower, decimal? upper, decimal margin) =>
        !(reading < lower + margin) && !(reading > upper - margin);

    private static string Range(decimal? lower, decimal? upper) => (lower, upper) switch
    {
        ({ } l, { } u) => $"{Figures.Text(l)} to {Figures.Text(u)}",
        ({ } l, null) => $"at least {Figures.Text(l)}",
        (null, { } u) => $"at most {Figures.Text(u)}",
        _ => "no limit",
    };

    private sealed class Working(decimal reading, decimal expanded, decimal? lower, decimal? upper, decimal guard, double probability)
        : LazyText
    {
        protected override string Write() =>
            $"{Figures.Text(reading)} ± {Figures.Text(expanded, 4)} against {Range(lower, upper)}, guard band {Figures.Text(guard, 4)}: "
            + $"accepted {Range(lower + guard, upper - guard)}; inside with probability {Figures.Text(probability, 4)}";
    }
}
