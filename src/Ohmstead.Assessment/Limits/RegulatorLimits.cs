using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The output of a fixed regulator over line, load and temperature: by its type number, or like the usual one of its
/// voltage.</summary>
public static class RegulatorLimits
{
    /// <summary>The limit, or null when a tolerance is written or nothing tells the voltage.</summary>
    public static Limit? Output(IMarkedPart part)
    {
        if (part.Tolerance is not null)
        {
            return null;
        }

        var byType = part.TellingType is { } type ? LinearRegulator.Find(type.Value) : null;
        if ((byType ?? (part.RatedVoltage is { } rated ? LinearRegulator.LikeFor(rated.Value.Value) : null)) is not { } known)
        {
            return null;
        }

        var interval = new Interval(
            new Quantity(known.LowVoltsOver, Dimension.Voltage),
            new Quantity(known.HighVoltsOver, Dimension.Voltage)
        );
        return new Limit(
            LimitKind.Delivery,
            interval,
            byType is null ? "the type's usual limit (fixed three-terminal regulator of this voltage)" : "its type's data sheet",
            new(() => $"{known.Part} over line, load and temperature: {interval}"),
            new(() => known.Source.Text)
        )
        {
            Nominal = part.RatedVoltage?.Value,
        };
    }
}
