using Ohmstead.PartsLists;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.MovingIn;

/// <summary>Reads what a row says about a part of a known kind: a value with what stands beside it, and columns that hold one key
/// each.</summary>
internal static class PartCells
{
    /// <summary>Keys with their values, or why there are none.</summary>
    public static (IReadOnlyList<(string Key, string Value)>? Values, RefusedRow? Refused) Read(
        RowCells cells,
        PartKind kind,
        string? unit,
        ForeignText foreign
    )
    {
        var values = new List<(string Key, string Value)>();
        if (cells[ColumnPlan.Value] is { } value)
        {
            var (text, fault, next) = cells.IsFigure(ColumnPlan.Value) ? (value, null, null) : foreign.Figures(value);
            if (fault is null)
            {
                (var read, fault, next) = ValueText.Read(text!, kind, unit ?? cells.Table.Plan.For(ColumnPlan.Value)!.Unit);
                values.AddRange(read);
            }

            if (fault is not null)
            {
                return (null, cells.Refused(ColumnPlan.Value, fault, next));
            }
        }

        foreach (var key in PartShape.Values.Where(key => cells[key.Name] is not null && FileShapes.LotShape.PlaceOf(key.Name) >= 0))
        {
            var (text, fault, next) =
                IsFigured(key) && !cells.IsFigure(key.Name) ? foreign.Figures(cells[key.Name]!) : (cells[key.Name]!, null, null);
            string? read = null;
            if (fault is null)
            {
                (read, fault, next) = KeyText.Read(key, text!, kind, null, cells.Table.Plan.For(key.Name)!.Unit);
            }

            if (fault is not null)
            {
                return (null, cells.Refused(key.Name, fault, next));
            }

            if (values.Exists(known => known.Key == key.Name && known.Value != read) && key != PartShape.Type)
            {
                return (
                    null,
                    cells.Refused(
                        key.Name,
                        $"{key.Name} is {read} here, and {values.First(known => known.Key == key.Name).Value} in the value",
                        "write what is right into both columns"
                    )
                );
            }

            values.RemoveAll(known => known.Key == key.Name);
            values.Add((key.Name, read!));
        }

        return (values, null);
    }

    /// <summary>Whether a value of a key holds figures that have a decimal mark.</summary>
    public static bool IsFigured(Key key) =>
        key.Kind is ValueKind.Quantity or ValueKind.AnyQuantity or ValueKind.Indication or ValueKind.Tolerance or ValueKind.Number;
}
