using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Writing;

/// <summary>What a part, a point or a hazard is, as a person says it: the unit tells which value is meant, and where it does not, the key
/// is said.</summary>
internal static class SaidPart
{
    // The unit of a dimension belongs to the first of its keys that the shape has: volts are the rating of a part, the nominal of a point.
    private static readonly (Dimension Dimension, string[] Keys)[] ByUnit =
    [
        (Dimension.Capacitance, ["capacitance"]),
        (Dimension.Resistance, ["resistance", "bleed", "nominal"]),
        (Dimension.Inductance, ["inductance"]),
        (Dimension.Voltage, ["rated_voltage", "nominal", "voltage"]),
        (Dimension.Temperature, ["temperature", "nominal"]),
        (Dimension.Frequency, ["frequency", "nominal"]),
        (Dimension.Power, ["power"]),
        (Dimension.Current, ["current", "nominal"]),
    ];

    /// <summary>Reads the words after the name.</summary>
    /// <param name="words">The words: <c>470uF</c>, <c>20%</c>, <c>35V</c>, <c>maker=Ostrel</c>.</param>
    /// <param name="shape">The shape of what is entered, for its keys.</param>
    /// <returns>Keys with their values as they will be written, or what is wrong.</returns>
    public static (IReadOnlyDictionary<string, string?> Values, string? Fault) Read(IReadOnlyList<string> words, Shape shape)
    {
        var values = new Dictionary<string, string?>(StringComparer.Ordinal);
        foreach (var word in words)
        {
            var (key, value) = One(word, shape);
            if (key is null)
            {
                return (values, Why(word));
            }

            if (shape.PlaceOf(key) < 0)
            {
                return (values, WhyNoValue.NoKey(key, value ?? string.Empty, shape));
            }

            if (!values.TryAdd(key, value))
            {
                return (values, $"'{word}' gives {key} a second time");
            }
        }

        return (values, null);
    }

    private static (string? Key, string? Value) One(string word, Shape shape)
    {
        if (word.IndexOf('=', StringComparison.Ordinal) is > 0 and var sign)
        {
            var (key, text) = (word[..sign], word[(sign + 1)..]);
            return (
                key,
                shape.PlaceOf(key) is >= 0 and var at ? EnteredValues.Spaced(text, shape.Keys[at].Dimension, shape.Keys[at].Kind) : text
            );
        }

        if (word.EndsWith('%'))
        {
            return ("tolerance", Percent(word));
        }

        foreach (var (dimension, keys) in ByUnit)
        {
            if (
                word.Any(letter => !char.IsAsciiDigit(letter) && letter is not ('.' or '-' or ','))
                && QuantityText.Parse(word, dimension).Is(out _, out _)
            )
            {
                return (
                    keys.FirstOrDefault(key => shape.PlaceOf(key) >= 0) ?? keys[0],
                    EnteredValues.Spaced(word, dimension, ValueKind.Quantity)
                );
            }
        }

        return (null, null);
    }

    private static string Why(string word)
    {
        if (word.All(letter => char.IsAsciiDigit(letter) || letter == '.'))
        {
            return $"'{word}' has no unit; write {word} with it, as in 470uF, 35V or 105C"
                + (word.Length < 3 ? $", a tolerance {word}%" : $", a date code date_code={word}");
        }

        foreach (var (dimension, _) in ByUnit)
        {
            if (QuantityText.Parse(word, dimension).Fault is { NextStep: { } next } fault)
            {
                return $"'{word}': {fault.Message}; write {next}";
            }
        }

        return $"'{word}' is no value with a unit; write 470uF, 20%, 35V, 105C, or key=value such as date_code=2610";
    }

    private static string Percent(string word) => $"{word[..^1].TrimEnd()} %";
}
