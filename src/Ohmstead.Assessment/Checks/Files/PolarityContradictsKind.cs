using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Files;

/// <summary>A part is written as having no polarity although every part of its kind has one.</summary>
public sealed class PolarityContradictsKind : IFileCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "polarity-contradicts-kind",
            Severity.Error,
            "a part is written as having no polarity although its kind has one",
            CheckEffect.HoldsBack,
            "whether there is a wrong way round is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(FileUnderCheck file)
    {
        foreach (var part in file.Parts)
        {
            var kind = part.Values.Kind.Value;
            if (part.Values.Polarity is { } polarity && polarity.Value.IsEitherWayRound() && kind.HasRightWayRound)
            {
                yield return file.Finding(
                    Description,
                    polarity.Spot,
                    $"{part.Name} is of kind '{kind.Name}', which has a right way round, but its polarity is written as '{polarity.Text}'",
                    kind.IsElectrolytic
                        ? "leave polarity out, or write kind: bipolar electrolytic if it is one"
                        : "leave polarity out, or mend the kind"
                );
            }
        }
    }
}
