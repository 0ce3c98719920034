using System.Collections.Immutable;
using System.Text;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Merging;

/// <summary>Reads a merged text again and holds it against the texts that it came from, before it counts.</summary>
/// <param name="file">The file.</param>
/// <param name="before">The text that both began from, read; null where there is none.</param>
/// <param name="one">The text of the first, read.</param>
/// <param name="other">That of the second, read.</param>
internal sealed class MergeProof(MergedFile file, ReadRecord? before, ReadRecord one, ReadRecord other)
{
    private readonly HashSet<(string, string)> known = [.. Said(one.Findings), .. Said(other.Findings)];
    private readonly HashSet<string> ofBefore = before is null ? [] : RecordFacts.Of(before.Root);
    private readonly HashSet<string> ofOne = RecordFacts.Of(one.Root);
    private readonly HashSet<string> ofOther = RecordFacts.Of(other.Root);

    /// <summary>Whether a text, or the two texts that a person may make of it, say what was meant and nothing else.</summary>
    /// <param name="texts">The texts, each with what it must say; null where any is right that loses nothing.</param>
    internal bool Holds(params IReadOnlyList<(string Text, MappingNode? Said)> texts)
    {
        var facts = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (text, said) in texts)
        {
            if (
                ReadRecord.Of(file, text) is not { } read
                || Said(read.Findings).Any(finding => !known.Contains(finding))
                || (said is not null && !NodeTrail.Walk(said).SequenceEqual(NodeTrail.Walk(read.Root)))
            )
            {
                return false;
            }

            var told = RecordFacts.Of(read.Root);
            if (told.Any(fact => !ofOne.Contains(fact) && !ofOther.Contains(fact)))
            {
                return false;
            }

            facts.UnionWith(told);
        }

        // What is no more there, was there before: one of the two took it out or changed it.
        return ofOne
            .Concat(ofOther)
            .All(fact => facts.Contains(fact) || (ofBefore.Contains(fact) && !(ofOne.Contains(fact) && ofOther.Contains(fact))));
    }

    private static IEnumerable<(string Check, string Message)> Said(IEnumerable<Finding> findings) =>
        findings.Select(finding => (finding.Check, finding.Message));
}

/// <summary>A record that was read.</summary>
/// <param name="Root">What it says.</param>
/// <param name="Findings">What is wrong with it.</param>
internal sealed record ReadRecord(MappingNode Root, ImmutableArray<Finding> Findings)
{
    /// <summary>Reads a text; null where it cannot be read, or is of a format whose meaning is not known here.</summary>
    internal static ReadRecord? Of(MergedFile file, string text)
    {
        var reading = Read(file, text);
        if (reading.Root is not { } root || reading.Findings.Any(finding => finding.Severity == Severity.Error))
        {
            return null;
        }

        var findings = file.Findings(file.Path, reading);
        return findings.Any(finding => finding.Check == RecordChecks.FormatNewer) ? null : new(root, [.. reading.Findings, .. findings]);
    }

    /// <summary>The nodes of a text.</summary>
    internal static NodeReading Read(MergedFile file, string text) =>
        file.Reader.Read(file.Path, Encoding.UTF8.GetBytes(text), file.Form, ReadingLimits.Usual);
}
