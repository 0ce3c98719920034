using System.Collections.Immutable;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Binding;

/// <summary>Lays the nodes of one file against their shapes. One cause gives one finding, on its line.</summary>
/// <param name="path">The path of the file from the root of the collection.</param>
public sealed class Binder(string path)
{
    // Whether a key that is missing was misspelled is asked of so many keys; a mapping of a record has a handful.
    private const int MostSlips = 200;

    private readonly FindingList findings = new();

    /// <summary>What is wrong so far.</summary>
    public ImmutableArray<Finding> Findings => findings.ToImmutable();

    /// <summary>Lays a mapping against its shape.</summary>
    public Fields Bind(MappingNode node, Shape shape)
    {
        // A part may hold dozens of keys and holds a handful: only those that are written take room.
        var entries = node.Entries;
        var places = new int[entries.Length];
        for (var i = 0; i < places.Length; i++)
        {
            var entry = entries[i];
            var place = places[i] = shape.PlaceOf(entry.Key);
            if (place < 0)
            {
                ReportUnknownKey(entry, shape);
            }
            else if (
                entry.Value is ScalarNode scalar
                && IsBlank(scalar)
                && shape.KeyAt(place).Kind is not (ValueKind.List or ValueKind.Mapping)
            )
            {
                Report(
                    RecordChecks.ValueMissing,
                    scalar.Spot.Length > 0 ? scalar.Spot : entry.KeySpot,
                    $"nothing stands behind '{entry.Key}', expected a value such as {shape.KeyAt(place).Example}",
                    $"write {entry.Key}: {shape.KeyAt(place).Example}, or leave the key out"
                );
            }
        }

        foreach (var needed in shape.Needed)
        {
            if (!places.AsSpan().Contains(needed))
            {
                ReportMissingKey(node, shape.KeyAt(needed), shape);
            }
        }

        return new Fields(this, shape, node, places);
    }

    /// <summary>Reports a finding of severity error.</summary>
    public void Report(string check, Spot spot, string message, string? nextStep) =>
        findings.Add(new Finding(check, Severity.Error, spot.In(path), message, nextStep));

    /// <summary>Whether so many findings of a check were reported that one more is only counted.</summary>
    internal bool CountsIfFull(string check) => findings.CountsIfFull(check, path);

    /// <summary>Whether nothing is written that a person could read: no text, blanks alone, or a word for nothing.</summary>
    internal static bool IsBlank(ScalarNode scalar) => scalar.IsNothing || string.IsNullOrWhiteSpace(scalar.Text);

    // 'referance' beside a missing 'ref' has one cause: the message about the unknown key is enough.
    private static bool IsSlipOf(string written, Key key, Shape shape) =>
        shape.PlaceOf(written) < 0 && Nearest.To(written, shape.Keys.Select(known => known.Name)) == key.Name;

    private void ReportMissingKey(MappingNode node, Key key, Shape shape)
    {
        if (!node.Entries.Take(MostSlips).Any(entry => IsSlipOf(entry.Key, key, shape)) && !CountsIfFull(RecordChecks.KeyMissing))
        {
            Report(RecordChecks.KeyMissing, node.Spot, $"this {shape.Name} has no '{key.Name}'", $"add {key.Name}: {key.Example}");
        }
    }

    private void ReportUnknownKey(MappingEntry entry, Shape shape)
    {
        if (CountsIfFull(RecordChecks.KeyUnknown))
        {
            return;
        }

        var near = Nearest.To(entry.Key, shape.Keys.Select(key => key.Name));
        Report(
            RecordChecks.KeyUnknown,
            entry.KeySpot,
            Nearest.Told($"'{Shown(entry.Key)}' is no key of the {shape.Name}", near),
            near is null ? $"known keys: {string.Join(", ", shape.Keys.Select(key => key.Name))}" : $"write {near}:"
        );
    }

    /// <summary>A text as a message shows it: its beginning, where it is long.</summary>
    internal static string Shown(string text) => text.Length <= 60 ? text : text[..60] + "…";
}
