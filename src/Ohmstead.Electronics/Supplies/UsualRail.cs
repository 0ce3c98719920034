using System.Collections.Immutable;

namespace Ohmstead.Electronics.Supplies;

/// <summary>The usual range and ripple of a rail by what it feeds, or where that is not known by its nominal voltage. A manual's figure
/// always comes first.</summary>
public static class UsualRail
{
    private static readonly string[] ByVoltage =
    [
        "TTL 74, 74LS, 74S",
        "NMOS 8080A, -5 V",
        "NMOS 8080A, +12 V",
        "ATX, -12 V",
        "op-amp, +15 V",
        "op-amp, -15 V",
        "RTL",
        "ECL 10K",
        "ATX, +3.3 V",
        "valve heater 6.3 V, absolute",
        "mains 230 V",
        "mains 120 V",
    ];

    // Where nothing says what a rail feeds: the usual range of that voltage, the narrow one where there are several.
    private static readonly ImmutableArray<RailLimit> RangesByVoltage =
    [
        .. ByVoltage.Select(family => RailLimits.All.First(limit => limit.Family == family)),
    ];

    /// <summary>The usual range, or null when none is known.</summary>
    /// <param name="rail">What it is or feeds, or null when that is not known.</param>
    /// <param name="nominalVolts">The nominal voltage, signed.</param>
    public static RailLimit? Range(Rail? rail, decimal nominalVolts) =>
        rail is null
            ? RangesByVoltage.FirstOrDefault(limit => limit.NominalVolts == nominalVolts)
            : rail.Ranges.FirstOrDefault(limit => limit.NominalVolts == nominalVolts || (rail.IsWide && limit.Holds(nominalVolts)));

    /// <summary>The usual ripple, or null when none is known.</summary>
    /// <param name="rail">What it is or feeds, or null when that is not known.</param>
    /// <param name="nominalVolts">The nominal voltage, signed.</param>
    public static RippleLimit? Ripple(Rail? rail, decimal nominalVolts) =>
        (rail, Math.Abs(nominalVolts)) switch
        {
            (null, 15m) => RippleLimit.RegulatedAnalogue,
            (null, 5m) => RippleLimit.Logic,
            (null, 3.3m) => RippleLimit.AtxFive,
            (null, 12m) => RippleLimit.AtxTwelve,
            (null, _) => null,
            ({ Ripple: { } always }, _) => always,
            (_, 5m) => rail.RippleAtFive,
            (_, 12m) => rail.RippleAtTwelve,
            _ => null,
        };
}
