using System.Globalization;
using Ohmstead.PartsLists;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.MovingIn;

// Rows that are lots in the drawer.
internal sealed partial class Taker
{
    private RefusedRow? Lot(RowCells cells)
    {
        var name = cells["lot"];
        if (name is null || NameRules.Fault(name) is not null)
        {
            return cells.Refused(
                "lot",
                name is null ? "the row names no lot" : $"'{CsvTableReader.Excerpt(name)}' cannot be a lot: {NameRules.Fault(name)}",
                "write a name such as L-031"
            );
        }

        if (
            cells["kind"] is not { } word
            || PartKinds.All.Values.FirstOrDefault(one => one.Name.Equals(word, StringComparison.OrdinalIgnoreCase)) is not { } kind
        )
        {
            return cells.Refused(
                "kind",
                cells["kind"] is { } other
                    ? $"'{CsvTableReader.Excerpt(other)}' is {PartShape.Kind.OtherWord}"
                    : "nothing says what kind of part it is",
                Nearest.To(cells["kind"] ?? string.Empty, PartKinds.All) is { } near
                    ? $"write {near}"
                    : $"write one of: {string.Join(", ", PartKinds.All)}"
            );
        }

        var (read, refused) = PartCells.Read(cells, kind, null, said.Foreign);
        if (refused is not null)
        {
            return refused;
        }

        var values = new Dictionary<string, string?>(StringComparer.Ordinal) { ["lot"] = name, ["kind"] = kind.Name };
        foreach (var (key, value) in read!)
        {
            values[key] = value;
        }

        foreach (
            var key in FileShapes.LotShape.Keys.Where(key =>
                key.Name is not ("lot" or "kind") && PartShape.Values.All(part => part.Name != key.Name)
            )
        )
        {
            var (value, wrong) = CellValue.Read(key, cells, key.Name, said.Foreign);
            if (wrong is not null)
            {
                return wrong;
            }

            values[key.Name] = value;
        }

        var item = FlowText.MappingOf(FileShapes.LotShape.Keys.Select(key => (key.Name, Yaml(key, values.GetValueOrDefault(key.Name)))));
        if (Lots.FirstOrDefault(known => known.Name == name) is { Cells: { } earlier } && earlier is not null)
        {
            if (cells.Against(earlier) is not { } both)
            {
                There++;
                return null;
            }

            return cells.Refused(
                "lot",
                $"{name} stands on row {earlier.Row.Line.ToString(CultureInfo.InvariantCulture)} of {earlier.Table.Name} already",
                both
            );
        }

        Lots.Add((name, item, cells));
        return null;
    }
}
