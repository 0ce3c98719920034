using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.History;

/// <summary>What is kept in mind of one state of a board is said of another one only where nothing differs that a verdict depends
/// on.</summary>
public sealed class VerdictMemoTests
{
    private const string Rules = "collection: Saltmarsh Point weather collection\ndecision: guarded\n";

    private const string Instruments = """
        instruments:
          - id: bridge-2
            what: component bridge
            calibrations:
              - { date: 2026-01-12 }
            accuracy:
              - { measures: capacitance, error: 0.5 %, digits: 5, step: 0.1 µF, up_to: 10000 µF }
              - { measures: esr, error: 1 %, fixed: 10 mΩ }
          - id: bridge-3
            what: component bridge
            accuracy:
              - { measures: capacitance, error: 0.7 %, up_to: 10000 µF }
              - { measures: esr, error: 2 %, fixed: 10 mΩ }
          - id: ohms-1
            what: insulation meter with the ends of its ranges
            accuracy:
              - { measures: resistance, error: 1 %, up_to: 2 MΩ }
              - { measures: resistance, error: 2 %, certificate: 1 %, up_to: 20 MΩ }
              - { measures: leakage, error: 3 %, up_to: 200 µA }

        """;

    private const string Design = """
        ---
        design: tide-logger
        title: Tide-gauge logger
        parts:
          - { ref: C9, kind: aluminium electrolytic, capacitance: 100 µF, tolerance: 20 %, rated_voltage: 25 V, esr_limit: 0.5 Ω }
        ---

        """;

    private const string Board = """
        ---
        board: SP-0001
        title: Tide-gauge logger
        design: tide-logger
        parts:
          - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }
          - { ref: R1, kind: carbon film resistor, resistance: 1.5 MΩ, tolerance: 5 % }
          - { ref: R2, kind: carbon film resistor, resistance: 22 MΩ, tolerance: 5 % }
          - { ref: Y1, kind: crystal, frequency: 4 MHz }
          - { ref: D1, kind: zener diode, type: 1N4733A, rated_voltage: 5.1 V }
        bench:
          - date: 2026-03-14
            by: AM
            temperature: 20 °C
            instrument: bridge-2
            readings:
              - { part: C1, capacitance: 391 µF, frequency: 120 Hz, circuit: out, esr: 1.41 Ω }
              - { part: C1, leakage: 190 µA, after: 60 s, at_voltage: 25 V, circuit: out, instrument: ohms-1 }
              - { part: R1, resistance: 1.52 MΩ, range: 2 MΩ, circuit: out, instrument: ohms-1 }
              - { part: R2, resistance: 22 MΩ, circuit: out, instrument: ohms-1 }
              - { part: Y1, frequency: 4.001 MHz, circuit: out }
              - { part: D1, voltage: 5.1 V, current: 10 mA, circuit: out }
              - { part: C9, capacitance: 99 µF, esr: 0.4 Ω, frequency: 100 kHz, circuit: out, state: again }
        ---

        """;

    [Theory]
    [InlineData("capacitance: 391 µF", "capacitance: 392 µF")]
    [InlineData("capacitance: 391 µF", "capacitance: 391.0 µF")]
    [InlineData(", esr: 1.41 Ω", "")]
    [InlineData(", frequency: 120 Hz", "")]
    [InlineData("frequency: 120 Hz", "frequency: 50 Hz")]
    [InlineData("circuit: out, esr: 1.41 Ω", "circuit: in, esr: 1.41 Ω")]
    [InlineData("esr: 1.41 Ω", "esr: 1.41 Ω, temperature: 2 °C")]
    [InlineData("temperature: 20 °C", "temperature: 2 °C")]
    [InlineData("after: 60 s", "after: 5 s")]
    [InlineData("range: 2 MΩ", "range: 20 MΩ")]
    [InlineData("frequency: 4.001 MHz", "frequency: 4.002 MHz")]
    [InlineData("frequency: 4.001 MHz", "frequency: 4001 kHz")]
    [InlineData(", current: 10 mA", "")]
    [InlineData("esr: 1.41 Ω", "esr: 1.41 Ω, state: new")]
    [InlineData("    instrument: bridge-2", "    instrument: bridge-3")]
    [InlineData("error: 0.5 %, digits: 5", "error: 5 %, digits: 5")]
    [InlineData("error: 0.5 %, digits: 5", "error: 0.5 %, digits: 6")]
    [InlineData("step: 0.1 µF", "step: 1 µF")]
    [InlineData("error: 1 %, fixed: 10 mΩ", "error: 1 %, fixed: 20 mΩ")]
    [InlineData("up_to: 10000 µF }\n      - { measures: esr, error: 1 %", "up_to: 10 µF }\n      - { measures: esr, error: 1 %")]
    [InlineData("error: 1 %, up_to: 2 MΩ", "error: 1 %, certificate: 1 %, up_to: 2 MΩ")]
    [InlineData("- { measures: esr, error: 1 %, fixed: 10 mΩ }", "- { measures: resistance, error: 1 %, fixed: 10 mΩ }")]
    [InlineData("      - { measures: esr, error: 1 %, fixed: 10 mΩ }\n", "")]
    [InlineData("ohms-1", "ohms-9")]
    [InlineData("date: 2026-01-12", "date: 2019-01-12")]
    [InlineData("470 µF, tolerance: 20 %", "470 µF, tolerance: 10 %")]
    [InlineData("kind: carbon film resistor", "kind: carbon composition resistor")]
    [InlineData("decision: guarded", "decision: simple")]
    [InlineData("    readings:\n", "    note: a line more\n    readings:\n")]
    public void Where_one_thing_differs_a_reading_is_judged_anew(string from, string to)
    {
        var was = Files();
        var now = was.Select(file => file with { Text = file.Text.Replace(from, to, StringComparison.Ordinal) }).ToArray();
        Assert.NotEqual(Told(was, new()), Told(now, new()));

        var memo = new JudgeMemo { Verdicts = new() };
        Told(was, memo);

        Assert.Equal(Told(now, new()), Told(now, memo));
    }

    [Fact]
    public void Where_a_limit_comes_from_is_said_of_each_state()
    {
        const string part =
            "  - { ref: C9, kind: aluminium electrolytic, capacitance: 100 µF, tolerance: 20 %, rated_voltage: 25 V, esr_limit: 0.5 Ω }\n";
        var was = Files();
        var now = was.ToArray();
        // In the design it is another part, and in the board there is one line more, of which the story has none.
        now[2] = now[2] with { Text = now[2].Text.Replace("C9", "C8", StringComparison.Ordinal) };
        now[3] = now[3] with { Text = now[3].Text.Replace("    by: AM\n", "", StringComparison.Ordinal) };
        now[3] = now[3] with { Text = now[3].Text.Replace("bench:\n", part + "bench:\n", StringComparison.Ordinal) };
        Assert.NotEqual(Told(was, new()), Told(now, new()));

        var memo = new JudgeMemo { Verdicts = new() };
        Told(was, memo);

        Assert.Equal(Told(now, new()), Told(now, memo));
    }

    [Fact]
    public void What_is_the_same_is_judged_once()
    {
        var memo = new JudgeMemo { Verdicts = new() };
        var now = Files();
        now[3] = now[3] with { Text = now[3].Text.Replace("391 µF", "392 µF", StringComparison.Ordinal) };
        var (first, second) = (Assess(Files(), memo).Readings, Assess(now, memo).Readings);

        Assert.Equal([false, true, true, true, true, true, true], first.Zip(second, (one, other) => one.Verdicts == other.Verdicts));

        memo.Begin();
        Assert.All(first.Zip(Assess(Files(), memo).Readings), pair => Assert.False(pair.First.Verdicts == pair.Second.Verdicts));
    }

    [Fact]
    public void A_third_state_is_found_as_well()
    {
        var memo = new JudgeMemo { Verdicts = new() };
        var first = Assess(Files(), memo).Readings;
        Assess(Files(), memo);

        Assert.All(first.Zip(Assess(Files(), memo).Readings), pair => Assert.True(pair.First.Verdicts == pair.Second.Verdicts));
    }

    // Each of a hundred thousand readings held against all before it would take minutes.
    [Fact]
    public void A_reading_is_held_against_one_other_at_most()
    {
        var memo = new JudgeMemo { Verdicts = new() };
        var first = Assess(Files(), memo).Readings;
        Assert.Equal(0, memo.Verdicts.Compared);

        Assess(Files(), memo);
        Assert.Equal(first.Length, memo.Verdicts.Compared);
    }

    private static CaseBlock[] Files() =>
        [
            new("yaml", "collection.yaml", 0, Rules),
            new("yaml", "instruments.yaml", 0, Instruments),
            new("markdown", "designs/tide-logger.md", 0, Design),
            new("markdown", "boards/SP-0001.md", 0, Board),
        ];

    private static BoardAssessment Assess(IReadOnlyList<CaseBlock> files, JudgeMemo memo)
    {
        var collection = new SmallCollection(files);
        Assert.Empty(collection.ReadingFindings.Select(finding => $"{finding.Place}: {finding.Message}"));
        return new Assessor(collection.Workshop, memo).Assess(Assert.Single(collection.Boards).Board);
    }

    private static string Told(IReadOnlyList<CaseBlock> files, JudgeMemo memo) =>
        string.Join('\n', Assess(files, memo).Readings.SelectMany(reading => reading.Verdicts).Select(Told));

    // All that a page, a sheet or a program is told of it.
    private static string Told(Verdict verdict) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"""
            {verdict.Reading.Spot} {verdict.Why.Text} | {verdict.Reason?.Text} | {verdict.Uncertainty} | {verdict.Rule?.Name}
            {string.Join("; ", verdict.Remarks.Select(remark => remark.Text))}
            {string.Join("; ", verdict.Others.Select(other => $"{other.Limit.InWords.Text} {other.Limit.Origin.Text} {other.Inside}"))}
            """
        );
}
