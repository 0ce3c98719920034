using System.Globalization;
using Ohmstead.PartsLists;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.MovingIn;

// Rows that belong to visits: readings, proofs and work.
internal sealed partial class Taker
{
    private (string? Date, string? By, RefusedRow? Refused) Head(RowCells cells)
    {
        var (date, refused) = CellValue.Read(BenchShape.Date, cells, TableSort.Date, said.Foreign);
        date ??= refused is null && cells.Table.Plan.For(TableSort.Date) is null ? said.Date : null;
        return date is null
            ? (null, null, refused ?? cells.Refused(TableSort.Date, "the row has no day", "write it as 2026-03-14"))
            : (date, cells[TableSort.By] ?? said.By, null);
    }

    private RefusedRow? Reading(RowCells cells)
    {
        var (draft, wrong) = For(cells);
        if (draft is null)
        {
            return wrong;
        }

        var (date, by, head) = Head(cells);
        if (head is not null)
        {
            return head;
        }

        var place = cells[TableSort.Part];
        if (place is null || (!draft.HasPart(place) && !draft.HasPoint(place)))
        {
            if (place is not null && draft.Waiting.Contains(place))
            {
                return cells.Refused(TableSort.Part, string.Empty, null) with { WaitsFor = $"the row of {draft.Number} {place}" };
            }

            var references = place is null ? [] : ReferenceList.Read(place).References;
            var near = place is null ? null : Nearest.To(place, draft.Places);
            return references.Count > 1
                ? cells.Refused(
                    TableSort.Part,
                    $"'{CsvTableReader.Excerpt(place!)}' are {references.Count.ToString(CultureInfo.InvariantCulture)} places, "
                        + "and a reading is of one",
                    "give each place a row of its own"
                )
                : cells.Refused(
                    TableSort.Part,
                    place is null
                        ? "the row names no part and no point"
                        : Nearest.Told($"{draft.Number} has no part and no point '{CsvTableReader.Excerpt(place)}'", near),
                    $"write {near ?? "one that is there"}, or give the part in a table of --parts; "
                        + $"a point: ohmstead add point {draft.Number}"
                );
        }

        var isPoint = !draft.HasPart(place);
        var shape = isPoint ? BenchShape.Proof : BenchShape.Reading;
        var values = new Dictionary<string, string?>(StringComparer.Ordinal) { [isPoint ? "point" : "part"] = place };
        foreach (
            var column in cells.Table.Plan.Columns.Where(column =>
                column.Target is not (null or TableSort.Board or TableSort.Date or TableSort.By or TableSort.Part)
            )
        )
        {
            var target = column.Target!;
            if (cells[target] is null)
            {
                continue;
            }

            if (shape.PlaceOf(target) < 0)
            {
                return cells.Refused(
                    target,
                    $"{place} is a {(isPoint ? "test point" : "part")}, and a {shape.Name} has no {target}",
                    "empty the cell, or give the row the place that it belongs to"
                );
            }

            var (value, refused) = CellValue.Read(shape.Keys[shape.PlaceOf(target)], cells, target, said.Foreign);
            if (refused is not null)
            {
                return refused;
            }

            values[target] = value;
        }

        if (!values.Keys.Any(IsRead))
        {
            return cells.Refused(null, $"the row reads nothing of {place}", "fill in what was read, or take the row out");
        }

        var instrument = values.GetValueOrDefault("instrument");
        draft.Entries.Add(
            new(cells, date!, by, isPoint ? "proof" : "readings", place, instrument, used =>
                FlowText.MappingOf(
                    shape.Keys.Select(key => (key.Name, Yaml(key, key.Name == "instrument" ? used : values.GetValueOrDefault(key.Name))))
                )
            )
            {
                State = values.GetValueOrDefault("state"),
            }
        );
        return null;
    }

    private static bool IsRead(string key) =>
        key == BenchShape.Result.Name
        || key == BenchShape.Hours.Name
        || BenchShape.Reading.Keys.Concat(BenchShape.Proof.Keys).Any(known => known.Name == key && known.Kind == ValueKind.Indication);

    private RefusedRow? Work(RowCells cells)
    {
        var (draft, wrong) = For(cells);
        if (draft is null)
        {
            return wrong;
        }

        var (date, by, head) = Head(cells);
        if (head is not null)
        {
            return head;
        }

        var values = new Dictionary<string, string?>(StringComparer.Ordinal);
        foreach (var key in BenchShape.Work.Keys.Where(key => key.Name is not TableSort.Part))
        {
            if (key == BenchShape.NewPart)
            {
                var (made, fault) = NewPartText.Read(cells[key.Name]);
                if (fault is not null)
                {
                    return cells.Refused(key.Name, fault, "write the kind, then what is printed on it: aluminium electrolytic 470uF 25V");
                }

                values[key.Name] = made;
                continue;
            }

            var (value, refused) = CellValue.Read(key, cells, key.Name, said.Foreign);
            if (refused is not null)
            {
                return refused;
            }

            values[key.Name] = Yaml(key, value);
        }

        if (values["did"] is null)
        {
            return cells.Refused("did", "nothing says what was done", $"write one of: {string.Join(", ", Vocabulary.Works)}");
        }

        string?[] places = [null];
        if (cells[TableSort.Part] is { } named)
        {
            var (references, fault, next) = draft.HasPart(named) ? ([named], null, null) : ReferenceList.Read(named);
            if (fault is not null)
            {
                return cells.Refused(TableSort.Part, fault, next);
            }

            if (references.FirstOrDefault(draft.Waiting.Contains) is { } waiting)
            {
                return cells.Refused(TableSort.Part, string.Empty, null) with { WaitsFor = $"the row of {draft.Number} {waiting}" };
            }

            if (references.FirstOrDefault(reference => !draft.HasPart(reference)) is { } missing)
            {
                return cells.Refused(
                    TableSort.Part,
                    Nearest.Told($"{draft.Number} has no part '{CsvTableReader.Excerpt(missing)}'", Nearest.To(missing, draft.Places)),
                    "write a part that is there, or the place into a column 'at'"
                );
            }

            places = [.. references];
        }

        if (values["irreversible"] is { } irreversible && Vocabulary.YesNo.Means(irreversible, out var isSo) && isSo)
        {
            Told.Add($"{cells.Refused("irreversible", string.Empty, null).Place}: this is told as something that cannot be undone");
        }

        foreach (var place in places)
        {
            var entry = new Dictionary<string, string?>(values, StringComparer.Ordinal)
            {
                [TableSort.Part] = place is null ? null : FlowText.TextScalar(place),
            };
            var item = FlowText.MappingOf(BenchShape.Work.Keys.Select(key => (key.Name, entry.GetValueOrDefault(key.Name))));
            draft.Entries.Add(new(cells, date!, by, "work", place ?? cells["at"] ?? string.Empty, null, _ => item));
        }

        return null;
    }
}
