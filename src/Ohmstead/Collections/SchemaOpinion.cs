using System.Collections.Immutable;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Schemas;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Collections;

/// <summary>The JSON schemas as a second opinion on what the reader says.</summary>
/// <remarks>
/// What the reader accepts the schemas accept: tests prove it, so no record need wait a quarter of a second for the schema library to load.
/// The schemas are asked when a thorough run is wanted, as in a workflow.
/// </remarks>
internal sealed class SchemaOpinion(bool always)
{
    private SchemaCheck? check;

    /// <summary>The findings of the reader, with what the schema refuses on lines where the reader found nothing.</summary>
    public ImmutableArray<Finding> Add(string path, NodeReading text, Shape shape, ImmutableArray<Finding> findings)
    {
        if (!always || text.Root is null)
        {
            return findings;
        }

        check ??= new SchemaCheck();
        var lines = findings.Select(finding => finding.Place.Line).ToHashSet();
        var more = check.Check(path, text.Root, shape).Where(finding => !lines.Contains(finding.Place.Line)).ToArray();
        return more.Length == 0 ? findings : [.. findings, .. more];
    }
}
