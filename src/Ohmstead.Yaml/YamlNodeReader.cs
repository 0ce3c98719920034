using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Ohmstead.Records.Decoding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Yaml;

/// <summary>Reads records with YamlDotNet's event stream, the only part of that library that is used.</summary>
/// <remarks>One instance is used by one thread at a time and keeps its buffers from file to file.</remarks>
public sealed class YamlNodeReader : INodeReader
{
    private readonly NodeBuffers buffers = new();
    private readonly Lock turn;

    /// <summary>A reader that has the library for itself.</summary>
    public YamlNodeReader()
        : this(new Lock()) { }

    /// <summary>A reader that shares the library with others.</summary>
    /// <param name="turn">What each of them holds while it reads with the library.</param>
    internal YamlNodeReader(Lock turn) => this.turn = turn;

    /// <inheritdoc/>
    public NodeReading Read(string path, ReadOnlyMemory<byte> bytes, FileForm form, ReadingLimits limits)
    {
        if (bytes.Length > limits.FileBytes)
        {
            return Nothing(TooLarge(new Place(path, 1, 1), "file", bytes.Length, limits.FileBytes));
        }

        var decoding = SourceDecoder.Decode(path, bytes.Span);
        return decoding.Source is { } source ? Read(source, form, limits) : Nothing(decoding.Finding!);
    }

    private NodeReading Read(SourceText source, FileForm form, ReadingLimits limits)
    {
        var findings = new FindingList();
        MergeConflicts.AddTo(findings, source);
        var split =
            form == FileForm.Yaml
                ? new FrontMatterReading(new FrontMatter(0, source.Text.Length, source.Text.Length), null)
                : FrontMatter.Find(source);
        if (split.FrontMatter is not { } frontMatter)
        {
            return Nothing(findings.Count > 0 ? findings.ToImmutable() : [split.Finding!]);
        }

        var isUndecided = findings.Told.Any(conflict => source.OffsetOf(SpotOf(conflict)) < frontMatter.End);
        var canBeRead = CharacterScan.AddTo(findings, source, frontMatter.End);
        LineEnds.AddTo(findings, source);
        if (form != FileForm.Yaml && frontMatter.CutShort(source) is { } cut)
        {
            findings.Add(cut);
        }

        var body = ReadBody(source, frontMatter, limits, findings);
        var root = isUndecided || !canBeRead ? null : ReadYaml(source, frontMatter, limits, findings);
        return new NodeReading(root, body, BodyLine(source, frontMatter), findings.ToImmutable().Sort(ByPlace));
    }

    private MappingNode? ReadYaml(SourceText source, FrontMatter frontMatter, ReadingLimits limits, FindingList findings)
    {
        var text = source.Text;
        var (start, end) = (frontMatter.Start, frontMatter.End);
        var size = Encoding.UTF8.GetByteCount(text.AsSpan(start, end - start));
        if (size > limits.FrontMatterBytes)
        {
            findings.Add(TooLarge(source.PlaceAt(start), "front matter", size, limits.FrontMatterBytes));
            return null;
        }

        var slice = new YamlSlice(source, start, end, Indentation.Tabs(text, start, end));
        if (Indentation.Directive(text, start, end) is >= 0 and var directive)
        {
            findings.Add(Refusals.Directive(slice, directive));
            return null;
        }

        buffers.Clear();
        var root = Build(slice, limits, findings);
        if (root is not null && slice.Tabs.Left() is { Count: > 0 } tabs)
        {
            findings.Add(Refusals.Tabs(slice, tabs[0], tabs.Count - 1));
        }

        return root;
    }

    private MappingNode? Build(YamlSlice slice, ReadingLimits limits, FindingList findings)
    {
        var builder = new NodeBuilder(slice, limits, buffers, findings);
        try
        {
            lock (turn)
            {
                return builder.Read();
            }
        }
        catch (Exception exception) when (exception is not OutOfMemoryException)
        {
            // The library throws its own exceptions for broken YAML and half a dozen others for YAML that it did not expect to be so
            // broken; each means the same: this file cannot be read. What else was found in it may only follow from that.
            findings.Clear();
            findings.Add(YamlTrouble.Explain(slice, exception, builder.Position));
            return null;
        }
    }

    private static string ReadBody(SourceText source, FrontMatter frontMatter, ReadingLimits limits, FindingList findings)
    {
        var body = source.Text.AsSpan(frontMatter.BodyStart);
        var size = Encoding.UTF8.GetByteCount(body);
        if (size <= limits.BodyBytes)
        {
            return body.ToString();
        }

        findings.Add(TooLarge(source.PlaceAt(frontMatter.BodyStart), "text below the front matter", size, limits.BodyBytes));
        return string.Empty;
    }

    private static int BodyLine(SourceText source, FrontMatter frontMatter) => source.LineAt(frontMatter.BodyStart);

    private static Finding TooLarge(Place place, string what, long size, long limit) =>
        new(
            TextChecks.TooLarge,
            Severity.Error,
            place,
            string.Create(CultureInfo.InvariantCulture, $"the {what} has {size} bytes; the limit is {limit}"),
            "divide the record, or raise the limit"
        );

    private static Spot SpotOf(Finding finding) => new(finding.Place.Line, finding.Place.Column);

    private static int ByPlace(Finding one, Finding other)
    {
        var line = one.Place.Line.CompareTo(other.Place.Line);
        var column = line != 0 ? line : one.Place.Column.CompareTo(other.Place.Column);
        return column != 0 ? column : string.CompareOrdinal(one.Check, other.Check);
    }

    private static NodeReading Nothing(params ImmutableArray<Finding> findings) => new(null, string.Empty, 1, findings);
}
