using System.Text.Json;
using Newtonsoft.Json;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Schemas;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Tests.Schemas;

/// <summary>Another schema validator by another author, with the same schema and the same values.</summary>
internal static class SecondOpinion
{
    private static readonly Dictionary<string, Json.Schema.JsonSchema> Schemas = FileShapes.All.ToDictionary(
        file => file.SchemaName,
        file => Json.Schema.JsonSchema.FromText(SchemaWriter.Write(file.Shape)),
        StringComparer.Ordinal
    );

    internal static bool Accepts(string schemaName, MappingNode root)
    {
        using var document = JsonDocument.Parse(NodeJsonReader.Load(root).ToString(Formatting.None));
        return Schemas[schemaName].Evaluate(document.RootElement).IsValid;
    }
}
