using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;
using Ohmstead.Running;

namespace Ohmstead.Writing;

/// <summary>Entries of the stock file.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="run">How records are read and judged.</param>
/// <param name="files">The collection.</param>
internal sealed class StockEntry(Terminal terminal, RunOptions run, CollectionFolder files)
{
    /// <summary>The name of the stock file.</summary>
    public const string Path = "stock.yaml";

    private const string Empty = "# The drawer, the orders, and incoming inspection.\nlots: []\n";

    private readonly SharedFileEntry file = new(terminal, run, files, Path, Empty);

    /// <summary>The drawer and the orders as they are.</summary>
    public Workshop Workshop => file.Workshop;

    /// <summary>How many pieces of a lot are left in the drawer, with how many came and how many boards took; null where nobody wrote how
    /// many came.</summary>
    public (int Came, int Fitted, int Left)? Left(Lot lot)
    {
        if (lot.Quantity is not { Value: var came })
        {
            return null;
        }

        var all = new CollectionRun(files, run with { ForPages = false }).Run();
        var fitted = BoardSummary.UseOfLots(all.Boards).Fitted(lot.Id.Value);
        return (came, fitted, came - fitted - Workshop.ScrappedOf(lot.Id.Value));
    }

    /// <summary>Puts an entry into the visit of its day and person: the last one for what is of today, else that day's, or one in
    /// order.</summary>
    /// <param name="editor">The stock file.</param>
    /// <param name="who">The day and who works.</param>
    /// <param name="list">The list of the visit.</param>
    /// <param name="item">The entry as one line of YAML, given the keys of the visit it joins; null where it joins none.</param>
    public static (EditOutcome Outcome, string Line) Into(
        RecordEditor editor,
        VisitHead who,
        string list,
        Func<IReadOnlyDictionary<string, string>?, string> item
    )
    {
        if (!who.IsLate)
        {
            var line = item(editor.LastVisit is { } last && who.IsOf(last) ? last : null);
            return (editor.AppendToVisit(FileShapes.Stock, who.IsOf, who.Keys, list, line), line);
        }

        var bench = new BenchSplicer(editor, ofStock: true);
        var there = new OldDay(bench, who.Date, who.By).There;
        var late = item(there?.Values);
        var put = bench.Put([new(who.Date, there?.Index, there is null ? who.Keys : [], [(list, late)])]);
        return (new(put.Text, put.Refusal) { Entry = put.Spots is [var spot, ..] ? spot : default }, late);
    }

    /// <inheritdoc cref="SharedFileEntry.Change"/>
    public int Change(
        bool isSure,
        bool isTrial,
        Func<RecordEditor, (EditOutcome Outcome, string Line)> change,
        Action<Workshop, Spot>? tell = null
    ) => file.Change(isSure, isTrial, change, tell);
}
