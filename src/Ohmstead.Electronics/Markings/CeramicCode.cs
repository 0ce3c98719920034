using System.Globalization;
using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The temperature codes of ceramic capacitors: C0G, U2J, N750, NP0 (class 1) and X7R, Z5U, Y5V (classes 2 and 3).</summary>
/// <remarks>Source: EIA-198. The letter O is taken for the digit 0, as C0G and NP0 are often printed. One maker's table has 3 for +45 °C
/// and B for 1.2 %, which look like misprints.</remarks>
public static class CeramicCode
{
    private static readonly Source Standard = Source.Published("EIA-198", "as quoted by makers");

    /// <summary>Reads a temperature code.</summary>
    public static Parsed<MarkingReading<TemperatureCharacteristic>> Parse(ReadOnlySpan<char> text)
    {
        TemperatureCharacteristic? found = ByName(text);
        if (text.Length == 3)
            found ??= ClassOne(text);
        if (text.Length == 3)
            found ??= ClassTwo(text);
        return found is not null
            ? Parsed<MarkingReading<TemperatureCharacteristic>>.From(
                new MarkingReading<TemperatureCharacteristic>(found, $"temperature code {text}", Standard)
            )
            : Parsed<MarkingReading<TemperatureCharacteristic>>.Failed(
                new ParseFault(
                    text.IsEmpty ? ParseFaultKind.Empty : ParseFaultKind.NotUnderstood,
                    0,
                    text.Length,
                    $"'{Excerpt.From(text)}' is no temperature code of a ceramic, expected one such as X7R, C0G or N750",
                    null
                )
            );
    }

    private static TemperatureCharacteristic.Linear? ByName(ReadOnlySpan<char> text)
    {
        if (text is "NP0" or "NPO")
            return new TemperatureCharacteristic.Linear(0m, null);
        if (text.Length is not (4 or 5) || text[0] is not ('N' or 'P'))
            return null;
        return int.TryParse(text[1..], NumberStyles.None, CultureInfo.InvariantCulture, out var slope)
            ? new TemperatureCharacteristic.Linear(text[0] == 'N' ? -slope : slope, null)
            : null;
    }

    private static TemperatureCharacteristic.Linear? ClassOne(ReadOnlySpan<char> text)
    {
        decimal? figure = text[0] switch
        {
            'C' => 0m,
            'M' => 1.0m,
            'P' => 1.5m,
            'R' => 2.2m,
            'S' => 3.3m,
            'T' => 4.7m,
            'U' => 7.5m,
            _ => null,
        };
        decimal? factor = text[1] switch
        {
            '0' or 'O' => -1m,
            >= '1' and <= '3' => -DecimalMath.PowerOfTen(text[1] - '0'),
            >= '5' and <= '8' => DecimalMath.PowerOfTen(text[1] - '5'),
            _ => null,
        };
        decimal? spread = text[2] switch
        {
            'G' => 30m,
            'H' => 60m,
            'J' => 120m,
            'K' => 250m,
            'L' => 500m,
            'M' => 1000m,
            'N' => 2500m,
            _ => null,
        };
        return figure is { } f && factor is { } times && spread is not null
            ? new TemperatureCharacteristic.Linear(f * times, spread)
            : null;
    }

    private static TemperatureCharacteristic.Bounded? ClassTwo(ReadOnlySpan<char> text)
    {
        int? low = text[0] switch
        {
            'X' => -55,
            'Y' => -30,
            'Z' => 10,
            _ => null,
        };
        int? high = text[1] switch
        {
            '2' => 45,
            '4' => 65,
            '5' => 85,
            '6' => 105,
            '7' => 125,
            '8' => 150,
            '9' => 200,
            _ => null,
        };
        (decimal Below, decimal Above)? change = text[2] switch
        {
            'A' => (-1.0m, 1.0m),
            'B' => (-1.5m, 1.5m),
            'C' => (-2.2m, 2.2m),
            'D' => (-3.3m, 3.3m),
            'E' => (-4.7m, 4.7m),
            'F' => (-7.5m, 7.5m),
            'P' => (-10m, 10m),
            'R' => (-15m, 15m),
            'S' => (-22m, 22m),
            'T' => (-33m, 22m),
            'U' => (-56m, 22m),
            'V' => (-82m, 22m),
            _ => null,
        };
        return low is { } from && high is { } to && change is { } percent
            ? new TemperatureCharacteristic.Bounded(from, to, percent.Below / 100m, percent.Above / 100m)
            : null;
    }
}
