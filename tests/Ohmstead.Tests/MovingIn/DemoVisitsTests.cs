using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;
using Ohmstead.Tests.Support;
using Ohmstead.Yaml;

namespace Ohmstead.Tests.MovingIn;

/// <summary>Entries of any day put into the records of the demo: what was written stands there as it was, byte for byte.</summary>
public sealed class DemoVisitsTests
{
    private const string Reading = "{ part: C1, circuit: out, esr: 1.4 Ω }";
    private const string Work = "{ did: cleaned, note: from the old book }";

    /// <summary>The boards of the demo.</summary>
    public static TheoryData<string> Boards =>
        [
            .. Directory
                .GetFiles(Path.Combine(CollectionCopy.Untouched, "boards"), "*.md")
                .Select(Path.GetFileName)
                .OfType<string>()
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Boards))]
    public void Each_day_of_a_board_takes_entries_and_every_other_byte_stays(string board)
    {
        var text = File.ReadAllText(Path.Combine(CollectionCopy.Untouched, "boards", board));
        var editor = RecordEditor.Open(board, text, FileForm.Markdown, new YamlNodeReader(), out _)!;
        var bench = new BenchSplicer(editor);
        // A board that was never looked at has no list of visits yet.
        var first = bench.Visits.Count == 0 ? 1 : 0;
        string[] days = [.. bench.Visits.Select(visit => visit.Values["date"]), "1990-01-01", "2199-12-31"];
        foreach (var day in days.Distinct(StringComparer.Ordinal))
        {
            Holds(text, bench.Put([Own(day)]).Text, 5 + first);
        }

        // All at once, and into each visit that is there.
        Holds(
            text,
            bench.Put([.. days.Distinct(StringComparer.Ordinal).Select(Own)]).Text,
            (5 * days.Distinct(StringComparer.Ordinal).Count()) + first
        );
        foreach (var visit in bench.Visits)
        {
            var lists = (bench.Has(visit.Index, "readings") ? 0 : 1) + (bench.Has(visit.Index, "work") ? 0 : 1);
            var joined = bench.Put([new(visit.Values["date"], visit.Index, [], [("work", Work), ("readings", Reading)])]);
            Holds(text, joined.Text, 2 + lists);
        }
    }

    private static VisitEntries Own(string day) => new(day, null, [("date", day)], [("readings", Reading), ("work", Work)]);

    // So many lines more, and without them the text that was there.
    private static void Holds(string before, string? after, int more)
    {
        Assert.NotNull(after);
        var (old, now) = (before.Split('\n'), after.Split('\n'));
        Assert.Equal(old.Length + more, now.Length);
        var at = 0;
        foreach (var line in now)
        {
            at += at < old.Length && line == old[at] ? 1 : 0;
        }

        Assert.Equal(old.Length, at);
    }
}
