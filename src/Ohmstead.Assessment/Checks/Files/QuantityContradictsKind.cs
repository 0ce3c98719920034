using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Files;

/// <summary>A part is marked in a quantity that its kind does not have: a resistor in farad, a capacitor in ohm.</summary>
/// <remarks>A second quantity beside the right one is no contradiction: a suppressor may hold a resistor.</remarks>
public sealed class QuantityContradictsKind : IFileCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "quantity-contradicts-kind",
            Severity.Error,
            "a part is marked in a quantity that its kind does not have",
            CheckEffect.HoldsBack,
            "what the part is is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(FileUnderCheck file)
    {
        foreach (var part in file.Parts)
        {
            if (OwnQuantity(part.Values) is not var (own, value) || value is not null || Other(part.Values, own) is not var (other, wrong))
            {
                continue;
            }

            yield return file.Finding(
                Description,
                wrong.Spot,
                $"{part.Name} is of kind '{part.Values.Kind.Text}' and gives {VerdictWords.Describe(other)} {wrong.Text}, but no "
                    + VerdictWords.Describe(own),
                $"write {VerdictWords.Describe(own)}: with the value it is marked with, or mend the kind"
            );
        }
    }

    // What the kind is marked in, with the value; null for kinds that are marked in nothing or in several.
    private static (Measured Quantity, Written<Quantity>? Value)? OwnQuantity(PartValues values) =>
        values.Kind.Value.Family switch
        {
            PartFamily.Capacitor => (Measured.Capacitance, values.Capacitance),
            PartFamily.Resistor => (Measured.Resistance, values.Resistance),
            PartFamily.Inductor => (Measured.Inductance, values.Inductance),
            _ => null,
        };

    private static (Measured Quantity, Written<Quantity> Value)? Other(PartValues values, Measured own) =>
        values.Capacitance is { } capacitance ? (Measured.Capacitance, capacitance)
        : values.Inductance is { } inductance ? (Measured.Inductance, inductance)
        // The resistance of a winding is written of a coil of which nothing else is known.
        : own != Measured.Inductance && values.Resistance is { } resistance ? (Measured.Resistance, resistance)
        : null;
}
