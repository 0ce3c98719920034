using Ohmstead.Assessment.Workshops;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>What a page of a board costs that is twice as large, in bytes that are asked for and never in time.</summary>
public sealed class GrownPageTests
{
    [Fact]
    public void Twice_as_many_readings_alike_in_all_cost_twice_as_much_to_show()
    {
        // The room of the largest page is taken first: the pool keeps it.
        _ = Cost(2_000);
        var (once, twice, fourfold) = (Cost(500), Cost(1_000), Cost(2_000));
        Assert.True(fourfold - twice <= 2.3 * (twice - once), $"{once}, {twice}, {fourfold}");
    }

    private static long Cost(int readings)
    {
        var entries = string.Concat(Enumerable.Repeat("      - { part: R1, circuit: out, resistance: 47 kΩ }\n", readings));
        var board = Judged.Board(
            $"---\nboard: X-1\ntitle: x\nparts:\n  - {{ ref: R1, kind: carbon film resistor, resistance: 47 kΩ }}\nbench:\n  - date: "
                + $"2026-03-14\n    readings:\n{entries}---\n"
        );
        var before = GC.GetAllocatedBytesForCurrentThread();
        using var buffer = new PageBuffer();
        BoardPage.Write(
            buffer,
            new ReportContext(Workshop.Empty, new HashSet<string>(StringComparer.Ordinal), Judged.Today, "0.0.0"),
            board
        );
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
