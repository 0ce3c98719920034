using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>A meter that is read beyond its range, or long after its calibration, does not vouch for what it shows: a guarded rule does not
/// decide then.</summary>
public sealed class MeterDoubtTests
{
    private const string Meters = """
        instruments:
          - id: bridge-2
            what: component bridge to 1000 µF
            calibrations:
              - { date: 2015-03-02, valid: 12 months }
            accuracy:
              - { measures: capacitance, error: 0.5 %, digits: 5, step: 0.1 µF, up_to: 1000 µF }
              - { measures: esr, error: 2 %, up_to: 20 Ω }
        """;

    private const string Reservoir = "kind: aluminium electrolytic, capacitance: 2200 µF, tolerance: 20 %, rated_voltage: 25 V";
    private const string Filter = "kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V";

    // 2200 µF lies beyond 1000 µF: its limits of 1760 to 2640 µF as well. An ESR of 30 ohm lies beyond 20, and 20 beyond the 0.7901 ohm
    // that 470 µF may have.
    [Theory]
    [InlineData(Reservoir, "capacitance: 2200 µF", VerdictOutcome.Undecided)]
    [InlineData(Reservoir, "capacitance: 1700 µF", VerdictOutcome.Undecided)]
    [InlineData(Reservoir, "capacitance: 900 µF", VerdictOutcome.Outside)]
    [InlineData(Filter, "esr: 30 Ω", VerdictOutcome.Outside)]
    public void Beyond_its_range_a_meter_proves_only_that_a_part_is_past_a_limit_within_it(
        string part,
        string reading,
        VerdictOutcome outcome
    ) => Assert.Equal(outcome, Read(part, reading, "2015-06-01").Outcome);

    [Fact]
    public void Why_is_told() =>
        Assert.Contains(
            "bridge-2 is good for capacitance up to 1000 µF, and this lies beyond",
            Read(Reservoir, "capacitance: 2200 µF", "2015-06-01").Why,
            StringComparison.Ordinal
        );

    // Calibrated on 2015-03-02 for 12 months: half a year over it is warned of, more than another twelve months over it does not vouch. U
    // of 470 µF is 2 x 2.85 / sqrt(3) = 3.29 µF.
    [Theory]
    [InlineData("2016-09-01", "470 µF", VerdictOutcome.Inside)]
    [InlineData("2017-03-02", "470 µF", VerdictOutcome.Inside)]
    [InlineData("2017-03-04", "470 µF", VerdictOutcome.Undecided)]
    [InlineData("2017-03-04", "360 µF", VerdictOutcome.Undecided)]
    [InlineData("2017-03-04", "47 µF", VerdictOutcome.Outside)]
    public void Long_after_its_calibration_a_meter_decides_only_what_no_drift_explains(
        string day,
        string reading,
        VerdictOutcome outcome
    ) => Assert.Equal(outcome, Read(Filter, $"capacitance: {reading}", day).Outcome);

    // What one meter may be trusted with on one day says nothing of another day, nor of another meter.
    [Fact]
    public void Each_day_and_each_meter_of_one_board_is_asked_for_itself()
    {
        const string Board = """
            ---
            board: SP-0001
            title: Tide-gauge logger
            parts:
              - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }
            bench:
              - date: 2016-09-01
                readings:
                  - { part: C1, circuit: out, frequency: 120 Hz, instrument: bridge-2, capacitance: 470 µF }
              - date: 2017-03-04
                readings:
                  - { part: C1, circuit: out, frequency: 120 Hz, instrument: bridge-2, capacitance: 470 µF }
                  - { part: C1, circuit: out, frequency: 120 Hz, instrument: bridge-3, capacitance: 470 µF }
            ---

            """;
        const string Newer = """

              - id: bridge-3
                what: component bridge
                calibrations:
                  - { date: 2017-03-02, valid: 12 months }
                accuracy:
                  - { measures: capacitance, error: 0.5 %, digits: 5, step: 0.1 µF, up_to: 1000 µF }

            """;
        var collection = new SmallCollection([
            new("markdown", "boards/SP-0001.md", 0, Board),
            new("yaml", "instruments.yaml", 0, Meters + Newer),
            new("yaml", "collection.yaml", 0, "collection: Saltmarsh Point weather collection\ndecision: guarded\n"),
        ]);
        Assert.Empty(collection.ReadingFindings.Select(finding => finding.Message));
        Assert.Equal(
            [VerdictOutcome.Inside, VerdictOutcome.Undecided, VerdictOutcome.Inside],
            Assert.Single(collection.Boards).Readings.Select(reading => Assert.Single(reading.Verdicts).Outcome)
        );
    }

    // Under the simple rule the value alone decides; that the meter does not vouch is told beside it.
    [Fact]
    public void Under_the_simple_rule_it_is_told_and_decides_nothing()
    {
        var verdict = Read(Reservoir, "capacitance: 2200 µF", "2015-06-01", "simple");
        Assert.Equal(VerdictOutcome.Inside, verdict.Outcome);
        Assert.Contains(verdict.Remarks, remark => remark.Text.Contains("this lies beyond", StringComparison.Ordinal));
    }

    private static Verdict Read(string part, string reading, string day, string rule = "guarded")
    {
        var collection = new SmallCollection([
            new(
                "markdown",
                "boards/SP-0001.md",
                0,
                $"---\nboard: SP-0001\ntitle: Tide-gauge logger\nparts:\n  - {{ ref: C1, {part} }}\nbench:\n  - date: {day}\n    "
                    + $"readings:\n      - {{ part: C1, circuit: out, frequency: 120 Hz, instrument: bridge-2, {reading} }}\n---\n"
            ),
            new("yaml", "instruments.yaml", 0, Meters + "\n"),
            new("yaml", "collection.yaml", 0, $"collection: Saltmarsh Point weather collection\ndecision: {rule}\n"),
        ]);
        Assert.Empty(collection.ReadingFindings.Select(finding => finding.Message));
        return Assert.Single(Assert.Single(Assert.Single(collection.Boards).Readings).Verdicts);
    }
}
