using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>Whether a part is marked in the quantity of its kind: a resistor in ohm, a capacitor in farad, a coil in henry.</summary>
internal static class MarkedQuantityRules
{
    /// <summary>What contradicts its kind and what to do, with the value that does; null when nothing does.</summary>
    /// <remarks>A second quantity beside the right one is no contradiction: a suppressor may hold a resistor.</remarks>
    internal static (Written<Quantity> Value, string Message, string NextStep)? Contradiction(string name, PartValues values)
    {
        var (own, value) = values.Kind.Value.Family switch
        {
            PartFamily.Capacitor => (Measured.Capacitance, values.Capacitance),
            PartFamily.Resistor => (Measured.Resistance, values.Resistance),
            PartFamily.Inductor => (Measured.Inductance, values.Inductance),
            _ => default,
        };
        if (value is not null || values.Kind.Value.Family is not (PartFamily.Capacitor or PartFamily.Resistor or PartFamily.Inductor))
        {
            return null;
        }

        // The resistance of a winding is written of a coil of which nothing else is known.
        var resistance = own == Measured.Inductance ? null : values.Resistance;
        var (other, wrong) =
            values.Capacitance is { } capacitance ? (Measured.Capacitance, capacitance)
            : values.Inductance is { } inductance ? (Measured.Inductance, inductance)
            : (Measured.Resistance, resistance);
        return wrong is null
            ? null
            : (
                wrong,
                $"{name} is of kind '{values.Kind.Text}' and gives {VerdictWords.Describe(other)} {wrong.Text}, but no "
                    + VerdictWords.Describe(own),
                $"write {VerdictWords.Describe(own)}: with the value it is marked with, or mend the kind"
            );
    }
}
