using System.Globalization;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Files;

/// <summary>A part or test point stands twice in one list.</summary>
public sealed class ReferenceRepeated : IFileCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "reference-repeated",
            Severity.Error,
            "a part or test point stands twice in one list",
            CheckEffect.HoldsBack,
            "which of the two lines holds is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(FileUnderCheck file) =>
        Repeated(file, "parts", file.References).Concat(Repeated(file, "points", file.Points.Select(point => point.Name)));

    private IEnumerable<Finding> Repeated(FileUnderCheck file, string list, IEnumerable<Written<string>> names)
    {
        var first = new Dictionary<string, Written<string>>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            if (!first.TryAdd(name.Value, name))
            {
                yield return file.Finding(
                    Description,
                    name.Spot,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{name.Value} is already in the {list} of {file.Called}, on line {first[name.Value].Spot.Line}"
                    ),
                    "keep the entry that is right, with all its values; where both are right, give one its own name"
                ) with
                {
                    Related = [new RelatedPlace(first[name.Value].Spot.In(file.Path), "first written here")],
                };
            }
        }
    }
}
