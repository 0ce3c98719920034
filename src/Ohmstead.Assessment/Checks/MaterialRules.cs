using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks;

/// <summary>Whether the material of a part is one that its kind can be made of: a junction, a dielectric or a chemistry.</summary>
internal static class MaterialRules
{
    private static readonly string[] Junctions = ["silicon", "germanium", "Schottky"];
    private static readonly string[] Classes = ["X7R", "Z5U", "Y5V"];
    private static readonly string[] Chemistries = ["lithium", "nickel-cadmium", "nickel-metal hydride", "alkaline", "zinc-carbon", "silver oxide", "lead-acid"];

    /// <summary>What contradicts its kind and what to do, with the text that does; null when nothing does.</summary>
    internal static (Written<string> Material, string Message, string NextStep)? Contradiction(string name, PartValues values)
    {
        if (values.Material is not { } material)
        {
            return null;
        }

        var fitting = Fitting(values.Kind.Value);
        return fitting.Contains(material.Value, StringComparer.Ordinal) ? null : (
            material,
            $"{name} is of kind '{values.Kind.Value}', which is not made of {material.Value}",
            fitting.Length == 0 ? "leave material out, or mend the kind" : $"write material: {string.Join(", or ", fitting)}");
    }

    private static string[] Fitting(string kind) => kind switch
    {
        "diode" or "bridge rectifier" => Junctions,
        "transistor" => ["silicon", "germanium"],
        "germanium transistor" => ["germanium"],
        "zener diode" or "integrated circuit" or "memory" or "regulator" => ["silicon"],
        "ceramic class 1" => ["C0G"],
        "ceramic class 2" => Classes,
        "cell" => Chemistries,
        _ => [],
    };
}
