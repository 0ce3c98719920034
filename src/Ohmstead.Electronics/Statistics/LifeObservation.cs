namespace Ohmstead.Electronics.Statistics;

/// <summary>What is known of an item's age at failure: that it lies in a range.</summary>
/// <param name="After">It had not failed at this age; 0 when nothing is known.</param>
/// <param name="By">It had failed by this age; null when it has not failed yet. Equal to <paramref name="After"/> when known
/// exactly.</param>
public readonly record struct LifeObservation(double After, double? By)
{
    /// <summary>Failed at exactly this age.</summary>
    public static LifeObservation FailedAt(double age) => new(age, age);

    /// <summary>Last seen good at this age.</summary>
    public static LifeObservation GoodAt(double age) => new(age, null);

    /// <summary>Found bad at this age, failed some time before.</summary>
    public static LifeObservation FoundBadAt(double age) => new(0, age);

    /// <summary>Good at one age and bad at a later one.</summary>
    public static LifeObservation Between(double goodAt, double badAt) => new(goodAt, badAt);

    internal bool IsExact => By == After;

    internal string? Fault =>
        Domain.NotNegative("age", After)
        ?? (
            By is { } by
                ? Domain.Positive("age at failure", by)
                    ?? Domain.That(by >= After, $"failed by {Figures.Text(by)} but good at {Figures.Text(After)}")
                : null
        );

    internal static Domain Check(IReadOnlyList<LikeItems> items) =>
        Domain.Require(
            Domain.That(items.Count > 0, "no item was observed"),
            items.Select(i => i.Known.Fault).FirstOrDefault(f => f is not null)
        );
}
