using Ohmstead.Electronics.Quantities;

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
}
