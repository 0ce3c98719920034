using System.Collections.Immutable;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>What a colour means as a resistor's tolerance, temperature coefficient or failure level. Editions that disagree are all
/// kept.</summary>
internal static class ResistorBandMeanings
{
    internal static readonly Source Standard = Source.Published("IEC 60062", "colour code table");
    internal static readonly Source Edition2016 = Source.FromMemory("IEC 60062:2016", "colour code table");
    internal static readonly Source FailureLevel = Source.FromMemory("MIL-R-39008", "failure level band");
    private static readonly Source OlderEdition = Source.Published("EN 60062:2005", "colour code table");
    private static readonly Source HighVoltage = Source.Practice("high-voltage parts");

    internal static ImmutableArray<ToleranceMeaning> Tolerance(BandColour colour) =>
        colour switch
        {
            BandColour.Silver => [Both(10m, Standard)],
            BandColour.Gold => [Both(5m, Standard)],
            BandColour.Brown => [Both(1m, Standard)],
            BandColour.Red => [Both(2m, Standard)],
            BandColour.Orange => [Both(0.05m, Edition2016)],
            BandColour.Yellow => [Both(0.02m, Edition2016), Both(5m, HighVoltage)],
            BandColour.Green => [Both(0.5m, Standard)],
            BandColour.Blue => [Both(0.25m, Standard)],
            BandColour.Violet => [Both(0.1m, Standard)],
            BandColour.Grey => [Both(0.01m, Edition2016), Both(0.05m, OlderEdition), Both(10m, HighVoltage)],
            _ => [],
        };

    internal static ToleranceMeaning WithoutBand => Both(20m, Standard);

    /// <summary>The temperature coefficient as a fraction per kelvin, or null when the colour has none.</summary>
    internal static decimal? TemperatureCoefficient(BandColour colour) =>
        colour switch
        {
            BandColour.Black => 0.00025m,
            BandColour.Brown => 0.0001m,
            BandColour.Red => 0.00005m,
            BandColour.Orange => 0.000015m,
            BandColour.Yellow => 0.000025m,
            BandColour.Green => 0.00002m,
            BandColour.Blue => 0.00001m,
            BandColour.Violet => 0.000005m,
            BandColour.Grey => 0.000001m,
            _ => null,
        };

    /// <summary>The failure level as a fraction per 1000 h, or null when the colour has none.</summary>
    internal static decimal? FailureRate(BandColour colour) =>
        colour switch
        {
            BandColour.Brown => 0.01m,
            BandColour.Red => 0.001m,
            BandColour.Orange => 0.0001m,
            BandColour.Yellow => 0.00001m,
            _ => null,
        };

    private static ToleranceMeaning Both(decimal percent, Source source) => new(Quantities.Tolerance.Relative(percent / 100m), source);
}
