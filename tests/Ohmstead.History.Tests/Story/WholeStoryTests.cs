using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Story;

/// <summary>The whole story of one new board, from taking in to proof, through the commands alone: each commit holds the facts of its step
/// and nothing else.</summary>
public sealed class WholeStoryTests
{
    [Fact]
    public void A_board_is_taken_in_made_safe_measured_mended_and_proved_and_every_commit_says_only_what_was_done()
    {
        using var story = ScratchRepository.Empty();
        var start = Run.Of("start", "collection", story.Root, "--name", "Saltmarsh Point weather collection", "--as-of", "2026-03-02");
        Assert.Equal((0, string.Empty), (start.Exit, start.Error));
        Committed(story, "start");

        Step(
            story,
            "2026-03-02",
            ["start", "board", "SP-0021", "--name", "Rain gauge clock", "--from", "lookout hut", "--complaint", "stops at night"]
        );
        Step(
            story,
            "2026-03-02",
            ["add", "hazard", "SP-0021", "charged capacitor", "at=C1", "63V", "2200uF", "10kohm"],
            "- { hazard: charged capacitor, at: C1, voltage: 63 V, capacitance: 2200 µF, bleed: 10 kΩ }"
        );
        Step(
            story,
            "2026-03-02",
            ["add", "part", "SP-0021", "C1", "aluminium electrolytic", "2200uF", "20%", "35V", "85C", "role=reservoir"],
            "- { ref: C1, kind: aluminium electrolytic, role: reservoir, capacitance: 2200 µF, tolerance: 20 %, rated_voltage: 35 V, "
                + "temperature: 85 °C }"
        );
        Step(
            story,
            "2026-03-02",
            ["add", "part", "SP-0021", "R1", "carbon film resistor", "4.7kohm", "5%"],
            "- { ref: R1, kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: 5 % }"
        );
        Step(
            story,
            "2026-03-02",
            ["add", "point", "SP-0021", "+12V", "12V", "5%", "ripple_limit=20mV"],
            "- { point: +12V, nominal: 12 V, tolerance: 5 %, ripple_limit: 20 mV }"
        );
        Assert.Contains("not looked at yet", Typed(story, "2026-03-02", "why", "SP-0021").Out, StringComparison.Ordinal);

        Step(
            story,
            "2026-03-03",
            ["work", "SP-0021", "made safe", "C1", "--hazard", "charged capacitor", "--with", "10 kΩ on an insulated probe", "--by", "RK"],
            "- { part: C1, did: made safe, with: 10 kΩ on an insulated probe, hazard: charged capacitor }"
        );
        Step(
            story,
            "2026-03-03",
            ["found", "SP-0021", "C1", "vent open, crust at the foot", "major", "--by", "RK"],
            "- { at: C1, what: \"vent open, crust at the foot\", severity: major }"
        );
        Step(
            story,
            "2026-03-03",
            ["work", "SP-0021", "washed", "--with", "isopropanol", "--dry", "24 h", "--by", "RK"],
            "- { did: washed, with: isopropanol, dry: 24 h }"
        );
        var worn = Step(
            story,
            "2026-03-05",
            ["enter", "SP-0021", "C1", "1210uF", "1.9ohm", "120Hz", "--lifted", "--by", "RK"],
            "- { part: C1, circuit: out, frequency: 120 Hz, capacitance: 1210 µF, esr: 1.9 Ω }"
        );
        Assert.Contains(
            "capacitance 1210 µF against 1760 µF … 2640 µF (delivery limit, the marking): outside",
            worn.Out,
            StringComparison.Ordinal
        );
        Step(
            story,
            "2026-03-05",
            ["enter", "SP-0021", "R1", "4.81kohm", "--lifted", "--by", "RK"],
            "- { part: R1, circuit: out, resistance: 4.81 kΩ }"
        );
        Step(
            story,
            "2026-03-05",
            ["decide", "SP-0021", "C1", "replace", "half of it is gone", "--by", "RK"],
            "- { part: C1, decision: replace, because: half of it is gone }"
        );

        Assert.Contains(
            "1,aluminium electrolytic 2200 µF 20 % 35 V 85 °C,1,0,0,,,SP-0021 C1\r\n",
            Run.Of("buy", story.Root, "--form", "csv", "--as-of", "2026-03-05").Out,
            StringComparison.Ordinal
        );
        Step(
            story,
            "2026-03-05",
            ["order", "PO-01", "placed", "2200 µF 35 V, two", "--from", "Lantern Yard Spares"],
            "- { order: PO-01, placed: 2026-03-05, from: Lantern Yard Spares, for: \"2200 µF 35 V, two\" }"
        );
        Step(
            story,
            "2026-03-05",
            ["wait", "SP-0021", "2200 µF 35 V", "--order", "PO-01", "--blocks", "everything with power"],
            "- { since: 2026-03-05, for: 2200 µF 35 V, order: PO-01, blocks: everything with power }"
        );
        Changed(story, "2026-03-16", ["order", "PO-01", "received"], "received: 2026-03-16 }");
        Step(
            story,
            "2026-03-16",
            [
                "lot",
                "L-001",
                "aluminium electrolytic",
                "2200uF",
                "20%",
                "35V",
                "105C",
                "date_code=2541",
                "polarity=polarised",
                "--quantity",
                "2",
                "--order",
                "PO-01",
            ],
            "quantity: 2, order: PO-01"
        );
        Step(
            story,
            "2026-03-16",
            ["incoming", "L-001", "2231uF", "38mohm", "120Hz", "--by", "RK"],
            "- { lot: L-001, state: new, frequency: 120 Hz, capacitance: 2231 µF, esr: 38 mΩ }"
        );
        Changed(story, "2026-03-16", ["wait", "SP-0021", "2200 µF 35 V", "--over"], "until: 2026-03-16 }");
        Assert.Contains("L-001, 2 left", Typed(story, "2026-03-16", "fit", "SP-0021", "C1").Out, StringComparison.Ordinal);

        Step(
            story,
            "2026-03-17",
            [
                "work",
                "SP-0021",
                "replaced",
                "C1",
                "--lot",
                "L-001",
                "--polarity",
                "schematic",
                "--polarity",
                "photograph before removal",
                "--kept",
                "bag 1",
                "--by",
                "RK",
            ],
            "did: replaced, lot: L-001"
        );
        Step(
            story,
            "2026-03-17",
            ["enter", "SP-0021", "C1", "2228uF", "40mohm", "120Hz", "--lifted", "--state", "as left", "--by", "RK"],
            "state: as left"
        );
        Step(
            story,
            "2026-03-18",
            ["enter", "SP-0021", "+12V", "12.08V", "ripple=6mV", "--by", "RK"],
            "- { point: +12V, voltage: 12.08 V, ripple: 6 mV }"
        );

        Assert.Contains("fit to run", Typed(story, "2026-03-18", "why", "SP-0021").Out, StringComparison.Ordinal);
        var check = Run.Of("check", story.Root, "--as-of", "2026-03-18");
        Assert.Equal(0, check.Exit);
        Assert.Contains(
            "L-001,aluminium electrolytic 2200 µF 20 % 35 V 105 °C,2,1,0,1,",
            Run.Of("drawer", story.Root, "--form", "csv", "--as-of", "2026-03-18").Out,
            StringComparison.Ordinal
        );
        Assert.Equal(string.Empty, story.Git("status", "--porcelain"));
    }

    // One entry is one commit: lines come, none goes.
    private static Run Step(ScratchRepository story, string day, string[] words, string? entry = null)
    {
        var run = Done(story, day, words);
        var (added, removed) = Committed(story, string.Join(' ', words));
        Assert.Equal([], removed.Where(line => line.Trim() != "lots: []"));
        Assert.NotEmpty(added);
        Assert.True(
            entry is null || string.Join(' ', added.Select(line => line.Trim())).Contains(entry, StringComparison.Ordinal),
            $"{entry} is not in:\n{string.Join('\n', added)}"
        );
        Assert.True(added.Count <= 6 || entry is null, string.Join('\n', added));
        return run;
    }

    // A fact that changed: its line goes and comes again with one value more.
    private static void Changed(ScratchRepository story, string day, string[] words, string end)
    {
        Done(story, day, words);
        var (added, removed) = Committed(story, string.Join(' ', words));
        var (before, after) = (Assert.Single(removed), string.Join(' ', added.Select(line => line.Trim())));
        Assert.StartsWith(before.Trim().TrimEnd(' ', '}'), after, StringComparison.Ordinal);
        Assert.EndsWith(end, after, StringComparison.Ordinal);
    }

    private static Run Done(ScratchRepository story, string day, string[] words)
    {
        var run = Typed(story, day, words);
        Assert.True(run is { Exit: 0, Error: "" }, $"{string.Join(' ', words)}\n{run.Out}{run.Error}");
        return run;
    }

    private static Run Typed(ScratchRepository story, string day, params string[] words) =>
        Run.Of([.. words, "--in", story.Root, "--as-of", day]);

    // What the commit changed: added lines, and removed ones.
    private static (IReadOnlyList<string> Added, IReadOnlyList<string> Removed) Committed(ScratchRepository story, string message)
    {
        story.Commit(message);
        var lines = story.Git("show", "--unified=0", "--format=", "--no-color").Split('\n');
        return ([.. Of('+', lines)], [.. Of('-', lines)]);
    }

    private static IEnumerable<string> Of(char sign, string[] lines) =>
        lines
            .Where(line =>
                line.StartsWith(sign)
                && !line.StartsWith("+++", StringComparison.Ordinal)
                && !line.StartsWith("---", StringComparison.Ordinal)
            )
            .Select(line => line[1..]);
}
