using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Families;

/// <summary>What is known of the ages at which the parts of a family fail, in years since they were made or fitted, used or not.</summary>
/// <param name="Observed">How many parts of known age were looked at.</param>
/// <param name="FailedByFirstLook">How many of them had failed when they were first looked at: when is not known.</param>
/// <param name="FailedBetweenLooks">How many failed between two looks.</param>
/// <param name="Steps">The share failed by age, or why nothing can be said.</param>
/// <param name="Life">A Weibull life, or why nothing can be said.</param>
public sealed record AgesAtFailure(int Observed, int FailedByFirstLook, int FailedBetweenLooks, Outcome<IntervalCensoredEstimate> Steps, Outcome<WeibullLife> Life)
{
    /// <summary>Fewer observations than this say nothing about ages. Common practice.</summary>
    public const int FewestObserved = 5;

    /// <summary>Fewer distinct failures than this say nothing about a law of failing. Common practice.</summary>
    public const int FewestFailures = 3;

    /// <summary>How many failed in all.</summary>
    public int Failures => FailedByFirstLook + FailedBetweenLooks;

    /// <summary>The estimates from the observations.</summary>
    public static AgesAtFailure Of(IReadOnlyList<LifeObservation> observations)
    {
        var failures = observations.Where(observation => observation.By is not null).ToArray();
        var early = failures.Count(failure => failure.After <= 0);
        return new(observations.Count, early, failures.Length - early, StepsOf(observations, failures.Length), WeibullLife.Of(observations, failures.Distinct().Count()));
    }

    internal static string TooFew(int found, string what, int expected) =>
        string.Create(CultureInfo.InvariantCulture, $"too few to say: {found} {what}, {expected} or more wanted");

    private static Outcome<IntervalCensoredEstimate> StepsOf(IReadOnlyList<LifeObservation> observations, int failures) =>
        observations.Count < FewestObserved ? Outcome<IntervalCensoredEstimate>.Refused(TooFew(observations.Count, "of known age", FewestObserved))
        : failures == 0 ? Outcome<IntervalCensoredEstimate>.Refused(string.Create(CultureInfo.InvariantCulture, $"none of {observations.Count} has failed, the oldest seen good at {observations.Max(observation => observation.After):0.#} years"))
        : IntervalCensoredEstimate.Of(observations);
}
