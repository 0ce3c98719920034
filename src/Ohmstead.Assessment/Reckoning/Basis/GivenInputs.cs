namespace Ohmstead.Assessment.Reckoning.Basis;

/// <summary>What was written for the inputs of a rule, read.</summary>
/// <remarks>A rule asks only for inputs that it names itself; the reader has seen to it that every one it needs is there.</remarks>
public sealed class GivenInputs
{
    private readonly IReadOnlyDictionary<string, Entry> entries;

    private GivenInputs(IReadOnlyDictionary<string, Entry> entries) => this.entries = entries;

    /// <summary>The number in the base unit of its dimension; 0 for what was not given.</summary>
    internal decimal this[ReckonInput input] => entries.TryGetValue(input.Name, out var entry) ? entry.Number : 0m;

    internal static GivenInputs From(IReadOnlyDictionary<string, Entry> entries) => new(entries);

    internal bool Has(ReckonInput input) => entries.ContainsKey(input.Name);

    internal double Double(ReckonInput input) => (double)this[input];

    internal int Count(ReckonInput input) => (int)this[input];

    internal string Text(ReckonInput input) => entries.TryGetValue(input.Name, out var entry) ? entry.Text : string.Empty;

    internal DateOnly Day(ReckonInput input) => entries.TryGetValue(input.Name, out var entry) ? entry.Day : default;

    internal IReadOnlyList<string> List(ReckonInput input) =>
        Text(input).Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    /// <summary>One input as written and as read.</summary>
    internal sealed record Entry(string Text, decimal Number = 0m, DateOnly Day = default);
}
