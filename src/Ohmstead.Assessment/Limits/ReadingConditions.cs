using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Limits;

/// <summary>How a reading was taken, as far as the record says.</summary>
/// <param name="IsNew">True for a part that has not been fitted yet: only delivery limits count.</param>
/// <param name="Frequency">The test frequency.</param>
/// <param name="After">How long the voltage had stood, for leakage.</param>
/// <param name="AtVoltage">The voltage at which leakage was read.</param>
public sealed record ReadingConditions(bool IsNew, Quantity? Frequency, Quantity? After, Quantity? AtVoltage);
