using System.Globalization;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Entries;

/// <summary>What the text behind a key means, so that two ways of writing one figure are one.</summary>
internal static class FactMeaning
{
    /// <summary>The meaning: a figure in the base unit of its dimension; else the text.</summary>
    /// <param name="key">The key.</param>
    /// <param name="text">The text behind it.</param>
    public static string Read(Key key, string text) =>
        key.Kind switch
        {
            ValueKind.Quantity when key.Dimension is { } dimension && QuantityText.Parse(text, dimension).Is(out var value, out _) =>
                Figure(value),
            ValueKind.Indication when key.Dimension is { } dimension && IndicationText.Parse(text, dimension).Is(out var shown, out _) =>
                shown.Exact is { } exact ? Figure(exact)
                : shown.Bound is { } bound ? $"{IndicationText.Sign(shown.Kind)} {Figure(bound)}"
                : shown.Kind.ToString(),
            ValueKind.Number
            or ValueKind.Count when decimal.TryParse(text, NumberStyles.Number, CultureInfo.InvariantCulture, out var number) => Plain(
                number
            ),
            ValueKind.AnyQuantity or ValueKind.Tolerance => text.Replace(" ", string.Empty, StringComparison.Ordinal),
            _ => text.Trim(),
        };

    private static string Figure(Quantity value) => $"{Plain(value.Value)} {value.Dimension}";

    // 47.0 is 47 to whoever compares.
    private static string Plain(decimal value) => (value / 1.0000000000000000000000000000m).ToString(CultureInfo.InvariantCulture);
}
