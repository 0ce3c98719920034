using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>Whether the material of a part is one that its kind can be made of: a junction, a dielectric or a chemistry.</summary>
internal static class MaterialRules
{
    /// <summary>What contradicts its kind and what to do, with the text that does; null when nothing does.</summary>
    internal static (Written<PartMaterial> Material, string Message, string NextStep)? Contradiction(string name, PartValues values)
    {
        if (values.Material is not { } material)
        {
            return null;
        }

        var fitting = values.Kind.Value.Materials;
        return fitting.Contains(material.Value)
            ? null
            : (
                material,
                $"{name} is of kind '{values.Kind.Text}', which is not made of {material.Text}",
                fitting.Length == 0
                    ? "leave material out, or mend the kind"
                    : $"write material: {string.Join(", or ", fitting.Select(known => known.Name))}"
            );
    }
}
