using System.Collections.Immutable;
using NJsonSchema;
using NJsonSchema.Validation;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Schemas;

/// <summary>Holds a file against its JSON schema, as an editor or another program would.</summary>
/// <remarks>
/// The reader has the last word and is faster; this proves that it and the schema agree. The schema library is loaded when the first file
/// is checked and a schema is read once for each instance, so whoever does not check pays nothing. One instance is used by one thread at a
/// time.
/// </remarks>
public sealed class SchemaCheck
{
    private readonly Dictionary<string, JsonSchema> schemas = new(StringComparer.Ordinal);

    /// <summary>What the schema refuses, in order of place; one finding for each cause.</summary>
    /// <param name="path">The path from the root of the collection, for the findings.</param>
    /// <param name="root">The front matter, or the whole of a YAML file.</param>
    /// <param name="fileShape">One of <see cref="FileShapes.All"/>.</param>
    /// <exception cref="ArgumentException">The shape is that of no file.</exception>
    public ImmutableArray<Finding> Check(string path, MappingNode root, Shape fileShape)
    {
        var errors = SchemaOf(fileShape)
            .Validate(NodeJsonReader.Load(root))
            .SelectMany(error => SchemaErrors.Innermost(error, null))
            .ToList();

        // A key that is misspelled is unknown under one name and missing under the other: the place of the first says more.
        var withUnknownKeys = errors.Where(IsUnknownKey).Select(inner => ParentOf(inner.Error)).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. errors
                .Where(inner =>
                    inner.Error.Kind != ValidationErrorKind.PropertyRequired || !withUnknownKeys.Contains(ParentOf(inner.Error))
                )
                .GroupBy(inner => (inner.Error.LineNumber, inner.Error.LinePosition))
                .SelectMany(Causes)
                .OrderBy(inner => inner.Error.LineNumber)
                .ThenBy(inner => inner.Error.LinePosition)
                .Select(inner => Explain(path, inner)),
        ];
    }

    private static bool IsUnknownKey(InnermostError inner) => inner.Error.Kind == ValidationErrorKind.NoAdditionalPropertiesAllowed;

    // A value can be refused for its kind and its text at once, and what is no mapping lacks every key besides; two missing keys of one
    // mapping are two causes at one place.
    private static IEnumerable<InnermostError> Causes(IEnumerable<InnermostError> atOnePlace) =>
        atOnePlace.FirstOrDefault(inner => inner.Error.Kind != ValidationErrorKind.PropertyRequired) is { } first
            ? [first]
            : atOnePlace.DistinctBy(inner => inner.Error.Property);

    private static string ParentOf(ValidationError error)
    {
        var path = error.Path ?? string.Empty;
        return error.Property is { } property && path.EndsWith(property, StringComparison.Ordinal) ? path[..^property.Length] : path;
    }

    private static Finding Explain(string path, InnermostError inner) =>
        new(
            RecordChecks.SchemaRefused,
            Severity.Error,
            new Place(path, inner.Error.LineNumber, inner.Error.LinePosition),
            "the schema refuses this: " + SchemaWords.Say(inner.Error),
            inner.Description is { } description
                ? "write what belongs here: " + description.TrimEnd('.')
                : "write it as the page of the record format shows it"
        );

    private JsonSchema SchemaOf(Shape fileShape)
    {
        var name = FileShapes.All.FirstOrDefault(file => file.Shape == fileShape).SchemaName
            ?? throw new ArgumentException("The shape is that of no file.", nameof(fileShape));
        if (!schemas.TryGetValue(name, out var schema))
        {
            // The text is at hand and refers to nothing outside itself, so nothing is waited for.
            schema = JsonSchema.FromJsonAsync(SchemaFiles.Read(name)).GetAwaiter().GetResult();
            schemas.Add(name, schema);
        }

        return schema;
    }
}
