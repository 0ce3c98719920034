using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.PartsLists;

/// <summary>Reads a cell whose column holds one key of a part.</summary>
internal static class KeyText
{
    /// <summary>The value as a record has it, or what is wrong and what to write.</summary>
    /// <param name="key">The key.</param>
    /// <param name="text">The cell.</param>
    /// <param name="kind">The kind of the part.</param>
    /// <param name="nominal">The main value of the part where it is known; some tolerance letters need it.</param>
    /// <param name="unit">The unit that the heading names, or null.</param>
    public static (string? Value, string? Fault, string? NextStep) Read(
        Key key,
        string text,
        PartKind kind,
        Quantity? nominal,
        string? unit
    )
    {
        var main = kind.MarkedIn;
        switch (key.Kind)
        {
            case ValueKind.Quantity or ValueKind.AnyQuantity:
                var dimension = key.Kind == ValueKind.Quantity ? key.Dimension : main;
                var plain =
                    dimension == Dimension.Voltage && text.EndsWith("DC", StringComparison.OrdinalIgnoreCase) ? text[..^2].TrimEnd() : text;
                return
                    QuantityText.Parse(plain, dimension).Is(out var quantity, out var fault)
                    || (unit is not null && QuantityText.Parse($"{plain} {unit}", dimension).Is(out quantity, out _))
                    ? (QuantityText.Format(quantity), null, null)
                    : (null, fault.Message, fault.NextStep is { } next ? $"write {next}" : $"write such as {key.Example}");
            case ValueKind.Tolerance:
                return
                    Tolerance.Parse(text, main, nominal).Is(out var tolerance, out var wrong)
                    || (unit is not null && Tolerance.Parse(text + unit, main, nominal).Is(out tolerance, out _))
                    ? (tolerance.ToString(), null, null)
                    : (null, wrong.Message, wrong.NextStep is { } instead ? $"write {instead}" : $"write such as {key.Example}");
            case ValueKind.Word:
                return key.Words.FirstOrDefault(word => word.Equals(text, StringComparison.OrdinalIgnoreCase)) is { } known
                    ? (known, null, null)
                    : (
                        null,
                        $"'{CsvTableReader.Excerpt(text)}' is no word for {key.Name}",
                        Nearest.To(text, key.Words) is { } near ? $"write {near}" : $"write one of: {string.Join(", ", key.Words)}"
                    );
            case ValueKind.Count:
                return text.Length is > 0 and < 6 && text.All(char.IsAsciiDigit)
                    ? (text, null, null)
                    : (null, $"'{CsvTableReader.Excerpt(text)}' is no whole number", $"write such as {key.Example}");
            default:
                return (text, null, null);
        }
    }
}
