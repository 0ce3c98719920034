namespace Ohmstead.Electronics;

/// <summary>A rule's result that can be checked by hand: the value, how it was reached, and where the rule comes from.</summary>
/// <typeparam name="T">The type of the value.</typeparam>
/// <param name="Value">The result.</param>
/// <param name="Arithmetic">The working with the figures put in, on one line: "0.01 x 100 µF x 25 V = 25 µA, not under 3 µA".</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record Worked<T>(T Value, LazyText Arithmetic, Source Source)
{
    /// <summary>What a reader must know beside the value: limits of validity that were passed, assumptions made. Usually empty.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];
}
