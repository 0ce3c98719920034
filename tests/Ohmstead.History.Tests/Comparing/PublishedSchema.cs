using System.Text.Json;
using Json.Schema;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>A schema that is published for programs, held against what they read by a second library.</summary>
internal sealed class PublishedSchema(string name)
{
    private readonly JsonSchema schema = JsonSchema.FromText(
        File.ReadAllText(ProjectFolder.At($"schema/{name}.schema.json")),
        new() { SchemaRegistry = new() }
    );

    /// <summary>Fails where a document does not follow it.</summary>
    public void Holds(JsonElement document)
    {
        var result = schema.Evaluate(document, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(
            result.IsValid,
            string.Join(
                '\n',
                (result.Details ?? [])
                    .Where(one => one.Errors is not null)
                    .Select(one => $"{one.InstanceLocation}: {string.Join(", ", one.Errors!.Values)}")
            )
        );
    }
}
