using Ohmstead.Tests.Support;

namespace Ohmstead.Published.Tests;

/// <summary>A day's work entered with either program: the same is told while it is typed, and every file is the same to the byte
/// afterwards.</summary>
public sealed class EntryTests(PublishedProgram published)
{
    private const string Day = "2026-11-25";

    [Fact]
    public async Task A_walk_over_a_board_with_the_keyboard()
    {
        const string typed =
            "always 120Hz\nC3 46.1 0.9\n47.6 0.89\nC1 100.2\nundo\nC3 46.1nF\nn\n47,6\nfound J1 \"green: \\\"like copper\\\"\" "
            + "minor\n+80V 81.2 800\nwait \"a pen, two belts\"\nquit\n";
        var outcome = await SideBySide.AsOneAsync(
            published,
            "printf '%s' \"$typed\" | $ohmstead bench SP-0007 --by RK --instrument bridge-1 --lifted",
            typed: typed
        );
        Assert.Equal(0, outcome.Run.Exit);
        var record = outcome.Text("boards/SP-0007.md");
        Assert.Contains($"  - date: {Day}\n    by: RK\n    instrument: bridge-1\n", record, StringComparison.Ordinal);
        Assert.Contains(
            "- { part: C3, circuit: out, frequency: 120 Hz, capacitance: 46.1 µF, esr: 0.9 Ω }",
            record,
            StringComparison.Ordinal
        );
        Assert.Contains("- { point: +80V, ", record, StringComparison.Ordinal);
        Assert.DoesNotContain("46.1 nF", record, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_collection_that_begins_gets_a_design_a_parts_list_and_a_board()
    {
        var outcome = await SideBySide.AsOneAsync(
            published,
            """
            set -e
            $ohmstead start collection lighthouse --name "Fog signal electronics" --board FS-001
            cd lighthouse
            $ohmstead start parts ../list.csv --board FS-001 --kind "C=polyester film" --kind "R=metal film resistor"
            $ohmstead start design horn-timer --from FS-001 --name "Horn timer"
            $ohmstead start board FS-002 --design horn-timer --serial 0731 --made 1976
            $ohmstead add part FS-001 C40 "aluminium electrolytic" 470uF 20% 35V 105C role=reservoir
            $ohmstead add point FS-001 +15V 15V 5% ripple_limit=10mV
            $ohmstead add hazard FS-001 "charged capacitor" at=C40 340V 470uF 220kohm
            $ohmstead enter FS-001 C31 100.3nF 1kHz --lifted --by TS
            $ohmstead tidy .
            $ohmstead check . --thorough
            """,
            copy => copy.Write("list.csv", "Designator\tVal\n\"C31, C33-C34\"\t100n 63V\nR31\t10k 1%\nU31\t7805\n")
        );
        Assert.Equal(0, outcome.Run.Exit);
        Assert.Contains(
            "{ ref: C34, kind: polyester film, capacitance: 100 nF, rated_voltage: 63 V }",
            outcome.Text("lighthouse/designs/horn-timer.md"),
            StringComparison.Ordinal
        );
        Assert.Contains("design: horn-timer\n", outcome.Text("lighthouse/boards/FS-002.md"), StringComparison.Ordinal);
        Assert.Contains(
            "{ part: C31, circuit: out, frequency: 1 kHz, capacitance: 100.3 nF }",
            outcome.Text("lighthouse/boards/FS-001.md"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_parcel_that_comes_is_read_and_fitted()
    {
        var outcome = await SideBySide.AsOneAsync(
            published,
            """
            set -e
            $ohmstead order PO-14 placed "47 µF 200 V, ten" --from "Two Weirs Electronics"
            $ohmstead order PO-14 received
            $ohmstead lot L-031 "aluminium electrolytic" 47uF 20% 200V 105C date_code=2610 --quantity 10 --order PO-14
            $ohmstead incoming L-031 47.4uF 112mohm 120Hz --by TS --instrument bridge-1
            $ohmstead work SP-0007 replaced C3 --lot L-031 --polarity schematic --kept "bag 7" --by RK
            $ohmstead decide SP-0007 BR1 watch "plates clean # still" --by RK
            $ohmstead tidy . --verdicts
            $ohmstead check .
            """
        );
        Assert.Equal(0, outcome.Run.Exit);
        Assert.Contains(
            "{ order: PO-14, placed: 2026-11-25, from: Two Weirs Electronics, for: \"47 µF 200 V, ten\", received: 2026-11-25 }",
            outcome.Text("stock.yaml"),
            StringComparison.Ordinal
        );
        Assert.Contains("did: replaced, lot: L-031, polarity:", outcome.Text("boards/SP-0007.md"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_record_out_of_order_is_brought_into_the_one_layout()
    {
        var outcome = await SideBySide.AsOneAsync(published, "$ohmstead tidy . --diff; $ohmstead tidy .", copy =>
            copy.Write(
                "boards/SP-0004.md",
                copy.Read("boards/SP-0004.md").Replace(", capacitance:", " ,   capacitance:", StringComparison.Ordinal)
            )
        );
        Assert.EndsWith("1 tidied\n", outcome.Run.Out, StringComparison.Ordinal);
        Assert.Equal(
            await File.ReadAllTextAsync(Path.Combine(CollectionCopy.Untouched, "boards/SP-0004.md"), TestContext.Current.CancellationToken),
            outcome.Text("boards/SP-0004.md")
        );
    }
}
