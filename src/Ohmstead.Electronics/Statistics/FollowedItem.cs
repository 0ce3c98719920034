namespace Ohmstead.Electronics.Statistics;

/// <summary>An item that was followed from a known start, or joined later, until it failed or was last seen good.</summary>
/// <remarks>An item found bad at its first inspection was not followed: its failure time is not known, and it does not belong
/// here.</remarks>
/// <param name="Until">Age at failure or when last seen; above <paramref name="From"/>.</param>
/// <param name="Failed">True when it failed then, false when it was last seen good.</param>
/// <param name="From">Age at which it came under observation: 0 when followed from new, more with delayed entry.</param>
public sealed record FollowedItem(double Until, bool Failed, double From = 0);
