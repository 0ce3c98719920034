using System.Globalization;
using Ohmstead.Devices;

namespace Ohmstead.Meters;

/// <summary>Where a meter is, as a person says it. No other port is ever opened.</summary>
/// <param name="Path">The serial port, or null.</param>
/// <param name="Serial">How it is set.</param>
/// <param name="Host">The host, or null.</param>
/// <param name="Port">Its port.</param>
internal sealed record MeterAddress(string? Path, SerialSettings Serial, string? Host, int Port)
{
    private const string Expected = "write serial:/dev/ttyUSB0, serial:/dev/ttyUSB0,9600,8n1 or tcp:HOST:PORT";

    /// <summary>Reads it, or says what is wrong.</summary>
    public static (MeterAddress? Address, string? Fault) Parse(string said)
    {
        if (said.StartsWith("serial:", StringComparison.Ordinal))
        {
            return ParseSerial(said["serial:".Length..]);
        }

        if (!said.StartsWith("tcp:", StringComparison.Ordinal))
        {
            return (null, $"'{said}' says neither a serial port nor a host; {Expected}");
        }

        var rest = said["tcp:".Length..];
        var colon = rest.LastIndexOf(':');
        return
            colon > 0
            && int.TryParse(rest[(colon + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var port)
            && port is > 0 and < 65536
            ? (new(null, SerialSettings.Usual, rest[..colon].Trim('[', ']'), port), null)
            : (null, $"'{said}' needs a host and a port of 1 to 65535; {Expected}");
    }

    private static (MeterAddress? Address, string? Fault) ParseSerial(string said)
    {
        var parts = said.Split(',');
        if (parts[0].Length == 0 || parts.Length > 3)
        {
            return (null, $"'serial:{said}' names no port; {Expected}");
        }

        var (speed, form) = (parts.ElementAtOrDefault(1) ?? "9600", parts.ElementAtOrDefault(2) ?? "8n1");
        if (!int.TryParse(speed, NumberStyles.None, CultureInfo.InvariantCulture, out var bits) || bits is < 300 or > 230_400)
        {
            return (null, $"'{speed}' is no speed of a serial port; usual ones are 1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200");
        }

        return form is [('7' or '8') and var data, ('n' or 'e' or 'o' or 'N' or 'E' or 'O') and var parity, ('1' or '2') and var stop]
            ? (new(parts[0], new(bits, data - '0', char.ToLowerInvariant(parity), stop - '0'), null, 0), null)
            : (null, $"'{form}' says no form of a character; 8n1 is eight bits, no parity, one stop bit; also 7e1, 7o1, 8n2");
    }
}
