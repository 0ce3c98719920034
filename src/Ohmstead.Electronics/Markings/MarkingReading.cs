namespace Ohmstead.Electronics.Markings;

/// <summary>One meaning of a marking.</summary>
/// <typeparam name="T">What the reading gives.</typeparam>
/// <param name="Value">What is meant.</param>
/// <param name="Rule">How it was read, for a person to follow: "10 followed by 4 zeros, in pF".</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record MarkingReading<T>(T Value, string Rule, Source Source)
    where T : notnull;
