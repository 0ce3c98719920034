using System.Collections.Frozen;
using System.Text;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Editing;

/// <summary>Makes a design out of the parts, points and hazards that one board lists, by moving their lines as they stand.</summary>
/// <remarks>
/// A part with a date code stays on the board as well, for the code is that unit's own and a board's part stands in place of the design's.
/// Hazards that grew on the one unit (a leaking cell, a crazed suppressor, leaked electrolyte) stay. Both texts are read again: together
/// they must say what the board said, in the same order, or nothing comes of it.
/// </remarks>
public static class DesignSplitter
{
    private const string DateCode = "date_code";
    private static readonly FrozenSet<string> OfTheUnit = FrozenSet.Create(
        StringComparer.Ordinal,
        "leaking cell",
        "crazed suppressor",
        "leaked electrolyte"
    );

    /// <summary>Takes a record apart.</summary>
    /// <param name="editor">The record of the board.</param>
    /// <param name="name">The name of the design.</param>
    /// <param name="title">Its title.</param>
    /// <param name="remark">A first line for editors, or null.</param>
    /// <param name="reader">Reads the design again.</param>
    public static DesignSplit Split(RecordEditor editor, string name, string title, string? remark, INodeReader reader)
    {
        if (editor.Root.ValueOf("design") is ScalarNode { IsNothing: false } known)
        {
            return DesignSplit.Refused(
                $"the board has the design '{known.Text}' already",
                $"add to designs/{known.Text}.md by hand what the board should share"
            );
        }

        var cuts = new List<(ListCut Cut, int[] Shared, int[] Moved)>();
        foreach (var key in new[] { "parts", "points", "hazards" })
        {
            var (cut, refusal) = ListCut.Plan(editor, key);
            if (refusal is not null)
            {
                return new DesignSplit(null, null, refusal);
            }

            if (cut is not null)
            {
                var all = Enumerable.Range(0, cut.Items.Length).ToArray();
                var shared =
                    key == "hazards" ? [.. all.Where(i => !OfTheUnit.Contains(TextOf(cut.Items[i], "hazard") ?? string.Empty))] : all;
                cuts.Add((cut, shared, key == "parts" ? [.. all.Where(i => TextOf(cut.Items[i], DateCode) is null)] : shared));
            }
        }

        if (!cuts.Any(one => one.Cut.Entry.Key is "parts" or "points"))
        {
            return DesignSplit.Refused(
                "the board lists no parts and no points of its own",
                "write them into the record first, or take them in with: ohmstead start parts"
            );
        }

        var end = editor.Lines.LineEndAt(1);
        var board = TextEdit.Apply(
            editor.Source.Text,
            [
                editor.NewValue(FileShapes.Board, "design", FlowText.TextScalar(name)),
                .. cuts.Where(one => one.Moved.Length > 0).SelectMany(one => one.Cut.Without(one.Moved)),
            ]
        );
        var design = DesignText(name, title, remark, cuts, end);
        var after = editor.ReadAgain(board);
        var read = reader.Read($"designs/{name}.md", Encoding.UTF8.GetBytes(design), FileForm.Markdown, ReadingLimits.Usual);
        var isSafe =
            after is not null
            && read.Root is { } made
            && !read.Findings.Any(finding => finding.Severity == Severity.Error)
            && NodeTrail.Walk(after).SequenceEqual(NodeTrail.Walk(BoardLeft(editor.Root, after, cuts)))
            && NodeTrail.Walk(made).SequenceEqual(NodeTrail.Walk(DesignMeant(made, cuts)));
        return !isSafe
            ? DesignSplit.Refused(
                "the record is laid out in a way that its lists cannot be moved without touching more than themselves",
                "move the lists into the design by hand"
            )
            : new DesignSplit(board, design, null)
            {
                Parts = Count("parts"),
                Points = Count("points"),
                Hazards = Count("hazards"),
                Kept =
                [
                    .. cuts.Where(one => one.Cut.Entry.Key == "parts")
                        .SelectMany(one => one.Shared.Except(one.Moved).Select(i => TextOf(one.Cut.Items[i], "ref") ?? string.Empty)),
                ],
            };

        int Count(string key) => cuts.Where(one => one.Cut.Entry.Key == key).Sum(one => one.Shared.Length);
    }

    private static string DesignText(
        string name,
        string title,
        string? remark,
        IReadOnlyList<(ListCut Cut, int[] Shared, int[] Moved)> cuts,
        string end
    )
    {
        var text = new StringBuilder("---").Append(end);
        if (remark is not null)
        {
            text.Append("# ").Append(remark).Append(end);
        }

        text.Append("design: ")
            .Append(FlowText.TextScalar(name))
            .Append(end)
            .Append("title: ")
            .Append(FlowText.TextScalar(title))
            .Append(end);
        foreach (var (cut, shared, moved) in cuts.Where(one => one.Shared.Length > 0))
        {
            text.Append(cut.KeyText);
            foreach (var index in shared)
            {
                text.Append(moved.Contains(index) ? cut.ItemText(index) : cut.ItemTextWithout(index, DateCode));
            }
        }

        return text.Append("format: 1").Append(end).Append("---").Append(end).Append(end).Append("## The design").Append(end).ToString();
    }

    // What the board must say afterwards: all it said, without the items that went, and the design where it was put.
    private static MappingNode BoardLeft(
        MappingNode before,
        MappingNode after,
        IReadOnlyList<(ListCut Cut, int[] Shared, int[] Moved)> cuts
    )
    {
        var entries = new List<MappingEntry>();
        foreach (var entry in before.Entries.Where(entry => entry.Key != "design"))
        {
            var cut = cuts.FirstOrDefault(one => one.Cut?.Entry.KeySpot == entry.KeySpot);
            if (cut.Cut is null)
            {
                entries.Add(entry);
            }
            else if (cut.Moved.Length < cut.Cut.Items.Length)
            {
                entries.Add(
                    entry with
                    {
                        Value = Some(cut.Cut, [.. Enumerable.Range(0, cut.Cut.Items.Length).Except(cut.Moved)], _ => null),
                    }
                );
            }
        }

        var place = after.Entries.TakeWhile(entry => entry.Key != "design").Count();
        entries.Insert(Math.Min(place, entries.Count), new MappingEntry(default, "design", after.ValueOf("design") ?? before));
        return before with { Entries = [.. entries] };
    }

    // What the design must say: its own three values, and of the lists what the board shared, date codes left out.
    private static MappingNode DesignMeant(MappingNode made, IReadOnlyList<(ListCut Cut, int[] Shared, int[] Moved)> cuts) =>
        made with
        {
            Entries =
            [
                .. made.Entries.Take(2),
                .. cuts.Where(one => one.Shared.Length > 0)
                    .Select(one => one.Cut.Entry with { Value = Some(one.Cut, one.Shared, i => one.Moved.Contains(i) ? null : DateCode) }),
                made.Entries[^1],
            ],
        };

    private static SequenceNode Some(ListCut cut, IReadOnlyList<int> items, Func<int, string?> without) =>
        new(
            cut.Entry.Value.Spot,
            [
                .. items.Select(i =>
                    without(i) is { } key
                        ? cut.Items[i] with
                        {
                            Entries = [.. cut.Items[i].Entries.Where(entry => entry.Key != key)],
                        }
                        : cut.Items[i]
                ),
            ],
            IsFlow: false
        );

    private static string? TextOf(MappingNode item, string key) =>
        item.ValueOf(key) is ScalarNode { IsNothing: false } value ? value.Text : null;
}
