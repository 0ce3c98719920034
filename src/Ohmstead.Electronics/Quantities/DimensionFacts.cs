namespace Ohmstead.Electronics.Quantities;

/// <summary>What is known of each dimension beside its units: its name in a sentence and the values that can be meant.</summary>
/// <remarks>The bounds are far outside what a board can show (common practice): what lies beyond is a slip of unit or prefix.</remarks>
internal static class DimensionFacts
{
    /// <summary>The name as it stands in a sentence.</summary>
    internal static string Name(Dimension dimension) =>
        dimension switch
        {
            Dimension.Number => "plain number",
            Dimension.Capacitance => "capacitance",
            Dimension.Resistance => "resistance",
            Dimension.Inductance => "inductance",
            Dimension.Voltage => "voltage",
            Dimension.Current => "current",
            Dimension.Power => "power",
            Dimension.Energy => "energy",
            Dimension.Charge => "charge",
            Dimension.Frequency => "frequency",
            Dimension.Duration => "duration",
            Dimension.Temperature => "temperature",
            Dimension.Length => "length",
            _ => "ratio",
        };

    /// <summary>The name with its article: a capacitance, an inductance.</summary>
    internal static string One(Dimension dimension) =>
        dimension is Dimension.Inductance or Dimension.Energy ? $"an {Name(dimension)}" : $"a {Name(dimension)}";

    /// <summary>The greatest magnitude that can be meant, in the base unit.</summary>
    internal static decimal Most(Dimension dimension) =>
        dimension switch
        {
            Dimension.Number => 1e18m,
            Dimension.Capacitance => 100m,
            Dimension.Resistance => 1e12m,
            Dimension.Inductance => 1e4m,
            Dimension.Voltage => 1e6m,
            Dimension.Current => 1e5m,
            Dimension.Power => 1e7m,
            Dimension.Energy => 1e9m,
            Dimension.Charge => 1e7m,
            Dimension.Frequency => 1e12m,
            Dimension.Duration => 31557600000m,
            Dimension.Temperature => 5000m,
            Dimension.Length => 1000m,
            _ => 1e6m,
        };

    /// <summary>The least value that can be meant, in the base unit: 0 where a negative value has no meaning.</summary>
    internal static decimal Least(Dimension dimension) =>
        dimension switch
        {
            Dimension.Number or Dimension.Voltage or Dimension.Current or Dimension.Power or Dimension.Charge or Dimension.Ratio => -Most(
                dimension
            ),
            Dimension.Temperature => -273.15m,
            _ => 0m,
        };

    /// <summary>The power of ten that a letter in the place of the decimal point stands for (IEC 60062; Ω, V and A common
    /// practice).</summary>
    internal static bool TryCodeLetter(Dimension dimension, char letter, out int power)
    {
        int? found = (dimension, letter) switch
        {
            (Dimension.Resistance, 'L') => -3,
            (Dimension.Resistance, 'R' or 'r' or '\u03A9' or '\u2126') => 0,
            (Dimension.Resistance, 'K' or 'k') => 3,
            (Dimension.Resistance, 'M') => 6,
            (Dimension.Resistance, 'G') => 9,
            (Dimension.Resistance, 'T') => 12,
            (Dimension.Capacitance, 'p') => -12,
            (Dimension.Capacitance or Dimension.Inductance, 'n') => -9,
            (Dimension.Capacitance or Dimension.Inductance, 'u' or '\u00B5' or '\u03BC') => -6,
            (Dimension.Capacitance or Dimension.Inductance, 'm') => -3,
            (Dimension.Capacitance, 'F') => 0,
            (Dimension.Voltage, 'V') => 0,
            (Dimension.Current, 'A') => 0,
            _ => null,
        };
        power = found.GetValueOrDefault();
        return found is not null;
    }
}
