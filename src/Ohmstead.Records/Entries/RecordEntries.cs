using System.Collections.Frozen;
using System.Collections.Immutable;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Entries;

/// <summary>
/// Takes a record apart into what it states. Two records state the same when their entries do: a file that was tidied, wrapped anew or
/// renamed states what it did.
/// </summary>
public static class RecordEntries
{
    // From these nothing follows: they are words beside what is stated.
    private static readonly FrozenSet<string> Remarks = FrozenSet.Create(StringComparer.Ordinal, "note", "verdict", "format");

    // Said of a visit, and so of each of its readings that does not say otherwise.
    private static readonly string[] Inherited = ["instrument", "temperature"];

    private static readonly string[] OfEach = ["date", "by"];

    private const string Bench = "bench";
    private const string Usual = "as found";

    /// <summary>The entries of a file, in the order written.</summary>
    /// <param name="root">The front matter, or the file where it is YAML alone.</param>
    /// <param name="shape">The shape of the file.</param>
    public static ImmutableArray<RecordEntry> List(MappingNode root, Shape shape)
    {
        var entries = ImmutableArray.CreateBuilder<RecordEntry>();
        entries.Add(new(EntryKind.Head, string.Empty, ["head"], root.Spot) { Facts = Facts(root, shape, EntryShape.OfFiles) });
        foreach (var entry in root.Entries)
        {
            if (shape.PlaceOf(entry.Key) is not (>= 0 and var at) || shape.Keys[at].Inner is not { } inner)
            {
                continue;
            }

            if (entry.Key == Bench)
            {
                foreach (var visit in Items(entry.Value))
                {
                    AddVisit(entries, visit, inner);
                }
            }
            else if (EntryShape.OfFiles.GetValueOrDefault(entry.Key) is { } items)
            {
                foreach (var item in Items(entry.Value))
                {
                    Add(entries, entry.Key, item, inner, items);
                }
            }
        }

        return entries.DrainToImmutable();
    }

    /// <summary>True for a key of a file behind which each item is an entry of its own, or a visit with entries.</summary>
    internal static bool IsListed(string key) => key == Bench || EntryShape.OfFiles.ContainsKey(key);

    private static void Add(ImmutableArray<RecordEntry>.Builder entries, string list, MappingNode item, Shape shape, EntryShape names)
    {
        var of = Of(item, names);
        var lists = names.Kind == EntryKind.Instrument ? EntryShape.OfInstruments : FrozenDictionary<string, EntryShape>.Empty;
        entries.Add(new(names.Kind, of, Names(list, string.Empty, item), item.Spot) { Facts = Facts(item, shape, lists) });
        foreach (var (key, inner) in lists)
        {
            foreach (var each in Items(item.ValueOf(key)))
            {
                var place = shape.Keys[shape.PlaceOf(key)].Inner!;
                entries.Add(
                    new(inner.Kind, $"{of} {Of(each, inner)}", Names(key, of, each), each.Spot)
                    {
                        Facts = Facts(each, place, FrozenDictionary<string, EntryShape>.Empty),
                    }
                );
            }
        }
    }

    private static ImmutableArray<string> Names(string list, string within, MappingNode item) =>
        [.. KnownBy.Of(list).Select(keys => $"{list}|{within}|{KnownBy.NameOf(item, keys)}")];

    private static void AddVisit(ImmutableArray<RecordEntry>.Builder entries, MappingNode visit, Shape shape)
    {
        var (day, by) = (Scalar(visit, "date") ?? string.Empty, Scalar(visit, "by"));
        var isMeasured = Items(visit.ValueOf("readings")).Any() || Items(visit.ValueOf("proof")).Any();
        var own = Facts(visit, shape, EntryShape.OfVisits);
        // Day and initials are told of each of its entries, and so is what its readings have from it: what is left is the visit's own.
        ImmutableArray<EntryFact> left =
        [
            .. own.Where(fact => !OfEach.Contains(fact.Key) && !(isMeasured && Inherited.Contains(fact.Key))),
        ];
        if (left.Length > 0)
        {
            entries.Add(
                new(EntryKind.Visit, string.Empty, [$"visit|{day}|{by}", $"visit|{day}"], visit.Spot)
                {
                    Day = day,
                    By = by,
                    Facts = left,
                }
            );
        }

        foreach (var entry in visit.Entries)
        {
            if (shape.PlaceOf(entry.Key) is not (>= 0 and var at) || EntryShape.OfVisits.GetValueOrDefault(entry.Key) is not { } names)
            {
                continue;
            }

            var inner = shape.Keys[at].Inner!;
            foreach (var item in Items(entry.Value))
            {
                var of = Of(item, names);
                var facts = Facts(item, inner, FrozenDictionary<string, EntryShape>.Empty);
                if (EntryKinds.IsMeasured(names.Kind))
                {
                    facts = WithInherited(facts, own, inner);
                }

                entries.Add(
                    new(names.Kind, of, [.. Names(entry.Key, $"{day}|{by}|", item), .. Names(entry.Key, day, item)], item.Spot)
                    {
                        Day = day,
                        By = by,
                        Facts = facts,
                    }
                );
            }
        }
    }

    private static ImmutableArray<EntryFact> WithInherited(ImmutableArray<EntryFact> own, ImmutableArray<EntryFact> visit, Shape shape) =>
        [
            .. own,
            .. visit.Where(fact => Inherited.Contains(fact.Key) && shape.PlaceOf(fact.Key) >= 0 && !own.Any(said => said.Key == fact.Key)),
        ];

    private static ImmutableArray<EntryFact> Facts(MappingNode node, Shape shape, FrozenDictionary<string, EntryShape> apart)
    {
        var facts = new List<(int Place, EntryFact Fact)>();
        foreach (var entry in node.Entries)
        {
            if (
                shape.PlaceOf(entry.Key) is >= 0 and var at
                && !Remarks.Contains(entry.Key)
                && !apart.ContainsKey(entry.Key)
                && entry.Key != Bench
            )
            {
                Collect(facts, at, entry.Key, shape.Keys[at], entry.Value);
            }
        }

        // In the order of the shape: in which order keys are written says nothing.
        return [.. facts.OrderBy(pair => pair.Place).Select(pair => pair.Fact)];
    }

    private static void Collect(List<(int Place, EntryFact Fact)> facts, int place, string name, Key key, Node value)
    {
        switch (value)
        {
            case ScalarNode { IsNothing: false } scalar when !(name == "state" && scalar.Text == Usual):
                facts.Add((place, new(name, scalar.Text, FactMeaning.Read(key, scalar.Text), scalar.Spot)));
                break;
            case SequenceNode list when key.Inner is null:
                var words = string.Join(", ", list.Items.OfType<ScalarNode>().Select(item => item.Text));
                facts.Add((place, new(name, words, words, list.Spot)));
                break;
            case MappingNode mapping when key.Inner is { } inner:
                facts.AddRange(Facts(mapping, inner, FrozenDictionary<string, EntryShape>.Empty).Select(Under(place, name)));
                break;
            case SequenceNode list when key.Inner is { } inner:
                var nth = 0;
                foreach (var item in list.Items.OfType<MappingNode>())
                {
                    nth++;
                    var at = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{name} {nth}");
                    facts.AddRange(Facts(item, inner, FrozenDictionary<string, EntryShape>.Empty).Select(Under(place, at)));
                }

                break;
        }
    }

    private static Func<EntryFact, (int Place, EntryFact Fact)> Under(int place, string name) =>
        fact => (place, fact with { Key = $"{name} {fact.Key}" });

    private static string Of(MappingNode item, EntryShape names) =>
        names.Of.Select(key => Scalar(item, key)).FirstOrDefault(text => text is not null) ?? string.Empty;

    private static string? Scalar(MappingNode item, string key) =>
        item.ValueOf(key) is ScalarNode { IsNothing: false } scalar ? scalar.Text : null;

    private static IEnumerable<MappingNode> Items(Node? list) => (list as SequenceNode)?.Items.OfType<MappingNode>() ?? [];
}
