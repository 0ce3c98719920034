using System.Globalization;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Binding;

/// <summary>Takes apart what people write behind one key and is two facts: <c>2200 µF 40 V</c>, <c>18 µA @ 25 V</c>.</summary>
internal static class TwoValues
{
    private static readonly string[] Joints = [" ±", " +-", " +/-", " @ ", "@", " at ", "/", ", ", " "];

    // More is a text, and looking for a value at its beginning would take long.
    private const int Longest = 60;

    private static readonly string[] Currents = ["AC", "DC"];

    private static readonly string[] Usual = ["tolerance", "at_voltage", "rated_voltage", "frequency", "temperature", "after"];

    /// <summary>The text to write, with the second fact behind its own key; null when it is not two that the mapping can hold.</summary>
    internal static string? Next(string text, Shape shape, Key key, MappingNode mapping)
    {
        if (Of(text, shape, key) is not var (first, other, second))
        {
            return null;
        }

        if (mapping.Entries.FirstOrDefault(entry => entry.Key == other) is not { Key: not null } there)
        {
            return $"write {key.Name}: {first}, and {other}: {second}";
        }

        var line = there.KeySpot.Line.ToString(CultureInfo.InvariantCulture);
        return Says(there.Value, second)
            ? $"write {key.Name}: {first}; {other}: stands on line {line} already"
            : $"write {key.Name}: {first}, and mend {other}: on line {line}, which says another value, or tell "
                + $"{NodeText.Quoted(second)} in "
                + "note";
    }

    private static bool Says(Node value, string second) => value is ScalarNode { Text: var text } && Bare(text) == Bare(second);

    private static string Bare(string text) => string.Concat(text.Where(letter => letter is not (' ' or '±'))).ToUpperInvariant();

    /// <summary>The two facts and the key of the second; null when it is not two that the shape can hold.</summary>
    internal static (string First, string Other, string Second)? Of(string text, Shape shape, Key key)
    {
        if (key.Kind is not (ValueKind.Quantity or ValueKind.Indication))
        {
            return null;
        }

        foreach (var joint in Joints)
        {
            var at = text.IndexOf(joint, StringComparison.Ordinal);
            while (at > 0)
            {
                var first = text[..at].Trim();
                var second = text[at..].TrimStart(' ', '@', '/', ',');
                second = second.StartsWith("at ", StringComparison.Ordinal) ? second[3..] : second;
                if (QuantityText.Parse(first, key.Dimension).Fault is null && KeyOf(second, shape, key) is { } other)
                {
                    return (first, other, second);
                }

                at = text.IndexOf(joint, at + 1, StringComparison.Ordinal);
            }
        }

        return null;
    }

    /// <summary>The value at the beginning, where a word follows that no key can hold, which is not to be lost: <c>250 V AC</c>; null when
    /// none is there.</summary>
    internal static string? Rest(string text, Key key)
    {
        if (key.Kind is not (ValueKind.Quantity or ValueKind.Indication) || text.Length > Longest)
        {
            return null;
        }

        for (var at = text.Length - 1; at > 0; at--)
        {
            var rest = text[at..].Trim();
            if (
                (text[at] == ' ' || Currents.Contains(rest, StringComparer.OrdinalIgnoreCase))
                && QuantityText.Parse(text[..at].TrimEnd(), key.Dimension).Fault is null
            )
            {
                return $"write {key.Name}: {text[..at].TrimEnd()}, and {NodeText.Quoted(rest)} in note";
            }
        }

        return null;
    }

    private static string? KeyOf(string second, Shape shape, Key first) =>
        Usual.FirstOrDefault(name =>
            name != first.Name
            && shape.PlaceOf(name) is >= 0 and var place
            && shape.KeyAt(place) is var key
            && (
                key.Kind == ValueKind.Tolerance
                    ? second.Contains('%', StringComparison.Ordinal) && Tolerance.Parse(second, first.Dimension).Fault is null
                    : QuantityText.Parse(second, key.Dimension).Fault is null
            )
        );
}
