using Ohmstead.Assessment.History;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Drifts;

/// <summary>How a value was read. Only readings of one and the same way can show a drift: another instrument or frequency shows
/// itself.</summary>
internal readonly record struct DriftConditions(
    Measured Measured,
    Circuit? Circuit,
    decimal? Frequency,
    decimal? After,
    decimal? AtVoltage,
    decimal? Bias,
    string? Instrument,
    string? Method
)
{
    internal static DriftConditions From(AssessedReading reading, Measured measured)
    {
        var written = reading.Reading;
        var frequency = measured == Measured.Frequency ? null : written.Frequency?.Value.Value;
        return new(
            measured,
            written.Circuit?.Value,
            frequency,
            written.After?.Value.Value,
            written.AtVoltage?.Value.Value,
            written.Bias?.Value.Value,
            (written.Instrument ?? reading.Visit.Instrument)?.Value,
            written.Method?.Value
        );
    }

    /// <summary>The temperature at which a reading was taken, in degrees Celsius as held, or null when it is not written.</summary>
    internal static decimal? TemperatureOf(AssessedReading reading) =>
        (reading.Reading.Temperature ?? reading.Visit.RoomTemperature)?.Value.Value;
}
