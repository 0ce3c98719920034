using System.Collections.Immutable;
using Ohmstead.Records.Editing.Layout;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Merging;

/// <summary>Merges what two people made of one file of a collection, by what it says: entry by entry, and only where that cannot be, line
/// by line.</summary>
/// <remarks>
/// No clean merge of lines is trusted that was not held against what was meant: two people may correct one reading, and both lines stay.
/// Entries are taken over as their lines stand. What comes of it is read again, and counts only where it says what both said, where no
/// finding is new, and where each entry kept its day, its person, its temperature and its instrument.
/// </remarks>
public static class RecordMerge
{
    // What two records that began under one name differ in where they tell of two things.
    private static readonly string[] NamesOfThings = ["board", "design", "title", "serial", "collection"];

    /// <summary>Merges.</summary>
    /// <param name="file">The file.</param>
    /// <param name="before">The content that both began from; null or empty where there is none.</param>
    /// <param name="one">The content of the first.</param>
    /// <param name="other">That of the second.</param>
    /// <returns>The merged file, or null where one of the three is no text.</returns>
    public static MergeOutcome? Merge(MergedFile file, ReadOnlyMemory<byte>? before, ReadOnlyMemory<byte> one, ReadOnlyMemory<byte> other)
    {
        if (
            TextForm.Of(before is { } bytes ? bytes.Span : []) is not { } old
            || TextForm.Of(one.Span) is not { } first
            || TextForm.Of(other.Span) is not { } second
        )
        {
            return null;
        }

        var hasBefore = old.Text.Length > 0;
        var end = hasBefore ? Of(old.LineEnd, first.LineEnd, second.LineEnd) : first.LineEnd;
        var texts = new Sides(hasBefore ? old.Ended(end).Text : null, first.Ended(end).Text, second.Ended(end).Text, end ?? "\n");
        var (text, outcome) = Merged(file, texts);
        return outcome with
        {
            Content = TextForm.Bytes(
                text,
                hasBefore ? Of(old.HasMark, first.HasMark, second.HasMark) : first.HasMark || second.HasMark,
                hasBefore ? Of(old.IsEnded, first.IsEnded, second.IsEnded) : first.IsEnded
            ),
        };
    }

    private static (string Text, MergeOutcome Outcome) Merged(MergedFile file, Sides texts)
    {
        if (texts.One == texts.Other || texts.Other == texts.Before || texts.One == texts.Before)
        {
            return (texts.One == texts.Before ? texts.Other : texts.One, new(default, 0, []));
        }

        if (file.Shape is null)
        {
            return ByLines(file, texts, proof: null, []);
        }

        var (one, other) = (ReadRecord.Of(file, texts.One), ReadRecord.Of(file, texts.Other));
        if (one is null || other is null)
        {
            var which = (one, other) is (null, null) ? "neither side can be read" : "one side cannot be read";
            return ByLines(file, texts, proof: null, [$"{which}, so it was merged line by line; 'check' tells what is wrong with it"]);
        }

        // What both began from may hold marks of a merge of its own; then nothing is known of it.
        var before = texts.Before is null ? null : ReadRecord.Of(file, texts.Before);
        var isOfNothing = before is null;
        if (isOfNothing && OtherThing(one.Root, other.Root) is { } key)
        {
            return Whole(file, texts, $"two records of one name tell of two things ('{key}' differs); give one of them another name");
        }

        var proof = new MergeProof(file, before, one, other);
        var known = isOfNothing ? texts with { Before = null } : texts;
        return EntryMerge.Try(file, known, before, one, other, proof)
            ?? (
                LaidOut(file, known) is { } laid && ReadRecord.Of(file, laid.One) is { } o && ReadRecord.Of(file, laid.Other) is { } t
                    ? EntryMerge.Try(file, laid, laid.Before is null ? null : ReadRecord.Of(file, laid.Before), o, t, proof)
                    : null
            )
            ?? ByLines(file, texts, proof, ["its entries stand in a way that they cannot be put together; it was merged line by line"]);
    }

    // All three in the one layout, where one side was laid out anew.
    private static Sides? LaidOut(MergedFile file, Sides texts)
    {
        string? Laid(string? text) =>
            text is null ? null
            : RecordLayout.Compute(file.Path, text, file.Form, file.Reader) is { State: LayoutState.Tidy or LayoutState.Changed } laid
                ? laid.Text
            : null;
        return
            Laid(texts.One) is { } one
            && Laid(texts.Other) is { } other
            && Laid(texts.Before) is var before
            && (before is null) == (texts.Before is null)
            ? texts with
            {
                Before = before,
                One = one,
                Other = other,
            }
            : null;
    }

    private static (string Text, MergeOutcome Outcome) ByLines(
        MergedFile file,
        Sides texts,
        MergeProof? proof,
        ImmutableArray<string> reasons
    )
    {
        var record = new MergedRecord(Pieces.None, LineMerge.Merge(texts.Before ?? string.Empty, texts.One, texts.Other), Sides.NoNames);
        if (record.Conflicts == 0 && proof is not null && !proof.Holds((record.Text(Pick.Above, file.MarkSize, texts.LineEnd), null)))
        {
            return Whole(file, texts, "merged line by line it would say what neither side said");
        }

        return (
            record.Text(Pick.Marks, file.MarkSize, texts.LineEnd),
            new(default, record.Conflicts, record.Conflicts > 0 && reasons.IsEmpty ? ["both sides changed the same lines"] : reasons)
            {
                IsByLines = true,
            }
        );
    }

    // Everything from the first line that differs to the last.
    private static (string Text, MergeOutcome Outcome) Whole(MergedFile file, Sides texts, string reason)
    {
        var record = new MergedRecord(Pieces.None, LineMerge.Merge("\u0000\n", texts.One, texts.Other), Sides.NoNames);
        return (record.Text(Pick.Marks, file.MarkSize, texts.LineEnd), new(default, record.Conflicts, [reason]) { IsByLines = true });
    }

    // The key by which two records of one name tell of two things, or null.
    private static string? OtherThing(MappingNode one, MappingNode other) =>
        NamesOfThings.FirstOrDefault(key =>
            (one.ValueOf(key) as ScalarNode)?.Text is { } said && (other.ValueOf(key) as ScalarNode)?.Text is { } told && said != told
        );

    private static T Of<T>(T before, T one, T other) => EqualityComparer<T>.Default.Equals(one, before) ? other : one;
}

/// <summary>The texts of a merge.</summary>
/// <param name="Before">What both began from; null where there is none.</param>
/// <param name="One">That of the first.</param>
/// <param name="Other">That of the second.</param>
/// <param name="LineEnd">How a line ends that is put in.</param>
internal sealed record Sides(string? Before, string One, string Other, string LineEnd)
{
    /// <summary>The words for the sides where nobody's initials are known: by where they stand between the marks.</summary>
    internal static (string Above, string Below) NoNames { get; } = ("above", "below");
}
