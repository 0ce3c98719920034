using System.Collections.Frozen;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Entries;

/// <summary>By which of its keys an item of a list is known again in another state of the list, wherever it stands there.</summary>
/// <remarks>
/// Two ask it: who compares two states of a record, and who merges what two people made of one. Both pair what says the same, then what has
/// the same name, then what has less and less of it in common. They differ where the one would do harm by what the other must do:
/// <list type="bullet">
/// <item>Comparing asks for meaning: 47uF says the same as 0.047 mF, and a note says nothing. Merging takes lines over as somebody wrote
/// them: another way of writing a figure is a change there, and so is a note.</item>
/// <item>Comparing looks over all visits of a day, and knows an entry whose initials were mended. Merging looks within one visit, which is
/// known by day and person and by nothing less: no reading may be handed to another person.</item>
/// <item>Merging asks besides which name no second item may have (<c>ListRule.Name</c>): two people who begin a lot of one name
/// contradict each other. Of states that stand in one record already that is asked by the checks.</item>
/// </list>
/// </remarks>
internal static class KnownBy
{
    private const string Quantities = "?";
    private const string State = "state";
    private const string Usual = "as found";

    // What an item of the bench may be a reading of.
    private static readonly FrozenSet<string> Read = BenchShape
        .Reading.Keys.Concat(BenchShape.Proof.Keys)
        .Where(key =>
            key.Kind == ValueKind.Indication
            || key == BenchShape.Result
            || key == BenchShape.Hours
            || key == BenchShape.Frequency
            || key == BenchShape.Temperature
        )
        .Select(key => key.Name)
        .ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, string[][]> Lists = new (string List, string[][] Keys)[]
    {
        (
            "bench",
            [
                ["date", "by"],
            ]
        ),
        (
            "found",
            [
                ["at", "what"],
                ["at"],
            ]
        ),
        // Another figure is the same reading corrected, so figures are no name; what was read is.
        (
            "readings",
            [
                ["part", "lot", "point", "piece", State, "circuit", "corrects", Quantities],
                ["part", "lot", "point", "piece", State],
                ["part", "lot", "point"],
            ]
        ),
        (
            "work",
            [
                ["part", "at", "did"],
                ["part", "at"],
            ]
        ),
        (
            "decided",
            [
                ["part", "at", "decision"],
                ["part", "at"],
            ]
        ),
        (
            "proof",
            [
                ["point", "corrects", Quantities],
                ["point"],
            ]
        ),
        (
            "photos",
            [
                ["file"],
            ]
        ),
        (
            "scrapped",
            [
                ["lot", "piece"],
                ["lot"],
            ]
        ),
        (
            "waiting",
            [
                ["since", "for"],
                ["for"],
                ["since"],
            ]
        ),
        (
            "whereabouts",
            [
                ["date", "did"],
                ["date"],
            ]
        ),
        (
            "formerly",
            [
                ["number"],
            ]
        ),
        (
            "parts",
            [
                ["ref"],
            ]
        ),
        (
            "points",
            [
                ["point"],
            ]
        ),
        (
            "hazards",
            [
                ["at", "hazard"],
                ["at"],
            ]
        ),
        (
            "known_faults",
            [
                ["at", "what"],
                ["at"],
            ]
        ),
        (
            "lots",
            [
                ["lot"],
            ]
        ),
        (
            "lines",
            [
                ["line"],
            ]
        ),
        (
            "came",
            [
                ["date", "line", "lot"],
                ["date", "line"],
            ]
        ),
        (
            "orders",
            [
                ["order"],
            ]
        ),
        (
            "instruments",
            [
                ["id"],
            ]
        ),
        (
            "calibrations",
            [
                ["date"],
            ]
        ),
        (
            "accuracy",
            [
                ["measures", "up_to"],
                ["measures"],
            ]
        ),
        (
            "at_times",
            [
                ["temperature"],
            ]
        ),
    }.ToFrozenDictionary(list => list.List, list => list.Keys, StringComparer.Ordinal);

    /// <summary>The keys for the items of a list, the strictest first; ? stands for the names of the quantities that were read. None where
    /// items are known by what they say alone.</summary>
    /// <param name="list">The key of the list.</param>
    internal static string[][] Of(string list) => Lists.GetValueOrDefault(list, []);

    /// <summary>What an item is called by some keys, as a text to compare.</summary>
    /// <param name="item">The item; null for what is no mapping.</param>
    /// <param name="keys">The keys.</param>
    internal static string NameOf(MappingNode? item, string[] keys) =>
        string.Join('\u0001', keys.Select(key => key == Quantities ? ReadIn(item) : Said(item, key)));

    private static string? ReadIn(MappingNode? item) =>
        item is null ? null : string.Join('+', item.Entries.Select(entry => entry.Key).Where(Read.Contains).Order(StringComparer.Ordinal));

    // What is meant where a state is not said is the same as where it is.
    private static string? Said(MappingNode? item, string key) =>
        item?.ValueOf(key) is ScalarNode { IsNothing: false } scalar && !(key == State && scalar.Text == Usual) ? scalar.Text : null;
}
