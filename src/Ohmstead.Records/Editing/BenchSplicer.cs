using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Editing;

/// <summary>Splices entries of many days into the visits of one record, each at its day, with one reading of the record before and one
/// after.</summary>
/// <remarks>
/// What comes of it is read again and the new entries are taken out of that reading: what is left must be, word for word and in the same
/// order, what the record said before, and what was taken out must be what was to be put in. Else nothing comes of it.
/// </remarks>
/// <param name="editor">The record.</param>
/// <param name="ofStock">True for the stock file, whose visits are with parts of the drawer.</param>
public sealed class BenchSplicer(RecordEditor editor, bool ofStock = false)
{
    private static readonly string[] Lists = ["found", "readings", "work", "decided", "proof", "photos", "scrapped"];

    // Asked for at each entry of a table: the visits of the record as it was.
    private readonly ImmutableArray<MappingNode> known = Items(editor.Root);

    /// <summary>The visits of the record, in order.</summary>
    public IReadOnlyList<KnownVisit> Visits { get; } =
    [
        .. Items(editor.Root)
            .Select(
                (visit, at) =>
                    new KnownVisit(
                        at,
                        visit.Spot.Line,
                        visit
                            .Entries.Where(entry => entry.Value is ScalarNode)
                            .ToDictionary(entry => entry.Key, entry => ((ScalarNode)entry.Value).Text, StringComparer.Ordinal)
                    )
            ),
    ];

    /// <summary>Whether a list of a visit holds an entry already, word for word; a verdict beside it does not count.</summary>
    /// <param name="visit">The visit, from 0.</param>
    /// <param name="list">The list.</param>
    /// <param name="item">The entry, as one line of YAML.</param>
    public bool Holds(int visit, string list, string item)
    {
        if (known[visit].ValueOf(list) is not SequenceNode there || editor.EntryOf(item) is not { } entry)
        {
            return false;
        }

        var said = NodeTrail.Walk(WithoutVerdict(entry));
        return there.Items.OfType<MappingNode>().Any(one => NodeTrail.Walk(WithoutVerdict(one)).SequenceEqual(said));
    }

    /// <summary>Whether a visit has anything in a list, about a place where one is given.</summary>
    /// <param name="visit">The visit, from 0.</param>
    /// <param name="list">The list.</param>
    /// <param name="place">The part, the place or the point; null for any.</param>
    public bool Has(int visit, string list, string? place = null) =>
        known[visit].ValueOf(list) is SequenceNode there
        && there.Items.OfType<MappingNode>().Any(one => place is null || DayOrder.PlacesOf(one).Contains(place));

    /// <summary>Whether an entry may join a visit without saying that it happened earlier than it did.</summary>
    /// <param name="visit">The visit, from 0.</param>
    /// <param name="list">The list.</param>
    /// <param name="item">The entry, as one line of YAML.</param>
    public bool MayJoin(int visit, string list, string item) =>
        editor.EntryOf(item) is { } entry && DayOrder.MayJoin(known[visit], list, entry);

    /// <summary>What an entry says of where and when it is: its part, place or point, and the state in which a reading was taken; null
    /// where it says none.</summary>
    /// <param name="item">The entry, as one line of YAML.</param>
    public (string? Place, string? State) SaidBy(string item) =>
        editor.EntryOf(item) is { } entry ? (DayOrder.PlacesOf(entry).FirstOrDefault(), DayOrder.StateOf(entry)) : (null, null);

    /// <summary>Puts all entries in.</summary>
    /// <param name="visits">The visits, no two of them joining the same one; those of their own in the order of what happened.</param>
    public SplicedBench Put(IReadOnlyList<VisitEntries> visits)
    {
        if (visits.Count == 0)
        {
            return new(editor.Source.Text, null, []);
        }

        if (editor.Root.ValueOf("bench") is SequenceNode { IsFlow: true, Items.Length: > 0 } or ScalarNode { IsNothing: false })
        {
            return Refused($"the list 'bench' on line {Number(editor.Root.ValueOf("bench")!.Spot.Line)} stands in brackets", visits);
        }

        var edits = new List<TextEdit>();
        foreach (var joined in visits.Where(one => one.Visit is not null))
        {
            var visit = known[joined.Visit!.Value];
            foreach (
                var list in joined
                    .Entries.GroupBy(entry => entry.List, StringComparer.Ordinal)
                    .OrderBy(list => Array.IndexOf(Lists, list.Key))
            )
            {
                if (
                    visit.IsFlow
                    || editor.IntoList(
                        visit,
                        ofStock ? BenchShape.InStock : BenchShape.Shape,
                        list.Key,
                        [.. list.Select(entry => new[] { entry.Item })]
                    )
                        is not { } edit
                )
                {
                    return Refused(
                        $"the visit on line {Number(visit.Spot.Line)} is not laid out as lines that begin with a dash",
                        [joined]
                    );
                }

                edits.Add(edit);
            }
        }

        // Where a new visit goes: behind the last visit of its day or of a day before; one that came first, before the first of its day.
        var places = new SortedDictionary<int, List<VisitEntries>>();
        foreach (var own in visits.Where(one => one.Visit is null))
        {
            var behind = -1;
            for (var at = 0; at < known.Length; at++)
            {
                var order = string.CompareOrdinal(Visits[at].Values.GetValueOrDefault("date"), own.Date);
                if (order < 0 || (order == 0 && !own.IsFirstOfDay))
                {
                    behind = at;
                }
            }

            places.TryAdd(behind, []);
            places[behind].Add(own);
        }

        foreach (var (behind, own) in places)
        {
            string[][] items = [.. own.OrderBy(one => one.Date, StringComparer.Ordinal).Select(LinesOf)];
            if (
                (
                    known.Length == 0
                        ? editor.IntoList(editor.Root, ofStock ? FileShapes.Stock : FileShapes.Board, "bench", items)
                        : editor.VisitEdit(behind, items)
                )
                is not { } edit
            )
            {
                return Refused("the visits of the record are laid out in a way that none can be put between them", own);
            }

            edits.Add(edit);
        }

        return Checked(Merged(edits), visits, places);
    }

    // A list put behind a visit's last line and a visit put there, too, are one change: the list belongs to the visit above.
    private static IEnumerable<TextEdit> Merged(List<TextEdit> edits) =>
        edits
            .Select((edit, order) => (Edit: edit, Order: order))
            .GroupBy(one => one.Edit.Offset)
            .Select(group =>
                group
                    .OrderBy(one => one.Order)
                    .Select(one => one.Edit)
                    .Aggregate((first, second) => new TextEdit(first.Offset, first.Length + second.Length, first.Text + second.Text))
            );

    private SplicedBench Checked(
        IEnumerable<TextEdit> edits,
        IReadOnlyList<VisitEntries> visits,
        SortedDictionary<int, List<VisitEntries>> places
    )
    {
        var text = TextEdit.Apply(editor.Source.Text, edits);
        if (editor.ReadAgain(text) is not { } after)
        {
            return Refused("the record is laid out in a way that these entries cannot be put into", visits);
        }

        var (where, left, isAsMeant) = TakenOut(after, visits, places);
        if (!isAsMeant || !NodeTrail.Walk(left).SequenceEqual(NodeTrail.Walk(Emptied(editor.Root))))
        {
            return Refused("the record is laid out in a way that these entries cannot be put into without touching more", visits);
        }

        var (folded, root) = editor.Folded(text, after);
        return new(folded, null, SpotsOf(root, where));
    }

    // The reading without what was put in; where each entry stands, in the order given; and whether all of it is as it was meant.
    private (List<(int Visit, string List, int At)> Where, MappingNode Left, bool IsAsMeant) TakenOut(
        MappingNode after,
        IReadOnlyList<VisitEntries> visits,
        SortedDictionary<int, List<VisitEntries>> places
    )
    {
        var (now, count, own) = (Items(after), known.Length, places.Sum(place => place.Value.Count));
        var where = new Dictionary<VisitEntries, int>(ReferenceEqualityComparer.Instance);
        var kept = new List<(Node Visit, int Before)>();
        var isAsMeant = now.Length == count + own;
        var at = 0;
        void Own(int behind)
        {
            foreach (var one in places.GetValueOrDefault(behind, []).OrderBy(one => one.Date, StringComparer.Ordinal))
            {
                where[one] = at++;
            }
        }

        var joining = visits.Where(one => one.Visit is not null).DistinctBy(one => one.Visit).ToDictionary(one => one.Visit!.Value);
        Own(-1);
        for (var before = 0; before < count && at < now.Length; before++)
        {
            if (joining.TryGetValue(before, out var joined))
            {
                where[joined] = at;
            }

            kept.Add((now[at++], before));
            Own(before);
        }

        var spots = new List<(int, string, int)>();
        var left = kept.ToDictionary(one => one.Before, one => (MappingNode)one.Visit);
        foreach (var one in visits)
        {
            var index = where.GetValueOrDefault(one, -1);
            isAsMeant &= index >= 0 && index < now.Length;
            var old = one.Visit is { } joins ? known[joins] : null;
            var counts = new Dictionary<string, int>(StringComparer.Ordinal);
            foreach (var (list, item) in one.Entries)
            {
                var place = counts.TryGetValue(list, out var taken) ? taken : (old?.ValueOf(list) as SequenceNode)?.Items.Length ?? 0;
                counts[list] = place + 1;
                spots.Add((index, list, place));
                isAsMeant =
                    isAsMeant
                    && now[index].ValueOf(list) is SequenceNode items
                    && items.Items.Length > place
                    && items.Items[place] is MappingNode entry
                    && editor.EntryOf(item) is { } meant
                    && NodeTrail.Walk(entry).SequenceEqual(NodeTrail.Walk(meant));
            }

            isAsMeant = isAsMeant && IsWhole(now[index], one, counts);
            if (isAsMeant && one.Visit is { } visit)
            {
                left[visit] = Without(now[index], known[visit], counts.Keys);
            }
        }

        var bench = new SequenceNode(
            default,
            [.. Enumerable.Range(0, count).Select(index => (Node)left.GetValueOrDefault(index, after))],
            false
        );
        MappingEntry[] entries =
        [
            .. after
                .Entries.Where(entry => entry.Key != "bench" || count > 0)
                .Select(entry => entry.Key == "bench" ? entry with { Value = bench } : entry),
        ];
        return (spots, after with { Entries = [.. entries] }, isAsMeant);
    }

    // A visit of its own says its head and its entries, and nothing beside them.
    private static bool IsWhole(MappingNode visit, VisitEntries meant, Dictionary<string, int> counts) =>
        meant.Visit is not null
        || (
            visit
                .Entries.Where(entry => entry.Value is ScalarNode)
                .Select(entry => (entry.Key, ((ScalarNode)entry.Value).Text))
                .SequenceEqual(meant.Head)
            && visit
                .Entries.Where(entry => entry.Value is not ScalarNode)
                .All(entry => entry.Value is SequenceNode list && counts.GetValueOrDefault(entry.Key) == list.Items.Length)
        );

    // The first items of each list stay; a list that was not there before, or was empty, is as it was.
    private static MappingNode Without(MappingNode now, MappingNode before, IEnumerable<string> lists)
    {
        var changed = lists.ToHashSet(StringComparer.Ordinal);
        return now with
        {
            Entries =
            [
                .. now
                    .Entries.Where(entry => !changed.Contains(entry.Key) || before.ValueOf(entry.Key) is not null)
                    .Select(entry =>
                        !changed.Contains(entry.Key) ? entry
                        : before.ValueOf(entry.Key) is SequenceNode { Items.Length: > 0 } old && entry.Value is SequenceNode list
                            ? entry with
                            {
                                Value = list with { Items = [.. list.Items.Take(old.Items.Length)] },
                            }
                        : entry with { Value = before.ValueOf(entry.Key)! }
                    ),
            ],
        };
    }

    // A bench with nothing in it says as much as none.
    private static MappingNode Emptied(MappingNode root) =>
        Items(root).Length > 0 ? root : root with { Entries = [.. root.Entries.Where(entry => entry.Key != "bench")] };

    private static Spot[] SpotsOf(MappingNode root, List<(int Visit, string List, int At)> where) =>
        [.. where.Select(one => ((SequenceNode)Items(root)[one.Visit].ValueOf(one.List)!).Items[one.At].Spot)];

    private static string[] LinesOf(VisitEntries visit) =>
        [
            .. visit.Head.Select(entry => $"{entry.Key}: {FlowText.Scalar(entry.Value)}"),
            .. Lists.SelectMany(list =>
                visit.Entries.Where(entry => entry.List == list).Select(entry => $"  - {entry.Item}") is var items && items.Any()
                    ? items.Prepend($"{list}:")
                    : []
            ),
        ];

    private static MappingNode WithoutVerdict(MappingNode entry) =>
        entry with
        {
            Entries = [.. entry.Entries.Where(one => one.Key != BenchShape.Verdict.Name)],
        };

    private static ImmutableArray<MappingNode> Items(MappingNode root) =>
        root.ValueOf("bench") is SequenceNode list ? [.. list.Items.OfType<MappingNode>()] : [];

    private static SplicedBench Refused(string message, IReadOnlyList<VisitEntries> visits) =>
        new(
            null,
            new EditRefusal(message, $"write it by hand: {visits[0].Date}, {visits[0].Entries[0].List}: {visits[0].Entries[0].Item}"),
            []
        );

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A record with its new entries, or why it stays as it is.</summary>
/// <param name="Text">The whole text, or null.</param>
/// <param name="Refusal">Why there is none, or null.</param>
/// <param name="Spots">Where each entry stands in the text, in the order in which they were given.</param>
public sealed record SplicedBench(string? Text, EditRefusal? Refusal, IReadOnlyList<Spot> Spots);
