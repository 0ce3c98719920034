using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.PartsLists;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Shapes;
using Ohmstead.Writing;

namespace Ohmstead.MovingIn;

/// <summary>Reads a cell whose column holds one key of a visit: a reading with the figures as they were written, a day, a word.</summary>
internal static class CellValue
{
    /// <summary>The value as a record has it, or what is wrong and what to do.</summary>
    /// <param name="key">The key.</param>
    /// <param name="cells">The row.</param>
    /// <param name="target">What the column holds.</param>
    /// <param name="foreign">How the table writes days and figures.</param>
    public static (string? Value, RefusedRow? Refused) Read(Key key, RowCells cells, string target, ForeignText foreign)
    {
        if (cells[target] is not { } text)
        {
            return (null, null);
        }

        var (value, fault, next) = Read(key, text, cells.IsFigure(target), cells.Table.Plan.For(target)?.Unit, foreign);
        return fault is null ? (value, null) : (null, cells.Refused(target, fault, next));
    }

    private static (string? Value, string? Fault, string? NextStep) Read(
        Key key,
        string text,
        bool isFigure,
        string? unit,
        ForeignText foreign
    )
    {
        switch (key.Kind)
        {
            case ValueKind.Date:
                return foreign.Day(text);
            case ValueKind.RoughDate:
                return DateText.ParseRough(text).Is(out _, out _) ? (text, null, null) : foreign.Day(text);
            case ValueKind.Indication or ValueKind.Quantity or ValueKind.Number:
                if (Nothing.Contains(text, StringComparer.OrdinalIgnoreCase))
                {
                    return (null, $"'{text}' is no {key.Name}", $"empty the cell where nothing was read, or write such as {key.Example}");
                }

                var (plain, fault, next) = isFigure ? (text, null, null) : foreign.Figures(text);
                return fault is not null ? (null, fault, next)
                    : key.Kind == ValueKind.Number
                        ? decimal.TryParse(plain, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _) ? (plain, null, null)
                            : (null, $"'{CsvTableReader.Excerpt(text)}' is no number", $"write such as {key.Example}")
                    : Measured(key, plain!, unit);
            case ValueKind.Count:
                return text.Length is > 0 and < 6 && text.All(char.IsAsciiDigit)
                    ? (text, null, null)
                    : (null, $"'{CsvTableReader.Excerpt(text)}' is no whole number", $"write such as {key.Example}");
            case ValueKind.Word or ValueKind.Words:
                return key.Words.FirstOrDefault(word => word.Equals(text, StringComparison.OrdinalIgnoreCase)) is { } known
                    ? (known, null, null)
                    : (
                        null,
                        $"'{CsvTableReader.Excerpt(text)}' is {key.OtherWord}",
                        Nearest.To(text, key.Words) is { } near ? $"write {near}" : $"write one of: {string.Join(", ", key.Words)}"
                    );
            case ValueKind.Id:
                return NameRules.Fault(text) is { } wrong
                    ? (null, $"'{CsvTableReader.Excerpt(text)}' cannot be the {key.Name}: {wrong}", $"write such as {key.Example}")
                    : (text, null, null);
            default:
                return (text, null, null);
        }
    }

    // What people write where nothing was read.
    private static readonly string[] Nothing = ["-", "--", "–", "—", "?", "n/a", "na", "n.a.", "none", "."];

    // Figures keep their digits, for how exactly something was read is part of the reading.
    private static (string? Value, string? Fault, string? NextStep) Measured(Key key, string text, string? unit)
    {
        var written = EnteredValues.Spaced(text, key.Dimension, key.Kind);
        if (Fault(key, written) is not { } fault)
        {
            return (written, null, null);
        }

        if (unit is not null)
        {
            var with = EnteredValues.Spaced($"{text} {unit}", key.Dimension, key.Kind);
            if (Fault(key, with) is null)
            {
                return (with, null, null);
            }
        }

        return (
            null,
            fault.Message,
            fault.Kind == ParseFaultKind.UnitMissing
                ? $"write the unit, as in {key.Example}, or name it in the heading, as in '{key.Name} ({UnitOf(key)})'"
            : fault.NextStep is { } next ? $"write {next}"
            : $"write such as {key.Example}"
        );
    }

    private static ParseFault? Fault(Key key, string text) =>
        key.Kind == ValueKind.Indication ? IndicationText.Parse(text, key.Dimension).Fault : QuantityText.Parse(text, key.Dimension).Fault;

    private static string UnitOf(Key key) => key.Example[(key.Example.AsSpan().LastIndexOfAnyInRange('0', '9') + 1)..].Trim();
}
