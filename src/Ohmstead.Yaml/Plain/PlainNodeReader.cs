using System.Text;
using Ohmstead.Records.Decoding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Yaml.Plain;

/// <summary>Reads the records that are written as nearly all are, in YAML's plainest form, and hands every other one to a reader that knows
/// it all.</summary>
/// <remarks>
/// It never reports anything: a file with anything to report is read by the other reader. So there is one place where YAML is judged, and
/// this one only has to know when it is sure. One instance is used by one thread at a time.
/// </remarks>
/// <param name="thorough">The reader for all else, made when the first file asks for it.</param>
/// <param name="readsStates">True where states of one file are read one after the other: what stands in both on the same line is one
/// node.</param>
public sealed class PlainNodeReader(Func<INodeReader> thorough, bool readsStates = false) : INodeReader
{
    // Each level of nesting is a call, and both readers have to agree on how deep is too deep.
    private const int Deepest = 16;

    private readonly PlainTree tree = new(readsStates ? new LinesBefore() : null);
    private INodeReader? other;

    /// <summary>How many files went to the other reader.</summary>
    public int HandedOver { get; private set; }

    /// <inheritdoc/>
    public NodeReading Read(string path, ReadOnlyMemory<byte> bytes, FileForm form, ReadingLimits limits) =>
        TryRead(path, bytes, form, limits) ?? HandOver(path, bytes, form, limits);

    private NodeReading HandOver(string path, ReadOnlyMemory<byte> bytes, FileForm form, ReadingLimits limits)
    {
        HandedOver++;
        LargeFile.GiveBack(bytes.Length);
        return (other ??= thorough()).Read(path, bytes, form, limits);
    }

    private NodeReading? TryRead(string path, ReadOnlyMemory<byte> bytes, FileForm form, ReadingLimits limits)
    {
        if (bytes.Length > limits.FileBytes || SourceDecoder.Decode(path, bytes.Span) is not { Source: { } source, Finding: null })
        {
            return null;
        }

        var whole = new FrontMatter(0, source.Text.Length, source.Text.Length);
        var (start, end, bodyStart) = (form == FileForm.Yaml ? whole : FrontMatter.Find(source).FrontMatter) ?? whole with { End = -1 };
        if (
            end < 0
            || !IsWithin(source.Text.AsSpan(start, end - start), bytes.Length, limits.FrontMatterBytes)
            || !IsWithin(source.Text.AsSpan(bodyStart), bytes.Length, limits.BodyBytes)
            || !IsOfPlainCharacters(source.Text.AsSpan(start, end - start))
            || HasReturnAlone(source.Text)
            || !IsClean(source, end)
            || (form != FileForm.Yaml && new FrontMatter(start, end, bodyStart).CutShort(source) is not null)
        )
        {
            return null;
        }

        return tree.Read(source, start, end, limits with { Depth = Math.Min(Deepest, limits.Depth) }) is { } root
            ? new NodeReading(root, source.Text[bodyStart..], source.LineAt(bodyStart), [])
            : null;
    }

    // No part of a file is larger than the file: of most records nothing needs to be counted.
    private static bool IsWithin(ReadOnlySpan<char> part, int bytesOfFile, long limit) =>
        bytesOfFile <= limit || Encoding.UTF8.GetByteCount(part) <= limit;

    // Pairs of surrogates are left out since columns count code points.
    private static bool IsOfPlainCharacters(ReadOnlySpan<char> yaml) =>
        !yaml.Contains('\t') && !yaml.ContainsAnyInRange('\uD800', '\uDFFF');

    // Where the first is followed by a line feed and the file is clean, all its lines end so.
    private static bool HasReturnAlone(ReadOnlySpan<char> text) =>
        text.IndexOf('\r') is >= 0 and var first && !text[first..].StartsWith("\r\n", StringComparison.Ordinal);

    private static bool IsClean(SourceText source, int end)
    {
        var findings = new FindingList();
        MergeConflicts.AddTo(findings, source);
        _ = CharacterScan.AddTo(findings, source, end);
        LineEnds.AddTo(findings, source);
        return findings.Count == 0;
    }
}
