using System.Globalization;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.PartsLists;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Starting;

namespace Ohmstead.MovingIn;

/// <summary>What a person says about the tables beside their columns.</summary>
/// <param name="Foreign">How days and figures are written.</param>
/// <param name="ProofsLast">Whether on a day with work and proofs the proofs came last.</param>
/// <param name="Board">The board of tables that have no column for it, or null.</param>
/// <param name="Date">The day of tables that have no column for it, or null.</param>
/// <param name="By">Who, where a table does not say it, or null.</param>
/// <param name="Kinds">Kinds by reference or class letters.</param>
/// <param name="Units">Units of bare figures by class letters.</param>
internal sealed record Saying(
    ForeignText Foreign,
    bool ProofsLast,
    string? Board,
    string? Date,
    string? By,
    IReadOnlyDictionary<string, PartKind> Kinds,
    IReadOnlyDictionary<string, string> Units
)
{
    /// <summary>Class letters whose kinds are kept from an earlier run, which need not be met again.</summary>
    public IReadOnlySet<string> KeptLetters { get; init; } = System.Collections.Frozen.FrozenSet<string>.Empty;
}

/// <summary>Turns rows into what comes to each record. A row in which anything is not understood is refused, with the reason.</summary>
internal sealed partial class Taker(CollectionFolder files, Workshop workshop, Saying said)
{
    private readonly IReadOnlyList<KnownBoard> boards = KnownBoards.In(files);
    private readonly Dictionary<string, (RecordDraft? Draft, string? Fault)> drafts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> looks = new(StringComparer.Ordinal);
    private Dictionary<string, KnownBoard>? byNumber;
    private readonly OrderedDictionary<(OldTable Table, string For), int> waits = [];
    private readonly HashSet<string> refusedBoards = new(StringComparer.Ordinal);
    private PartsOfBoards? parts;

    /// <summary>The records to which something comes, in the order in which they were met.</summary>
    public IEnumerable<RecordDraft> Drafts => drafts.Values.Select(one => one.Draft).OfType<RecordDraft>();

    /// <summary>The lots that come: each as one line of YAML, with its row.</summary>
    public List<(string Name, string Item, RowCells Cells)> Lots { get; } = [];

    /// <summary>Rows that are refused.</summary>
    public List<RefusedRow> Refused { get; } = [];

    /// <summary>What is told beside it, such as places that are not fitted.</summary>
    public List<string> Told { get; } = [];

    /// <summary>How many rows say what stands already.</summary>
    public int There { get; set; }

    /// <summary>Tells what only shows when all tables were taken.</summary>
    public void Finish()
    {
        parts?.Finish();
        Told.AddRange(
            waits.Select(one =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{one.Key.Table.File}: {one.Value} rows wait for {one.Key.For}, which is refused"
                )
            )
        );
    }

    /// <summary>Takes all rows of a table.</summary>
    public void Take(OldTable table)
    {
        var rows = new List<RowCells>();
        foreach (var row in table.Rows)
        {
            var (cells, refused) = RowCells.Read(table, row);
            if (refused is not null)
            {
                Refused.Add(refused);
            }
            else if (!cells!.AreEmpty)
            {
                rows.Add(cells);
            }
        }

        if (table.Sort == TableSort.Parts)
        {
            (parts ??= new PartsOfBoards(this, said)).Take(table, rows);
            return;
        }

        foreach (var cells in rows)
        {
            var refused =
                table.Sort == TableSort.Boards ? Board(cells)
                : table.Sort == TableSort.Readings ? Reading(cells)
                : table.Sort == TableSort.Work ? Work(cells)
                : Lot(cells);
            if (refused is not null)
            {
                Refuse(refused);
            }

            if (refused is not null && table.Sort == TableSort.Boards && cells[TableSort.Board] is { } number)
            {
                refusedBoards.Add(number);
            }
        }
    }

    /// <summary>Refuses a row; one that only waits for another row to be mended is counted instead.</summary>
    public void Refuse(RefusedRow row)
    {
        if (row.WaitsFor is not { } other)
        {
            Refused.Add(row);
            return;
        }

        waits[(row.Table, other)] = waits.GetValueOrDefault((row.Table, other)) + 1;
    }

    /// <summary>Whether the kind of a class letter is kept from an earlier run.</summary>
    public bool IsKept(string letters) => said.KeptLetters.Contains(letters);

    /// <summary>The record of a row's board, or why there is none.</summary>
    public (RecordDraft? Draft, RefusedRow? Refused) For(RowCells cells)
    {
        if ((cells[TableSort.Board] ?? (cells.Table.Plan.For(TableSort.Board) is null ? said.Board : null)) is not { } number)
        {
            return (null, cells.Refused(TableSort.Board, "the row names no board", "write its number"));
        }

        if (refusedBoards.Contains(number))
        {
            return (null, cells.Refused(TableSort.Board, string.Empty, null) with { WaitsFor = $"the row of board {number}" });
        }

        if (!drafts.TryGetValue(number, out var known))
        {
            byNumber ??= boards
                .DistinctBy(board => board.Number, StringComparer.Ordinal)
                .ToDictionary(board => board.Number, StringComparer.Ordinal);
            known = byNumber.TryGetValue(number, out var there)
                ? RecordDraft.Open(files, there, workshop)
                : (
                    null,
                    Nearest.Told(
                        $"there is no board '{CsvTableReader.Excerpt(number)}'",
                        Nearest.To(number, byNumber.Keys.Concat(drafts.Keys))
                    )
                );
            drafts[number] = known;
        }

        return known.Draft is { } draft
            ? (draft, null)
            : (
                null,
                cells.Refused(
                    TableSort.Board,
                    known.Fault!,
                    byNumber!.ContainsKey(number)
                        ? "mend it first; 'check' says where"
                        : "write the number of a board, or give its row in a table of --boards"
                )
            );
    }

    private static string? Yaml(Key key, string? value) =>
        value is null ? null
        : key.Kind is ValueKind.Text or ValueKind.Id ? FlowText.TextScalar(value)
        : FlowText.Scalar(value);
}
