using System.Collections.Immutable;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Binding;

/// <summary>Lays the nodes of one file against their shapes. One cause gives one finding, on its line.</summary>
/// <param name="path">The path of the file from the root of the collection.</param>
/// <param name="items">What items were read as in another state of the file; null where one state is read.</param>
public sealed class Binder(string path, ReadItems? items = null)
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
        var told = -1;
        for (var i = 0; i < places.Length; i++)
        {
            var entry = entries[i];
            var place = places[i] = shape.PlaceOf(entry.Key);
            if (place < 0)
            {
                told = i <= told ? told : ReportUnknownKey(node, i, shape);
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
                    $"nothing stands after '{entry.Key}', expected {MissingValue.What(shape.KeyAt(place))}",
                    MissingValue.Next(shape.KeyAt(place))
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

    /// <summary>What an item of a list was read as in another state of the file; null where it is to be read.</summary>
    internal T? Known<T>(MappingNode node)
        where T : class => items?.Find<T>(node);

    /// <summary>Keeps what an item was read as, where nothing was found in the file so far.</summary>
    internal void Keep(MappingNode node, object item)
    {
        if (items is not null && findings.Count == 0)
        {
            items.Add(node, item);
        }
    }

    /// <summary>The path of the file from the root of the collection.</summary>
    internal string Path => path;

    /// <summary>Reports a finding of severity error.</summary>
    public void Report(string check, Spot spot, string message, string? nextStep) =>
        findings.Add(new Finding(check, Severity.Error, spot.In(path), message, nextStep));

    /// <summary>Reports a finding of severity warning: what stands there was read.</summary>
    internal void Warn(string check, Spot spot, string message, string? nextStep) =>
        findings.Add(new Finding(check, Severity.Warning, spot.In(path), message, nextStep));

    /// <summary>Whether so many findings of a check were reported that one more is only counted.</summary>
    internal bool CountsIfFull(string check) => findings.CountsIfFull(check, path);

    /// <summary>Whether nothing is written that a person could read: no text, blanks alone, or a word for nothing.</summary>
    internal static bool IsBlank(ScalarNode scalar) => scalar.IsNothing || string.IsNullOrWhiteSpace(scalar.Text);

    // 'referance' beside a missing 'ref' has one cause: the message about the unknown key is enough.
    private static bool IsSlipOf(MappingNode node, MappingEntry entry, Key key, Shape shape) =>
        shape.PlaceOf(entry.Key) < 0
        && (FamiliarWords.Key(entry.Key, shape) == key.Name || (LooseWords.IsLoose(node, entry) && IsAlike(entry.Key, key)));

    // '=' or nothing for the colon, or the value alone.
    private static bool IsAlike(string written, Key key) =>
        written.StartsWith(key.Name, StringComparison.Ordinal) || key.Words.Contains(written, StringComparer.Ordinal);

    private void ReportMissingKey(MappingNode node, Key key, Shape shape)
    {
        if (node.Entries.Take(MostSlips).Any(entry => IsSlipOf(node, entry, key, shape)) || CountsIfFull(RecordChecks.KeyMissing))
        {
            return;
        }

        // 'type: aluminium electrolytic' holds what 'kind' should.
        var holder = node
            .Entries.Take(MostSlips)
            .FirstOrDefault(entry => entry.Value is ScalarNode scalar && key.Words.Contains(scalar.Text, StringComparer.Ordinal));
        if (holder.Key is { } other)
        {
            Report(
                RecordChecks.KeyMissing,
                holder.KeySpot,
                $"this {shape.Name} has no '{key.Name}'; '{other}' holds what it should say",
                $"write {key.Name}: {((ScalarNode)holder.Value).Text}"
            );
            return;
        }

        Report(RecordChecks.KeyMissing, node.Spot, $"this {shape.Name} has no '{key.Name}'", $"add {key.Name}: {key.Example}");
    }

    private int ReportUnknownKey(MappingNode node, int at, Shape shape)
    {
        var entry = node.Entries[at];
        if (CountsIfFull(RecordChecks.KeyUnknown))
        {
            return at;
        }

        if (LooseWords.IsLoose(node, entry))
        {
            return LooseWords.Report(this, shape, node, at);
        }

        if (DoubtfulWords.Key(entry.Key, shape) is { } doubtful)
        {
            Report(RecordChecks.KeyUnknown, entry.KeySpot, $"'{Shown(entry.Key)}' is no key of the {shape.Name}", doubtful);
            return at;
        }

        var near = FamiliarWords.Key(entry.Key, shape);
        near ??= entry.Value is ScalarNode value ? FamiliarWords.KeyOf(entry.Key, value.Text, shape) : null;
        var (whole, swapped) = (LooseWords.TextAround(shape, node, at), Swapped(entry, shape));
        var next =
            near is not null ? $"write {near}:"
            : whole is not null ? $"write {whole}"
            : swapped ?? OtherPlaceOf(entry, shape) ?? $"known keys: {string.Join(", ", shape.Keys.Select(key => key.Name))}";
        var found =
            near is null && whole is not null
                ? $"a comma ends the text of '{Shown(node.Entries[at - 1].Key)}' before '{Shown(entry.Key)}', "
                    + $"which is no key of the {shape.Name}"
            : near is null && swapped is not null
                ? $"'{Shown(entry.Key)}: {Shown(((ScalarNode)entry.Value).Text)}' has key and value exchanged"
            : Told($"'{Shown(entry.Key)}' is no key of the {shape.Name}", entry.Key, near);
        Report(RecordChecks.KeyUnknown, entry.KeySpot, found, next);
        return at;
    }

    /// <summary>Says what is not known, and the known word: the nearest by its spelling, or the one that means the same.</summary>
    internal static string Told(string missing, string written, string? near) =>
        near is null || Nearest.To(written, [near]) is not null ? Nearest.Told(missing, near) : $"{missing}; the word here is '{near}'";

    private static string? Swapped(MappingEntry entry, Shape shape) =>
        entry.Value is ScalarNode { Text: var text }
        && shape.PlaceOf(text) is >= 0 and var place
        && shape.KeyAt(place).Words.Contains(entry.Key, StringComparer.Ordinal)
            ? $"write {text}: {entry.Key}"
            : null;

    private static string? OtherPlaceOf(MappingEntry entry, Shape shape) =>
        OtherPlace.Inside(shape, entry.Key) is { } under
            ? $"move it into the {under.Inner!.Name} of the day that it belongs to, in {under.Name}: beside its date; "
                + $"where that day has none, begin a new {under.Inner.Name}"
            : null;

    /// <summary>A text as a message shows it: its beginning, where it is long.</summary>
    internal static string Shown(string text) => text.Length <= 60 ? text : text[..60] + "…";
}
