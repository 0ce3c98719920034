using System.Globalization;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Writing;

/// <summary>What was read, as a person says it at the bench: the unit tells the quantity, and where it does not, the key is said.</summary>
/// <remarks><c>391uF 1.4ohm</c> of a capacitor are its capacitance and its ESR; <c>1.4ohm</c> of a resistor is its resistance;
/// <c>gain=140</c> says its key.</remarks>
internal static class EnteredValues
{
    // The unit of a dimension belongs to different keys for different families; the first that fits is meant.
    private static readonly (Dimension Dimension, Func<PartKind, string> Key)[] ByUnit =
    [
        (Dimension.Capacitance, _ => "capacitance"),
        (Dimension.Inductance, _ => "inductance"),
        (Dimension.Resistance, kind => kind.Family == PartFamily.Capacitor ? "esr" : "resistance"),
        (Dimension.Frequency, _ => "frequency"),
        (Dimension.Current, kind => kind.Family == PartFamily.Capacitor ? "leakage" : "current"),
        (Dimension.Voltage, kind => kind.Junction == Junction.Rectifying || kind == PartKinds.Transistor ? "forward_voltage" : "voltage"),
        (Dimension.Duration, _ => "after"),
        (Dimension.Temperature, _ => "temperature"),
    ];

    /// <summary>Reads the words after the part.</summary>
    /// <param name="words">The words: <c>391uF</c>, <c>esr=1.4ohm</c>, <c>pass</c>, <c>12%</c>.</param>
    /// <param name="kind">The kind of the part or null for a test point.</param>
    /// <param name="measures">For a test point, what is measured there.</param>
    /// <param name="shape">The shape of a reading or a proof, for its keys.</param>
    /// <param name="units">What a figure without a unit means, or null where it means nothing.</param>
    /// <returns>Keys with their values as they will be written, or what is wrong.</returns>
    public static (IReadOnlyList<(string Key, string Value)> Values, string? Fault) Read(
        IReadOnlyList<string> words,
        PartKind? kind,
        PointMeasure? measures,
        Shape shape,
        UnsaidUnits? units = null
    )
    {
        var why = new WhyNoValue(kind, measures, shape, units is not null);
        var typed = SaidIndication.Joined(words);
        var joined = units?.Say(typed) ?? typed;
        var values = new List<(string Key, string Value)>();
        for (var at = 0; at < joined.Count; at++)
        {
            var word = joined[at];
            var (key, value, fault) = One(word, kind, measures, shape);
            if (key is null)
            {
                return ([], fault ?? why.Of(typed, at));
            }

            if (fault is not null)
            {
                return ([], fault);
            }

            if (values.Exists(known => known.Key == key))
            {
                return ([], why.Twice(typed[at], key));
            }

            values.Add((key, value!));
        }

        return (values, null);
    }

    // All null where the word is no value.
    private static (string? Key, string? Value, string? Fault) One(string word, PartKind? kind, PointMeasure? measures, Shape shape)
    {
        if (SaidIndication.Split(word) is { KeyEnd: > 0 } parts)
        {
            var (key, text) = (word[..parts.KeyEnd], word[parts.ValueStart..]);
            return text.Length == 0
                    ? (
                        null,
                        null,
                        $"'{word}' says no value; a shell takes > and < for itself: write it in quotes, as in \"{key}=>20Mohm\", or say "
                            + $"{key}=over 20Mohm"
                    )
                : shape.PlaceOf(key) < 0 ? (null, null, WhyNoValue.NoKey(key, text, shape))
                : (key, Spaced(text, shape.Keys[shape.PlaceOf(key)].Dimension, shape.Keys[shape.PlaceOf(key)].Kind), null);
        }

        if (IndicationText.WordOf(word) is not null)
        {
            var (key, fault) = SaidIndication.KeyOf(word, kind);
            return (key, word, fault);
        }

        if (Vocabulary.Results.Contains(word, StringComparer.Ordinal))
        {
            return ("result", word, null);
        }

        if (word.EndsWith('%'))
        {
            return ("loss_factor", Spaced(word, Dimension.Ratio, ValueKind.Indication), null);
        }

        var sign = IndicationText.SignOf(word);
        var figure = word[(sign?.Length ?? 0)..].TrimStart();
        var isAbove = sign is { Kind: IndicationKind.Above or IndicationKind.AtLeast };

        foreach (var (dimension, keyOf) in ByUnit)
        {
            if (IsSaid(figure, dimension))
            {
                if (isAbove && dimension == Dimension.Resistance && kind is { Family: PartFamily.Capacitor })
                {
                    return (null, null, $"'{word}' can be an ESR or an insulation; say which, as in \"insulation={word}\"");
                }

                var key = kind is null ? PointKey(dimension) : keyOf(kind);
                return shape.PlaceOf(key) < 0
                    ? (null, null, WhyNoValue.Elsewhere(word, key, measures))
                    : (key, Spaced(word, dimension, ValueKind.Indication), null);
            }
        }

        return default;
    }

    private static bool IsSaid(string word, Dimension dimension) =>
        word.Any(letter => !char.IsAsciiDigit(letter) && letter is not ('.' or '-' or ','))
        && QuantityText.Parse(word, dimension).Is(out _, out _);

    private static string PointKey(Dimension dimension) =>
        dimension switch
        {
            Dimension.Capacitance => "capacitance",
            Dimension.Inductance => "inductance",
            Dimension.Resistance => "resistance",
            Dimension.Current => "current",
            Dimension.Frequency => "frequency",
            Dimension.Temperature => "temperature",
            Dimension.Duration => "after",
            _ => "voltage",
        };

    // As records have it: a space before the unit, and the letters people type for µ and Ω in print.
    internal static string Spaced(string text, Dimension dimension, ValueKind kind)
    {
        if (kind is ValueKind.Indication)
        {
            var signed = SaidIndication.Signed(text);
            return IndicationText.SignOf(signed) is var (side, length)
                ? IndicationText.Sign(side) + Spaced(signed[length..].TrimStart(), dimension, ValueKind.Quantity)
                : Spaced(signed, dimension, ValueKind.Quantity);
        }

        if (kind is not ValueKind.Quantity || !QuantityText.Parse(text, dimension).Is(out _, out _))
        {
            return text;
        }

        var unit = text.AsSpan().LastIndexOfAnyInRange('0', '9') + 1;
        var number = text[..unit].TrimEnd();
        var rest = text[unit..].Trim();
        var print = rest switch
        {
            _ when rest.StartsWith('u') && rest.Length > 1 => "µ" + rest[1..],
            "ohm" or "ohms" or "R" => "Ω",
            "kohm" => "kΩ",
            "mohm" => "mΩ",
            "Mohm" => "MΩ",
            "C" => "°C",
            "Gohm" => "GΩ",
            _ => rest,
        };
        var spaced = print.Length == 0 ? number : string.Create(CultureInfo.InvariantCulture, $"{number} {print}");
        return
            QuantityText.Parse(spaced, dimension).Is(out var nice, out _)
            && QuantityText.Parse(text, dimension).Is(out var said, out _)
            && nice == said
            ? spaced
            : text;
    }
}
