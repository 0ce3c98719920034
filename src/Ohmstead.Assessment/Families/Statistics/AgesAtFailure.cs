using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Families.Statistics;

/// <summary>What is known of the ages at which the parts of a family fail, in years since they were made or fitted, used or not.</summary>
/// <param name="Observed">How many parts of known age were looked at.</param>
/// <param name="FailedByFirstLook">How many of them had failed when they were first looked at: when is not known.</param>
/// <param name="FailedBetweenLooks">How many failed between two looks.</param>
/// <param name="Steps">The share failed by age, or why nothing can be said.</param>
/// <param name="Life">A Weibull life, or why nothing can be said.</param>
public sealed record AgesAtFailure(
    int Observed,
    int FailedByFirstLook,
    int FailedBetweenLooks,
    Outcome<IntervalCensoredEstimate> Steps,
    Outcome<WeibullLife> Life
)
{
    /// <summary>Fewer observations than this say nothing about ages. Common practice.</summary>
    public const int FewestObserved = 5;

    /// <summary>Fewer distinct failures than this say nothing about a law of failing. Common practice.</summary>
    public const int FewestFailures = 3;

    /// <summary>How many failed in all.</summary>
    public int Failures => FailedByFirstLook + FailedBetweenLooks;

    /// <summary>The estimates from what is known of how many parts.</summary>
    public static AgesAtFailure Compute(IReadOnlyList<LikeItems> parts)
    {
        LikeItems[] failures = [.. parts.Where(part => part.Known.By is not null)];
        var (all, failed) = (parts.Sum(part => part.Count), failures.Sum(part => part.Count));
        var early = failures.Where(failure => failure.Known.After <= 0).Sum(failure => failure.Count);
        return new(
            all,
            early,
            failed - early,
            StepsOf(parts, all, failed),
            WeibullLife.From(parts, failures.Select(failure => failure.Known).Distinct().Count())
        );
    }

    internal static string TooFew(int found, string what, int expected) =>
        string.Create(CultureInfo.InvariantCulture, $"too few to say: {found} {what}, {expected} or more wanted");

    private static Outcome<IntervalCensoredEstimate> StepsOf(IReadOnlyList<LikeItems> parts, int all, int failures) =>
        all < FewestObserved ? Outcome<IntervalCensoredEstimate>.Refused(TooFew(all, "of known age", FewestObserved))
        : failures == 0
            ? Outcome<IntervalCensoredEstimate>.Refused(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"none of {all} has failed, the oldest seen good at {FamilyWords.Years(parts.Max(part => part.Known.After))}"
                )
            )
        : IntervalCensoredEstimate.OfCounted(parts);
}
