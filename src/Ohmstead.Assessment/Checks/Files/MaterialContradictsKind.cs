using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Files;

/// <summary>A part is written as made of something that its kind is not made of: a junction, a dielectric or a chemistry.</summary>
public sealed class MaterialContradictsKind : IFileCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "material-contradicts-kind",
            Severity.Error,
            "a part is written as made of something that its kind is not made of",
            CheckEffect.HoldsBack,
            "what the part is is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(FileUnderCheck file)
    {
        foreach (var part in file.Parts)
        {
            var kind = part.Values.Kind;
            if (part.Values.Material is { } material && !kind.Value.Materials.Contains(material.Value))
            {
                yield return file.Finding(
                    Description,
                    material.Spot,
                    $"{part.Name} is of kind '{kind.Text}', which is not made of {material.Text}",
                    kind.Value.Materials.Length == 0
                        ? "leave material out, or mend the kind"
                        : $"write material: {string.Join(", or ", kind.Value.Materials.Select(known => known.Name))}"
                );
            }
        }
    }
}
