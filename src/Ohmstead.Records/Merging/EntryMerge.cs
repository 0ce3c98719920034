using System.Collections.Immutable;
using Ohmstead.Records.Editing.Layout;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Merging;

/// <summary>One try to merge a record by its entries.</summary>
internal static class EntryMerge
{
    /// <summary>Tries.</summary>
    /// <returns>The merged text, proved; or null where the entries do not stand on lines of their own, or the proof fails.</returns>
    internal static (string Text, MergeOutcome Outcome)? Try(
        MergedFile file,
        Sides texts,
        ReadRecord? before,
        ReadRecord one,
        ReadRecord other,
        MergeProof proof
    )
    {
        var old = before is null ? Pieces.None : Cut(file, texts.Before!, before);
        if (old is null || Cut(file, texts.One, one) is not { } first || Cut(file, texts.Other, other) is not { } second)
        {
            return null;
        }

        var visits = (Old: Visits(old), First: Visits(first), Second: Visits(second));
        var (newOfFirst, newOfSecond) = (Added(visits.Old, visits.First), Added(visits.Old, visits.Second));
        var names = (Above: newOfFirst.LastOrDefault(Sides.NoNames.Above), Below: newOfSecond.LastOrDefault(Sides.NoNames.Below));
        var merging = new ThreeWay(Meetings.Of(visits.Old, visits.First, visits.Second), names.Above, names.Below);
        var entries = merging.WithMeetings(merging.Keys(file.Shape, old.Entries, first.Entries, second.Entries, Standing.Top));
        var pieces = new Pieces(
            merging.Line(before is null ? null : old.Head, first.Head, second.Head),
            entries,
            ThreeWay.Kept(old.Tail, first.Tail, second.Tail),
            merging.Line(before is null ? null : old.Fence, first.Fence, second.Fence),
            string.Empty
        );
        var record = new MergedRecord(pieces, LineMerge.Merge(old.Story, first.Story, second.Story), names);
        if (merging.IsDoubted || !IsProved(file, texts, record, proof))
        {
            return null;
        }

        ImmutableArray<string> reasons =
        [
            .. merging.Reasons,
            .. record.Story.Any(stretch => stretch.Other is not null) ? ["the story: both changed the same lines"] : Array.Empty<string>(),
        ];
        var text = record.Text(Pick.Marks, file.MarkSize, texts.LineEnd);
        return (
            record.Conflicts > 0 ? text : Tidied(file, texts, text),
            new(default, record.Conflicts, reasons) { Visits = [.. newOfFirst.Concat(newOfSecond).Distinct(StringComparer.Ordinal)] }
        );
    }

    private static Pieces? Cut(MergedFile file, string text, ReadRecord read) =>
        Pieces.Of(new SourceText(file.Path, text), file.Form, read.Root);

    private static ImmutableArray<Piece> Visits(Pieces record) => record.At("bench") is { HoldsItems: true } bench ? bench.Inside : [];

    private static string[] Added(ImmutableArray<Piece> before, ImmutableArray<Piece> now) =>
        [.. AddedEntry.All(before, now).Select(entry => MergeWords.OfVisit(entry.Visit)).Distinct(StringComparer.Ordinal)];

    private static bool IsProved(MergedFile file, Sides texts, MergedRecord record, MergeProof proof)
    {
        Pick[] picks = record.Conflicts > 0 ? [Pick.Above, Pick.Below] : [Pick.Above];
        return proof.Holds([.. picks.Select(pick => (record.Text(pick, file.MarkSize, texts.LineEnd), (MappingNode?)record.Said(pick)))]);
    }

    // What was tidy on both sides is tidy; where it cannot be laid out without doubt it stays as it is.
    private static string Tidied(MergedFile file, Sides texts, string text) =>
        Laid(file, text) is { State: LayoutState.Changed } laid
        && Laid(file, texts.One).State == LayoutState.Tidy
        && Laid(file, texts.Other).State == LayoutState.Tidy
            ? laid.Text
            : text;

    private static LayoutOutcome Laid(MergedFile file, string text) => RecordLayout.Compute(file.Path, text, file.Form, file.Reader);
}
