using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Editing;

/// <summary>Takes one entry out of a visit to the bench. A list that is left with nothing goes with it, and so does a visit that then says
/// nothing but who was there.</summary>
/// <remarks>What comes of it is read again: it must say all that the record said, in the same order, but for the entry.</remarks>
/// <param name="editor">The record.</param>
public sealed class EntryRemover(RecordEditor editor)
{
    private static readonly string[] Heads = ["date", "by", "temperature", "instrument", "powered"];

    private readonly MappingEntry bench = editor.Root.Entries.FirstOrDefault(entry => entry.Key == "bench");

    /// <summary>The entries of the visits that are meant, in the order of the record.</summary>
    /// <param name="isMeant">Whether a visit, by its keys and texts, is one of them.</param>
    public IReadOnlyList<StandingEntry> EntriesOf(Func<IReadOnlyDictionary<string, string>, bool> isMeant) =>
        [
            .. Visits
                .Select((visit, index) => (Visit: visit as MappingNode, Index: index))
                .Where(one =>
                    one.Visit is { } visit
                    && isMeant(
                        visit
                            .Entries.Where(entry => entry.Value is ScalarNode)
                            .ToDictionary(entry => entry.Key, entry => ((ScalarNode)entry.Value).Text, StringComparer.Ordinal)
                    )
                )
                .SelectMany(one =>
                    one.Visit!.Entries.Where(entry => entry.Value is SequenceNode)
                        .SelectMany(list =>
                            ((SequenceNode)list.Value).Items.Select(
                                (item, at) =>
                                    new StandingEntry(
                                        one.Index,
                                        list.Key,
                                        at,
                                        item.Spot.Line,
                                        TextOf(item),
                                        item is MappingNode entry ? DayOrder.PlacesOf(entry) : [],
                                        item is MappingNode said ? OtherBoardOf(said) : null
                                    )
                            )
                        )
                ),
        ];

    /// <summary>Takes one out.</summary>
    /// <param name="entry">The entry.</param>
    public EditOutcome Remove(StandingEntry entry)
    {
        var visit = (MappingNode)Visits[entry.Visit];
        var list = visit.Entries.Single(known => known.Key == entry.List);
        var (left, edits) = Cut(visit, list, entry);
        return
            edits is not null
            && TextEdit.Apply(editor.Source.Text, edits) is var text
            && editor.ReadAgain(text) is { } after
            && NodeTrail.Walk(after).SequenceEqual(NodeTrail.Walk(left))
            ? EditOutcome.Written(text)
            : EditOutcome.Refused(
                $"the entry on line {Number(entry.Line)} does not stand on lines of its own",
                $"take it out by hand: {entry.List}: {entry.Text}"
            );
    }

    private ImmutableArray<Node> Visits => bench.Value is SequenceNode list ? list.Items : [];

    // What the record shall say without the entry, and the lines that go; no lines where they hold something else, too.
    private (MappingNode Left, IReadOnlyList<TextEdit>? Edits) Cut(MappingNode visit, MappingEntry list, StandingEntry entry)
    {
        var items = (SequenceNode)list.Value;
        var item = LinesOf(items, entry.At);
        if (items.Items.Length > 1)
        {
            var less = items with { Items = items.Items.RemoveAt(entry.At) };
            return (WithVisit(entry.Visit, With(visit, list, less)), item is { } lines ? [lines] : null);
        }

        if (visit.Entries.Any(known => known.Key != list.Key && !Heads.Contains(known.Key, StringComparer.Ordinal)))
        {
            return (WithVisit(entry.Visit, With(visit, list, null)), item is { } lines ? [LineOf(list), lines] : null);
        }

        // Remarks in a visit are about it, and go where it goes.
        var visits = (SequenceNode)bench.Value;
        var whole = LinesOf(visits, entry.Visit);
        return visits.Items.Length > 1
            ? (WithVisit(entry.Visit, null), whole is { } gone ? [gone] : null)
            : (With(editor.Root, bench, null), whole is { } last ? [LineOf(bench), last] : null);
    }

    private MappingNode WithVisit(int index, MappingNode? visit)
    {
        var visits = (SequenceNode)bench.Value;
        return With(
            editor.Root,
            bench,
            visits with
            {
                Items = visit is null ? visits.Items.RemoveAt(index) : visits.Items.SetItem(index, visit),
            }
        );
    }

    private static MappingNode With(MappingNode mapping, MappingEntry entry, Node? value) =>
        mapping with
        {
            Entries =
            [
                .. mapping
                    .Entries.Where(known => value is not null || known.Key != entry.Key)
                    .Select(known => known.Key == entry.Key ? known with { Value = value! } : known),
            ],
        };

    // The key of a list stands on a line of its own where its items do.
    private TextEdit LineOf(MappingEntry list) => Lines(list.KeySpot.Line, list.KeySpot.Line);

    private TextEdit? LinesOf(SequenceNode list, int index)
    {
        var item = list.Items[index];
        var dash = list.IsFlow ? -1 : editor.Lines.DashBefore(item.Spot);
        return dash < 0 || editor.Source.Line(item.Spot.Line)[..dash].ContainsAnyExcept(' ')
            ? null
            : Lines(item.Spot.Line, editor.Lines.LastOf(item.Spot.Line, dash, listMayHang: false));
    }

    private TextEdit Lines(int first, int last)
    {
        var start = editor.Source.LineStart(first);
        return new(start, editor.Lines.Behind(last) - start, string.Empty);
    }

    // The entry as it stands, on one line.
    private string TextOf(Node item)
    {
        var dash = editor.Lines.DashBefore(item.Spot);
        var from = editor.Source.OffsetOf(item.Spot);
        var last = dash < 0 ? item.Spot.Line : editor.Lines.LastOf(item.Spot.Line, dash, listMayHang: false);
        var text = editor.Source.Text[from..Math.Max(from, editor.Lines.Behind(last))];
        return string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    private static string? OtherBoardOf(MappingNode entry) =>
        (entry.ValueOf("taken_from") ?? entry.ValueOf("went_to")) is ScalarNode { IsNothing: false } other ? other.Text : null;

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}

/// <summary>An entry that a visit has.</summary>
/// <param name="Visit">The visit, from 0.</param>
/// <param name="List">The list of the visit.</param>
/// <param name="At">Its place in the list, from 0.</param>
/// <param name="Line">Its line.</param>
/// <param name="Text">What is written, as one line.</param>
/// <param name="Places">The places that it is about.</param>
/// <param name="OtherBoard">The board and place that say it, too: of a part that went from one board to another. Else null.</param>
public sealed record StandingEntry(
    int Visit,
    string List,
    int At,
    int Line,
    string Text,
    IReadOnlyCollection<string> Places,
    string? OtherBoard
);
