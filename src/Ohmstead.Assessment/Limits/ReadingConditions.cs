using Ohmstead.Electronics.Capacitors;
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
    /// <summary>The temperature at which it was taken, the bench's when the reading names none; null where it is so near to 20 °C that
    /// limits hold as they are.</summary>
    public Quantity? AwayFrom20
    {
        get;
        init => field = Away(value);
    }

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
    internal static ReadingConditions From(
        bool isNew,
        Reading reading,
        Written<Quantity>? temperature,
        Quantity? testCurrent,
        ReadingConditions? before
    ) =>
        before is not null
        && before.Is(
            isNew,
            reading.Frequency?.Value,
            reading.After?.Value,
            reading.AtVoltage?.Value,
            Away(temperature?.Value),
            reading.Bias?.Value,
            testCurrent
        )
            ? before
            : new(isNew, reading.Frequency?.Value, reading.After?.Value, reading.AtVoltage?.Value)
            {
                AwayFrom20 = temperature?.Value,
                Bias = reading.Bias?.Value,
                TestCurrent = testCurrent,
            };

    /// <summary>Whether another reading was taken in the very same way.</summary>
    internal bool IsSameAs(ReadingConditions other) =>
        ReferenceEquals(this, other)
        || Is(other.IsNew, other.Frequency, other.After, other.AtVoltage, other.AwayFrom20, other.Bias, other.TestCurrent);

    private bool Is(
        bool isNew,
        Quantity? frequency,
        Quantity? after,
        Quantity? atVoltage,
        Quantity? awayFrom20,
        Quantity? bias,
        Quantity? testCurrent
    ) =>
        IsNew == isNew
        && Same(Frequency, frequency)
        && Same(After, after)
        && Same(AtVoltage, atVoltage)
        && Same(AwayFrom20, awayFrom20)
        && Same(Bias, bias)
        && Same(TestCurrent, testCurrent);

    private static Quantity? Away(Quantity? temperature) =>
        temperature is { } read && LowTemperatureImpedance.IsComparable(read.Value) ? null : temperature;

    // 25 V and 25.0 V are equal, but what is computed from them shows other places after the point.
    private static bool Same(Quantity? one, Quantity? other) =>
        one is not { } first ? other is null : other is { } second && first == second && first.Value.Scale == second.Value.Scale;
}
