using System.Globalization;
using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Families;

/// <summary>The ages at failure of families in words, the same in the terminal and on the pages.</summary>
public static class FamilyAges
{
    /// <summary>A share smaller than this is not told: it would read as zero.</summary>
    public const double LeastShown = 0.0005;

    /// <summary>The families whose ages at failure can be told. A wider family that holds nothing beside a narrower one is left
    /// out.</summary>
    public static IEnumerable<FamilyStatistics> WorthTelling(IReadOnlyList<FamilyStatistics> families) =>
        Without(families, (narrower, family) => narrower.Ages.Observed == family.Ages.Observed)
            .Where(family => family.Ages.Steps.Is(out _, out _));

    /// <summary>The families without the wider ones that hold nothing beside a narrower one: a kind of which one maker alone is there is
    /// told once.</summary>
    public static IEnumerable<FamilyStatistics> Apart(IReadOnlyList<FamilyStatistics> families) =>
        Without(families, (narrower, family) =>
            narrower.Parts == family.Parts && narrower.Measured == family.Measured && narrower.FailedInCircuit == family.FailedInCircuit
        );

    /// <summary>Whether the ages of a family say little: all that failed did so within one range of ages, and no life can be
    /// told.</summary>
    public static bool SaysLittle(FamilyStatistics family) =>
        !family.Ages.Life.Is(out _, out _)
        && family.Ages.Steps.Is(out var steps, out _)
        && steps.Masses.Count(mass => mass.Probability >= LeastShown && !double.IsInfinity(mass.By)) < 2;

    /// <summary>How many families say little, in words.</summary>
    public static string Little(int count) =>
        count == 1
            ? "one family of which no more is known than by when some had failed"
            : string.Create(CultureInfo.InvariantCulture, $"{count} families of which no more is known than by when some had failed");

    /// <summary>How many were observed, how many of them failed, and how little is known of when.</summary>
    public static string Counts(FamilyStatistics family) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{family.Ages.Observed} parts of known age: {family.Ages.FailedByFirstLook} had failed by their first inspection, at ages "
                + $"nobody saw; {family.Ages.FailedBetweenLooks} failed between two inspections; "
                + $"{family.Ages.Observed - family.Ages.Failures} were good when last seen. Where within a range they failed is not known."
        );

    /// <summary>
    /// How many were bad at their first inspection, by age; empty where fewer parts than <see cref="AgesAtFailure.FewestObserved"/> are of
    /// known age or all were looked at at one age. Counts and no shares: the one share of an age is that of <see cref="Steps"/>, which
    /// counts later looks and fitted parts too.
    /// </summary>
    public static string FirstLooks(FamilyStatistics family) =>
        family.FirstLooks.Sum(look => look.Looked) >= AgesAtFailure.FewestObserved
        && family.FirstLooks.Select(look => look.Age).Distinct().Count() > 1
            ? "Bad at the first inspection, by age: "
                + $"{string.Join("; ", family.FirstLooks.GroupBy(look => look.Age).OrderBy(age => age.Key).Select(OneAge))}."
            : string.Empty;

    /// <summary>What is said of the families whose ages cannot be told.</summary>
    public static string Rest(int all, int told) =>
        told == all
            ? string.Empty
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{(told == 0 ? "No family has" : "The other families have no")} ages at failure that can be told: too few to say "
                    + $"({AgesAtFailure.FewestObserved} parts of known age are wanted), none failed yet, or the same parts as a "
                    + $"narrower family."
            );

    /// <summary>The Weibull life in words, or why there is none.</summary>
    public static string Life(FamilyStatistics family) =>
        family.Ages.Life.Is(out var life, out var refusal) ? FamilyWords.Life(life) : $"Weibull life: {refusal}";

    /// <summary>The steps of the share failed by age.</summary>
    public static IEnumerable<AgeStep> Steps(IntervalCensoredEstimate estimate)
    {
        var together = 0.0;
        foreach (var mass in estimate.Masses.Where(mass => mass.Probability >= LeastShown))
        {
            together += mass.Probability;
            yield return new(
                FamilyWords.Range(mass),
                FamilyWords.Percent(mass.Probability),
                double.IsInfinity(mass.By) ? string.Empty : FamilyWords.Percent(Math.Min(together, 1))
            );
        }
    }

    private static string OneAge(IGrouping<double, Inspection> age) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{FamilyWords.Years(age.Key)} {age.Sum(look => look.Bad)} of {age.Sum(look => look.Looked)}"
        );

    private static IEnumerable<FamilyStatistics> Without(
        IReadOnlyList<FamilyStatistics> families,
        Func<FamilyStatistics, FamilyStatistics, bool> holdsAsMuch
    )
    {
        var byKind = families.ToLookup(family => family.Name.Kind, StringComparer.Ordinal);
        return families.Where(family =>
            !byKind[family.Name.Kind].Any(other => other.Name.IsWithin(family.Name) && holdsAsMuch(other, family))
        );
    }
}

/// <summary>One step of the share failed by age, in words.</summary>
/// <param name="Range">The range of ages.</param>
/// <param name="Share">The share of all parts that fails within it.</param>
/// <param name="Together">The share that has failed by its end; empty where there is no end.</param>
public sealed record AgeStep(string Range, string Share, string Together);
