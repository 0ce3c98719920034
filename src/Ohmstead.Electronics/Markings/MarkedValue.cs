using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>A value as it is marked on a part, with what else the marking says.</summary>
/// <param name="Nominal">The nominal value.</param>
/// <param name="Tolerance">The tolerance, or null when the marking has none.</param>
/// <param name="RatedVoltage">The rated voltage, or null when the marking has none.</param>
public sealed record MarkedValue(Quantity Nominal, Tolerance? Tolerance = null, Quantity? RatedVoltage = null)
{
    /// <summary>The delivery limits, or null without a tolerance.</summary>
    public Interval? Limits => Tolerance?.Apply(Nominal);
}
