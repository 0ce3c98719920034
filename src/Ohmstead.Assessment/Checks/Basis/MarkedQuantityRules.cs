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
        var own = values.Kind.Value.Family switch
        {
            PartFamily.Capacitor => "capacitance",
            PartFamily.Resistor => "resistance",
            PartFamily.Inductor => "inductance",
            _ => null,
        };
        var given = new[]
        {
            (Key: "capacitance", Value: values.Capacitance),
            (Key: "resistance", Value: values.Resistance),
            (Key: "inductance", Value: values.Inductance),
        };
        if (own is null || given.Any(pair => pair.Key == own && pair.Value is not null))
        {
            return null;
        }

        // The resistance of a winding is written of a coil of which nothing else is known.
        var wrong = given.FirstOrDefault(pair => pair.Value is not null && (own, pair.Key) is not ("inductance", "resistance"));
        return wrong.Value is null
            ? null
            : (
                wrong.Value,
                $"{name} is of kind '{values.Kind.Text}' and gives {wrong.Key} {wrong.Value.Text}, but no {own}",
                $"write {own}: with the value it is marked with, or mend the kind"
            );
    }
}
