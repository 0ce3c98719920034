using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;

namespace Ohmstead.Writing;

/// <summary>Where in its day an entry came that is entered later.</summary>
internal enum CameWhen
{
    /// <summary>Before all that stands of that day.</summary>
    First,

    /// <summary>After all that stands of that day.</summary>
    Last,
}

/// <summary>Puts what is entered later to the day it is of: into the visit of that day and that person where nothing is said by it that
/// nobody told, else into one of its own, in order of the days.</summary>
internal static class LateEntry
{
    /// <summary>Puts several entries of one list in, all or none.</summary>
    /// <param name="editor">The record.</param>
    /// <param name="who">The day and who worked.</param>
    /// <param name="key">The list of the visit.</param>
    /// <param name="items">The entries, each as one line of YAML, given the keys of the visit it joins.</param>
    /// <param name="twice">What holds back an entry that stands already, word for word; null to enter it a second time.</param>
    /// <returns>The text as it will be, or why it stays as it is; and the entries, a line each.</returns>
    public static (EditOutcome Outcome, string Line) Into(
        RecordEditor editor,
        VisitHead who,
        string key,
        IReadOnlyList<Func<IReadOnlyDictionary<string, string>, string>> items,
        Func<string, string, EditOutcome>? twice
    )
    {
        var bench = new BenchSplicer(editor);
        var day = new OldDay(bench, who.Date, who.By);
        if (twice is not null && items.FirstOrDefault(item => day.Holds(key, visit => item(visit.Values))) is { } held)
        {
            var line = held(day.There!.Values);
            return (twice($"the record of {who.Date}", line), line);
        }

        DayEntry[] entries =
        [
            .. items.Select(item =>
            {
                var line = item(day.There?.Values ?? Named(who.Keys));
                var said = bench.SaidBy(line);
                return new DayEntry(key, said.Place ?? string.Empty, said.State, line);
            }),
        ];
        if (who.Came is null)
        {
            foreach (var entry in entries)
            {
                if (day.Doubt(entry, entries, proofsLast: false) is { } doubt)
                {
                    return (new(null, new($"{who.Date}: {doubt.Message}", NextStep(doubt))), entry.Item);
                }
            }
        }

        var joined = Joined(bench, day, who.Came, entries);
        var used = key is "readings" or "proof" ? day.There?.Values.GetValueOrDefault("instrument") : null;
        var head = who with { Instrument = who.Instrument ?? used };
        string[] lines = [.. items.Select(item => item(joined?.Values ?? Named(head.Keys)))];
        var put = bench.Put([
            new(who.Date, joined?.Index, joined is null ? head.Keys : [], [.. lines.Select(line => (key, line))])
            {
                IsFirstOfDay = who.Came == CameWhen.First,
            },
        ]);
        return (new(put.Text, put.Refusal) { Entry = put.Spots is [var spot, ..] ? spot : default }, string.Join('\n', lines));
    }

    // Where nothing is doubted, the lists of the visit tell the order. What came first has a visit before it; what came last joins the last
    // one alone.
    private static KnownVisit? Joined(BenchSplicer bench, OldDay day, CameWhen? came, DayEntry[] entries) =>
        came switch
        {
            CameWhen.First => null,
            CameWhen.Last when day.There is null || day.There.Index != day.Visits[^1].Index => null,
            CameWhen.Last => day.There is { } there && entries.All(entry => bench.MayJoin(there.Index, entry.List, entry.Item))
                ? there
                : null,
            _ => day.There,
        };

    private static string NextStep(OrderDoubt doubt) =>
        (doubt.IsOfState ? "say --state \"as found\" or \"as left\"; or say" : "say")
        + " where in that day it came: --came first or --came last; what came between two things goes in by hand";

    private static Dictionary<string, string> Named(IReadOnlyList<(string Key, string Value)> keys) =>
        keys.ToDictionary(entry => entry.Key, entry => entry.Value, StringComparer.Ordinal);
}
