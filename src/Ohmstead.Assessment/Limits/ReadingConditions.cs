using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>How a reading was taken, as far as the record says.</summary>
/// <param name="IsNew">True for a part that has not been fitted yet: only delivery limits count.</param>
/// <param name="Frequency">The test frequency.</param>
/// <param name="After">How long the voltage had stood, for leakage and insulation.</param>
/// <param name="AtVoltage">The voltage at which leakage or insulation was read.</param>
public sealed record ReadingConditions(bool IsNew, Quantity? Frequency, Quantity? After, Quantity? AtVoltage)
{
    /// <summary>The temperature at which it was taken, the bench's when the reading names none.</summary>
    public Quantity? Temperature { get; init; }

    /// <summary>The d.c. voltage across a capacitor while its capacitance was read.</summary>
    public Quantity? Bias { get; init; }

    /// <summary>The current through a junction while its voltage was read.</summary>
    public Quantity? TestCurrent { get; init; }

    /// <summary>How a reading was taken.</summary>
    /// <param name="isNew">True for a part that has not been fitted yet.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="temperature">The temperature at which it was taken.</param>
    /// <param name="testCurrent">The current through a junction.</param>
    /// <param name="before">How the reading before it was taken, which is given again where it is the same.</param>
    internal static ReadingConditions Of(bool isNew, Reading reading, Written<Quantity>? temperature, Written<Quantity>? testCurrent, ReadingConditions? before) =>
        before is not null && before.IsNew == isNew && before.Frequency == reading.Frequency?.Value && before.After == reading.After?.Value && before.AtVoltage == reading.AtVoltage?.Value
        && before.Temperature == temperature?.Value && before.Bias == reading.Bias?.Value && before.TestCurrent == testCurrent?.Value
            ? before
            : new(isNew, reading.Frequency?.Value, reading.After?.Value, reading.AtVoltage?.Value)
            {
                Temperature = temperature?.Value,
                Bias = reading.Bias?.Value,
                TestCurrent = testCurrent?.Value,
            };
}
