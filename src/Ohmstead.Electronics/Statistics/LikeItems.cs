namespace Ohmstead.Electronics.Statistics;

/// <summary>Items of whose ages at failure the same is known. A large collection has many items and knows few different things of
/// them.</summary>
/// <param name="Known">What is known of each.</param>
/// <param name="Count">How many they are.</param>
public readonly record struct LikeItems(LifeObservation Known, int Count)
{
    /// <summary>Counts items, in the order in which something was first known.</summary>
    internal static IReadOnlyList<LikeItems> Group(IReadOnlyList<LifeObservation> observations) =>
        [.. observations.CountBy(o => o).Select(g => new LikeItems(g.Key, g.Value))];
}
