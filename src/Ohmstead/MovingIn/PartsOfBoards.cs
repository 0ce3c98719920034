using System.Globalization;
using Ohmstead.PartsLists;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.MovingIn;

/// <summary>Takes a table of the parts of many boards: the rows of each board are a parts list of their own.</summary>
internal sealed class PartsOfBoards(Taker taker, Saying said)
{
    // What people write into the cell of a value, or of a mark, where a place is left empty.
    private static readonly string[] EmptyPlace =
    [
        "dnp",
        "dni",
        "dnf",
        "dns",
        "n/f",
        "n.f.",
        "nf",
        "not fitted",
        "not placed",
        "not populated",
        "do not fit",
        "do not place",
        "unfitted",
    ];
    private static readonly string[] Yes = ["yes", "y", "x", "1", "true"];
    private static readonly string[] Filled = [.. Yes, "fitted"];
    private static readonly string[] No = ["no", "n", "0", "false", "-"];

    private OldTable? last;
    private readonly HashSet<string> met = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (List<string> References, PartKind Likely)> undecided = new(StringComparer.Ordinal);
    private readonly Dictionary<string, HashSet<string>> boardsOf = new(StringComparer.Ordinal);

    /// <summary>Takes them.</summary>
    public void Take(OldTable table, IReadOnlyList<RowCells> rows)
    {
        var lists = new OrderedDictionary<RecordDraft, List<CsvRow>>();
        var empty = 0;
        foreach (var cells in rows)
        {
            var (draft, refused) = taker.For(cells);
            var (isFitted, mark) = refused is null ? Fitted(cells) : (true, null);
            var (row, figure) = refused is null && mark is null && isFitted ? Plain(cells) : (null, null);
            if ((refused ?? mark ?? figure) is { } wrong)
            {
                taker.Refuse(wrong);
                Await(draft, table, cells.Row);
            }
            else if (!isFitted)
            {
                empty++;
            }
            else
            {
                lists.TryAdd(draft!, []);
                lists[draft!].Add(row!);
            }
        }

        foreach (var (draft, list) in lists)
        {
            One(table, draft, list);
        }

        if (empty > 0)
        {
            taker.Told.Add(
                string.Create(CultureInfo.InvariantCulture, $"{table.File}: {empty} rows of places that are not fitted are left out")
            );
        }

        last = table;
    }

    /// <summary>Tells of kinds that nothing decides, and of those that were said of nothing.</summary>
    public void Finish()
    {
        Undecided(last!);
        Missing(last!);
    }

    private void One(OldTable table, RecordDraft draft, List<CsvRow> rows)
    {
        var choices = new ListChoices(said.Kinds, said.Units, reference =>
            draft.Known.GetValueOrDefault(reference)?.Part.Values.Kind.Value
        );
        var list = PartsListReader.Read(table.Cells with { Rows = rows, Faults = [] }, table.Plan, choices);
        var compared = ListComparison.Compare(list.Parts, draft.Known);
        foreach (var fault in list.Faults.Concat(list.Contradictions).Concat(compared.Conflicts).Concat(compared.Alike))
        {
            var column = fault.Column == 0 ? null : table.Plan.Columns[fault.Column - 1];
            var place = fault.Column == 0 ? $"{draft.Number}: {fault.Message}" : fault.Message;
            taker.Refuse(new(table, fault.Line, column, place, fault.NextStep));
            Await(draft, table, rows.First(row => row.Line == fault.Line));
        }

        foreach (var (letters, references) in list.Undecided)
        {
            undecided.TryAdd(letters, ([], ClassLetter.Candidates(letters)[0]));
            undecided[letters].References.AddRange(references);
            draft.Waiting.UnionWith(references);
            references.ToList().ForEach(reference => Meet(reference, draft));
        }

        foreach (var part in list.Parts)
        {
            Meet(part.Reference, draft);
        }

        taker.Told.AddRange(compared.Less.Select(less => $"{draft.Number}, {less}"));
        taker.There += compared.Same.Count;
        foreach (var part in compared.New)
        {
            var drafted = draft.Parts.FirstOrDefault(known => known.Part.Reference == part.Reference).Part;
            if (drafted is not null && InWords(drafted) == InWords(part))
            {
                taker.There++;
            }
            else if (draft.HasPart(part.Reference))
            {
                taker.Refused.Add(
                    new(
                        table,
                        part.Line,
                        null,
                        $"{draft.Number}: {part.Reference} stands in another table of this run already",
                        drafted is null
                            ? "write what both say into one of the rows, and take the other out"
                            : $"write what is right into both rows: {InWords(drafted)} there, {InWords(part)} here"
                    )
                );
            }
            else
            {
                draft.Add(part, table);
            }
        }
    }

    // What is said of parts whose row is refused is not refused as well.
    private void Await(RecordDraft? draft, OldTable table, CsvRow row)
    {
        var references = ReferenceList
            .Read(row.Cells.ElementAtOrDefault(table.Plan.For(ColumnPlan.Reference)!.Index) ?? string.Empty)
            .References;
        draft?.Waiting.UnionWith(references);
        foreach (var reference in references)
        {
            Meet(reference, draft);
        }
    }

    private void Meet(string reference, RecordDraft? draft)
    {
        met.Add(ReferenceList.ClassLetters(reference));
        if (said.Kinds.ContainsKey(reference))
        {
            boardsOf.TryAdd(reference, new(StringComparer.Ordinal));
            boardsOf[reference].Add(draft?.Number ?? string.Empty);
        }
    }

    // Whether a place has its part, by a column of its own or by the word in the place of a value.
    private static (bool IsFitted, RefusedRow? Refused) Fitted(RowCells cells)
    {
        if (cells[ColumnPlan.Value] is { } value && IsEmptyPlace(value))
        {
            return (false, null);
        }

        if (cells[TableSort.NotFitted] is { } mark)
        {
            return IsEmptyPlace(mark) || Is(Yes, mark) ? (false, null)
                : Is(No, mark) ? (true, null)
                : (
                    true,
                    cells.Refused(
                        TableSort.NotFitted,
                        $"'{CsvTableReader.Excerpt(mark)}' says neither yes nor no",
                        "write yes where the place is empty, else no"
                    )
                );
        }

        if (cells.Table.Plan.For(TableSort.Fitted) is null)
        {
            return (true, null);
        }

        return cells[TableSort.Fitted] is not { } fitted
                ? (true, cells.Refused(TableSort.Fitted, "nothing says whether the part is fitted", "write yes or no"))
            : Is(Filled, fitted) ? (true, null)
            : Is(No, fitted) || IsEmptyPlace(fitted) ? (false, null)
            : (true, cells.Refused(TableSort.Fitted, $"'{CsvTableReader.Excerpt(fitted)}' says neither yes nor no", "write yes or no"));
    }

    private static bool IsEmptyPlace(string text) => Is(EmptyPlace, text);

    private static bool Is(string[] words, string text) => words.Contains(text, StringComparer.OrdinalIgnoreCase);

    // The row with its figures as records write them.
    private (CsvRow? Row, RefusedRow? Refused) Plain(RowCells cells)
    {
        string[]? changed = null;
        foreach (var column in cells.Table.Plan.Columns)
        {
            if (
                column.Target is not { } target
                || cells[target] is not { } text
                || cells.IsFigure(target)
                || !(
                    target == ColumnPlan.Value
                    || (PartShape.Shape.PlaceOf(target) is >= 0 and var place && PartCells.IsFigured(PartShape.Shape.Keys[place]))
                )
            )
            {
                continue;
            }

            var (plain, fault, next) = said.Foreign.Figures(text);
            if (fault is not null)
            {
                return (null, cells.Refused(target, fault, next));
            }

            if (plain != text)
            {
                changed ??= [.. cells.Row.Cells];
                changed[column.Index] = plain!;
            }
        }

        return (changed is null ? cells.Row : cells.Row with { Cells = changed }, null);
    }

    private void Undecided(OldTable table)
    {
        foreach (var (letters, (references, likely)) in undecided)
        {
            var some =
                string.Join(", ", references.Distinct(StringComparer.Ordinal).Take(6))
                + (references.Count > 6 ? string.Create(CultureInfo.InvariantCulture, $" … ({references.Count} parts)") : string.Empty);
            taker.Refused.Add(
                new(
                    table,
                    0,
                    null,
                    $"'{letters}' does not say which kind of part it is: {some}",
                    $"--kind \"{letters}={likely}\", or one of: {string.Join(", ", ClassLetter.Candidates(letters))}"
                )
            );
        }
    }

    // A kind that was said of nothing is a slip; one of a place on many boards says more than was meant.
    private void Missing(OldTable table)
    {
        foreach (var (key, kind) in said.Kinds)
        {
            var isLetter = key.All(char.IsAsciiLetter);
            var count = boardsOf.GetValueOrDefault(key)?.Count ?? 0;
            if (isLetter ? !met.Contains(key.ToUpperInvariant()) && !taker.IsKept(key) : count == 0)
            {
                taker.Refused.Add(
                    new(
                        table,
                        0,
                        null,
                        $"--kind says that {key} is '{kind}', and no row has {(isLetter ? $"a part with the letter {key}" : key)}",
                        "take it back, or write the reference that is meant"
                    )
                );
            }
            else if (count > 1)
            {
                taker.Refused.Add(
                    new(
                        table,
                        0,
                        null,
                        string.Create(CultureInfo.InvariantCulture, $"--kind says that {key} is '{kind}', and {count} boards have a {key}"),
                        "write the kind into a column of the table, headed 'kind'"
                    )
                );
            }
        }
    }

    private static string InWords(ListedPart part) => string.Join(' ', part.Values.Select(value => value.Value).Prepend(part.Kind.Name));
}
