using System.Globalization;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Binding;

/// <summary>Takes apart what people write behind one key and is two facts: <c>2200 µF 40 V</c>, <c>18 µA @ 25 V</c>.</summary>
internal static class TwoValues
{
    private static readonly string[] Joints = [" ±", " +-", " +/-", " @ ", "@", " at ", "/", ", ", " "];

    private static readonly string[] Usual = ["tolerance", "at_voltage", "rated_voltage", "frequency", "temperature", "after"];

    /// <summary>The text to write, with the second fact behind its own key; null when it is not two that the mapping can hold.</summary>
    internal static string? Next(string text, Shape shape, Key key, MappingNode mapping)
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
                    return mapping.Entries.FirstOrDefault(entry => entry.Key == other) is { Key: not null } there
                        ? string.Create(
                            CultureInfo.InvariantCulture,
                            $"write {key.Name}: {first}; {other}: stands on line {there.KeySpot.Line} already"
                        )
                        : $"write {key.Name}: {first}, and {other}: {second}";
                }

                at = text.IndexOf(joint, at + 1, StringComparison.Ordinal);
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
