using Ohmstead.Records.Model;

namespace Ohmstead.Meters;

/// <summary>The few words of IEEE 488.2 and SCPI-99 that are sent, and those that come back.</summary>
internal static class ScpiWords
{
    /// <summary>IEEE 488.2, 10.14: who are you.</summary>
    public const string Who = "*IDN?";

    /// <summary>SCPI-99, volume 2, 3.5: a new reading.</summary>
    public const string Read = "READ?";

    /// <summary>SCPI-99, volume 2, 18.8: which function is on.</summary>
    public const string Function = "SENS:FUNC?";

    // The last word of a query that only asks. MEASure? is not among them: it sets the meter before it reads.
    private static readonly string[] Harmless =
    [
        "READ",
        "FETC",
        "FETCH",
        "FREQ",
        "FREQUENCY",
        "RANG",
        "RANGE",
        "UPP",
        "UPPER",
        "CW",
        "FUNC",
        "FUNCTION",
    ];

    private static readonly (string Short, string Long, Measured Measured, string Unit)[] Functions =
    [
        ("CAP", "CAPACITANCE", Measured.Capacitance, "F"),
        ("RES", "RESISTANCE", Measured.Resistance, "Ω"),
        ("FRES", "FRESISTANCE", Measured.Resistance, "Ω"),
        ("IND", "INDUCTANCE", Measured.Inductance, "H"),
        ("VOLT", "VOLTAGE", Measured.Voltage, "V"),
        ("CURR", "CURRENT", Measured.Current, "A"),
        ("FREQ", "FREQUENCY", Measured.Frequency, "Hz"),
        ("TEMP", "TEMPERATURE", Measured.Temperature, "°C"),
        ("DIOD", "DIODE", Measured.ForwardVoltage, "V"),
    ];

    /// <summary>Whether a text is one query that asks and sets nothing. A description may have come from anybody.</summary>
    public static bool IsHarmless(string query) =>
        query is [.. var path, '?']
        && path.Length is > 0 and < 80
        && path.All(one => char.IsAsciiLetterOrDigit(one) || one == ':')
        && Harmless.Contains(path.Split(':')[^1].TrimEnd("0123456789".ToCharArray()).ToUpperInvariant(), StringComparer.Ordinal);

    /// <summary>What a meter measures, by its answer to which function is on: <c>"RES"</c>, <c>"VOLT:DC"</c>; null where that is nothing
    /// that
    /// a record holds as it is.</summary>
    /// <param name="answer">The answer.</param>
    public static (Measured Measured, string Unit, string Path)? Measures(string answer)
    {
        var words = answer.Trim().Trim('"', '\'').ToUpperInvariant().Split(' ')[0].Split(':');
        // The effective value of an alternating voltage is neither the voltage of a rail nor its ripple from peak to peak.
        if (words.Length > 2 || (words.Length == 2 && words[1] != "DC"))
        {
            return null;
        }

        foreach (var (brief, whole, measured, unit) in Functions)
        {
            if (words[0] == brief || words[0] == whole)
            {
                return (measured, unit, string.Join(':', words));
            }
        }

        return null;
    }
}
