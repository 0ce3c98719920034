using Ohmstead.Records.Editing;
using Ohmstead.Records.Shapes;

namespace Ohmstead.PartsLists;

/// <summary>Writes a listed part as the one line a record has for it.</summary>
internal static class PartLine
{
    /// <summary><c>{ ref: C12, kind: aluminium electrolytic, capacitance: 470 µF }</c>.</summary>
    public static string Write(ListedPart part) =>
        FlowText.MappingOf([
            (PartShape.Ref.Name, FlowText.TextScalar(part.Reference)),
            (PartShape.Kind.Name, FlowText.Scalar(part.Kind.Name)),
            .. part.Values.Select(value => (value.Key, (string?)Yaml(value.Key, value.Value))),
        ]);

    private static string Yaml(string key, string value) =>
        PartShape.Shape.Keys[PartShape.Shape.PlaceOf(key)].Kind == ValueKind.Text ? FlowText.TextScalar(value) : FlowText.Scalar(value);
}
