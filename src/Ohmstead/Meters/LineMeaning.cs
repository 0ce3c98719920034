using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Meters;

/// <summary>What a line of a meter means by its description. It knows no wire.</summary>
/// <param name="meter">The description.</param>
internal sealed class LineMeaning(Meter meter)
{
    private readonly HashSet<string> overload =
    [
        .. (meter.Overload?.Value ?? string.Empty).Split(' ', StringSplitOptions.RemoveEmptyEntries),
    ];

    /// <summary>Reads a line.</summary>
    public MeterAnswer Read(string line)
    {
        var cells = Split(line);
        // 46.1 uF is two cells where spaces part them, and one field.
        if (cells.Length != meter.Fields.Length)
        {
            return MeterAnswer.Without(
                $"'{Printable.Escape(Short(line))}' has {cells.Length} fields, and the description of {meter.Name.Value} has "
                    + $"{meter.Fields.Length}; nothing was taken"
            );
        }

        var named = Named(cells);
        var values = new List<(string Key, string Value)>();
        for (var at = 0; at < cells.Length; at++)
        {
            var (field, cell) = (meter.Fields[at], cells[at]);
            if (overload.Contains(cell) || MeterFigure.IsOverload(cell))
            {
                return MeterAnswer.Without("the meter shows that it is beyond its range, or has no reading; nothing was taken");
            }

            var role = field.Holds.Value.Role;
            if (role == MeterFieldRole.Status && !Texts(field.Good?.Value ?? "0 +0").Contains(cell, StringComparer.Ordinal))
            {
                return MeterAnswer.Without($"the meter marks its reading with '{Printable.Escape(Short(cell))}'; nothing was taken");
            }

            if (role == MeterFieldRole.Quantity && named is null)
            {
                return MeterAnswer.Without(
                    $"no quantity is known by '{Printable.Escape(Short(cell))}'; add it to the names in meters.yaml"
                );
            }

            if (role is not (MeterFieldRole.Measured or MeterFieldRole.Reading))
            {
                continue;
            }

            if ((role == MeterFieldRole.Reading ? named : field.Holds.Value.Measured) is not { } measured)
            {
                return MeterAnswer.Without("the line does not say which quantity it shows; nothing was taken");
            }

            var key = MeasuredKey.For(measured).Name;
            if (Value(cell, UnitAt(at, cells), MeasuredDimension.From(measured)) is not { } value)
            {
                return MeterAnswer.Without(
                    $"'{Printable.Escape(Short(cell))}' is no {key.Replace('_', ' ')} with its unit; nothing was taken"
                );
            }

            if (values.Exists(other => other.Key == key))
            {
                return MeterAnswer.Without($"the line tells {key.Replace('_', ' ')} twice; nothing was taken");
            }

            values.Add((key, value));
        }

        if (values.Count == 0)
        {
            return MeterAnswer.Without("the line holds no figure; nothing was taken");
        }

        // What a reading is taken at is said behind what was read.
        List<(string Key, string Value)> all =
        [
            .. values.Where(value => !IsCondition(value.Key)),
            .. values.Where(value => IsCondition(value.Key)),
        ];
        return Range(cells, all[0].Key) switch
        {
            (_, { } fault) => MeterAnswer.Without(fault),
            ({ } range, _) => MeterAnswer.With(new([.. all, (BenchShape.Range.Name, range)])),
            _ => MeterAnswer.With(new(all)),
        };
    }

    // The range is in the unit of what was read first, wherever in the line it stands.
    private (string? Range, string? Fault) Range(string[] cells, string key)
    {
        for (var at = 0; at < cells.Length; at++)
        {
            if (meter.Fields[at].Holds.Value.Role == MeterFieldRole.Range)
            {
                var range = FirstDimension(key) is { } dimension ? Value(cells[at], UnitAt(at, cells), dimension) : null;
                return range is null ? (null, $"'{Printable.Escape(Short(cells[at]))}' is no range; nothing was taken") : (range, null);
            }
        }

        return default;
    }

    private bool IsCondition(string key) =>
        key == BenchShape.Frequency.Name
        && meter.Fields.Any(field =>
            field.Holds.Value is { Role: MeterFieldRole.Reading } or { Measured: not null and not Measured.Frequency }
        );

    private static Dimension? FirstDimension(string key) =>
        BenchShape.Reading.PlaceOf(key) is >= 0 and var place ? BenchShape.Reading.Keys[place].Dimension : null;

    private Measured? Named(string[] cells)
    {
        for (var at = 0; at < cells.Length; at++)
        {
            if (meter.Fields[at].Holds.Value.Role == MeterFieldRole.Quantity)
            {
                return meter.Fields[at].Names.FirstOrDefault(name => name.Says.Value == cells[at])?.Is.Value.Measured;
            }
        }

        return null;
    }

    // Its own, or what the next field says; null where the figure brings it along.
    private string? UnitAt(int at, string[] cells) =>
        at + 1 < cells.Length && meter.Fields[at + 1].Holds.Value.Role == MeterFieldRole.Unit
            ? cells[at + 1]
            : meter.Fields[at].Unit?.Value;

    private static string? Value(string cell, string? unit, Dimension dimension)
    {
        if (unit is null && dimension is not (Dimension.Ratio or Dimension.Number))
        {
            return QuantityText.Parse(cell, dimension).Is(out var whole, out _) && cell.Any(char.IsLetter)
                ? QuantityText.Format(whole)
                : null;
        }

        return MeterFigure.Parse(cell) is { } figure && MeterFigure.With(figure, unit ?? string.Empty, dimension) is { } read
            ? QuantityText.Format(read)
            : null;
    }

    private string[] Split(string line) =>
        meter.Separator switch
        {
            MeterSeparator.Comma => [.. line.Split(',').Select(cell => cell.Trim())],
            MeterSeparator.Semicolon => [.. line.Split(';').Select(cell => cell.Trim())],
            MeterSeparator.Spaces => Texts(line),
        };

    private static string[] Texts(string text) => text.Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries);

    private static string Short(string text) => text.Length <= 60 ? text : text[..60] + "…";
}
