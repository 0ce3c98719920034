namespace Ohmstead.Electronics.Statistics;

/// <summary>The share still good at each age, by the product-limit method of Kaplan and Meier with Greenwood's standard error.</summary>
/// <remarks>At ties failures come before items last seen good. With a last item that is good the curve does not reach zero.</remarks>
/// <param name="Steps">The failure ages, rising.</param>
public sealed record SurvivalCurve(IReadOnlyList<SurvivalStep> Steps)
{
    /// <summary>Where the method comes from.</summary>
    public static Source Source { get; } = Source.FromMemory("Kaplan and Meier, J. Am. Stat. Assoc. 53 (1958) 457; Greenwood 1926", null);

    /// <summary>The first age at which half or fewer are good, or null when that was not reached.</summary>
    public double? Median => Steps.FirstOrDefault(s => s.Survival <= 0.5 + 1e-12)?.Age;

    /// <summary>The estimate from followed items; delayed entry is counted.</summary>
    public static Outcome<SurvivalCurve> Estimate(IReadOnlyList<FollowedItem> items) =>
        Check(items)
            .Compute(() =>
            {
                List<SurvivalStep> steps = [];
                double survival = 1,
                    greenwood = 0;
                foreach (double age in items.Where(i => i.Failed).Select(i => i.Until).Distinct().Order())
                {
                    int atRisk = items.Count(i => i.From < age && i.Until >= age);
                    int failures = items.Count(i => i.Failed && i.Until == age);
                    survival *= 1 - ((double)failures / atRisk);
                    greenwood += atRisk == failures ? 0 : failures / ((double)atRisk * (atRisk - failures));
                    steps.Add(new SurvivalStep(age, atRisk, failures, survival, survival > 0 ? survival * Math.Sqrt(greenwood) : null));
                }

                return new SurvivalCurve(steps);
            });

    /// <summary>The share good at an age.</summary>
    public double At(double age) => Steps.LastOrDefault(s => s.Age <= age)?.Survival ?? 1;

    internal static Domain Check(IReadOnlyList<FollowedItem> items) =>
        Domain.Require(
            Domain.That(items.Count > 0, "no item was followed"),
            items
                .Select(i =>
                    Domain.NotNegative("age at entry", i.From)
                    ?? Domain.Positive("age", i.Until)
                    ?? Domain.That(
                        i.Until > i.From,
                        $"an item left at {Figures.Text(i.Until)}, not after it entered at {Figures.Text(i.From)}"
                    )
                )
                .FirstOrDefault(f => f is not null)
        );
}

/// <summary>What happened at one failure age.</summary>
/// <param name="Age">The age.</param>
/// <param name="AtRisk">Items under observation and good just before.</param>
/// <param name="Failures">Items that failed at it.</param>
/// <param name="Survival">The share still good after it.</param>
/// <param name="StandardError">Greenwood's standard error of the share; null when the share is zero, where it is not defined.</param>
public sealed record SurvivalStep(double Age, int AtRisk, int Failures, double Survival, double? StandardError);
