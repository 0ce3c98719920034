using System.Globalization;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Binding;

/// <summary>Where something belongs that stands in the wrong list: a reading under <c>proof</c>, a visit's list at the top.</summary>
internal static class OtherPlace
{
    /// <summary>The list beside the one where an item stands that knows all its keys, or null when its own does as well as any.</summary>
    internal static Key? ListFor(Shape outer, Shape own, MappingNode item)
    {
        if (item.Entries.Length is 0 or > 40 || item.Entries.All(entry => own.PlaceOf(entry.Key) >= 0))
        {
            return null;
        }

        return outer.Keys.FirstOrDefault(key =>
            key is { Kind: ValueKind.List, Inner: { } inner }
            && inner != own
            && item.Entries.All(entry => inner.PlaceOf(entry.Key) >= 0)
            && inner.Keys.Where(needed => needed.IsNeeded).All(needed => item.Entries.Any(entry => entry.Key == needed.Name))
        );
    }

    /// <summary>What to do with an item that belongs in another list of the same mapping: another visit may have such a list too, and
    /// is of another day.</summary>
    /// <param name="outer">The shape of the mapping.</param>
    /// <param name="mapping">The mapping that holds the item.</param>
    /// <param name="right">The list where the item belongs.</param>
    internal static string Step(Shape outer, MappingNode mapping, Key right)
    {
        var date = mapping.Entries.FirstOrDefault(entry => entry.Key == "date").Value is ScalarNode { Text: var day }
            ? $" of {day}"
            : string.Empty;
        var called = $"the same {outer.Name}{date}";
        var there = mapping.Entries.FirstOrDefault(entry => entry.Key == right.Name);
        return there.Key is not null
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"move it under {right.Name}: of {called}, which stands on line {there.KeySpot.Line}"
                )
            : mapping.IsFlow ? $"move it under {right.Name}: of {called}, which has none yet"
            : $"move it under {right.Name}: of {called}, which has none yet: write \"{Indented(mapping, right)}\" at its end";
    }

    private static string Indented(MappingNode mapping, Key key) =>
        $"{new string(' ', Math.Clamp(mapping.Entries[0].KeySpot.Column - 1, 0, 40))}{key.Name}:";

    /// <summary>The list inside which a key belongs that stands one level too high, such as readings outside a visit; null when none
    /// has it.</summary>
    internal static Key? Inside(Shape shape, string written) =>
        shape.Keys.FirstOrDefault(key =>
            key is { Kind: ValueKind.List, Inner: { } inner }
            && inner.PlaceOf(written) is >= 0 and var place
            && inner.KeyAt(place).Kind == ValueKind.List
        );
}
