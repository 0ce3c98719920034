using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Drifts;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Tests.Boards;

/// <summary>Where readings of a part are going.</summary>
public sealed class BoardDriftsTests
{
    private const string Reservoir =
        "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 2200 µF, tolerance: ±20 %, rated_voltage: 25 V }\n";

    // 2000, 1900, 1800 µF, 365 days apart: 100 µF in 365 days, no scatter at all. 1760 µF (2200 less 20 %) is 40 µF further on:
    // 146 days after 2024-01-01, which is 2024-05-26.
    [Fact]
    public void A_falling_capacitance_without_scatter_meets_its_lower_limit_where_the_line_does()
    {
        var drift = Only(
            Reservoir
                + Bench(
                    ("2022-01-01", "capacitance: 2000 µF"),
                    ("2023-01-01", "capacitance: 1900 µF"),
                    ("2024-01-01", "capacitance: 1800 µF")
                )
        );
        Assert.True(drift is { IsRising: false, IsTold: true, Readings: 3 });
        Assert.Equal(0.00176m, drift.Limit!.Value.Value);
        Assert.InRange(drift.MeetsLimit.Value, new DateOnly(2024, 5, 25), new DateOnly(2024, 5, 26));
        Assert.Equal(new DateOnly(2024, 5, 26), drift.LineMeetsLimit);
    }

    // Invented ESR readings of five years against 0.42 ohm; R 4.2 gives 6.942 years for the prediction and 9.043 for the line. Years of
    // 365 and 366 days move that by a day or two.
    [Fact]
    public void A_rising_esr_may_meet_its_upper_limit_two_years_before_the_line_does()
    {
        var drift = Only(
            "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V, esr_limit: 420 mΩ }\n"
                + Bench(
                    ("2018-01-01", "esr: 210 mΩ"),
                    ("2019-01-01", "esr: 240 mΩ"),
                    ("2020-01-01", "esr: 250 mΩ"),
                    ("2021-01-01", "esr: 290 mΩ"),
                    ("2022-01-01", "esr: 300 mΩ")
                )
        );
        Assert.Equal(Measured.Esr, drift.Measured);
        Assert.InRange(drift.MeetsLimit.Value, new DateOnly(2024, 12, 7), new DateOnly(2024, 12, 13));
        Assert.InRange(drift.LineMeetsLimit!.Value, new DateOnly(2027, 1, 13), new DateOnly(2027, 1, 19));
        Assert.EndsWith("; estimate, not a promise", DriftWords.Sentence(drift), StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_that_only_scatter_foretell_nothing()
    {
        var drift = Only(
            Reservoir
                + Bench(
                    ("2022-01-01", "capacitance: 1822 µF"),
                    ("2023-01-01", "capacitance: 1805 µF"),
                    ("2024-01-01", "capacitance: 1819 µF")
                )
        );
        Assert.False(drift.IsTold);
        Assert.Null(drift.LineMeetsLimit);
        Assert.Equal("no drift can be told from the scatter of the readings", drift.MeetsLimit.Refusal);
    }

    // 2210, 2190, 2170 µF: 410 µF to go at 20 µF a year takes 20 years, and two years of readings reach four years ahead.
    [Fact]
    public void A_limit_further_ahead_than_the_readings_reach_has_no_day()
    {
        var drift = Only(
            Reservoir
                + Bench(
                    ("2022-01-01", "capacitance: 2210 µF"),
                    ("2023-01-01", "capacitance: 2190 µF"),
                    ("2024-01-01", "capacitance: 2170 µF")
                )
        );
        Assert.Equal("does not meet 1760 µF before 2027-12-31; further ahead these readings say nothing", drift.MeetsLimit.Refusal);
    }

    [Theory]
    [InlineData("capacitance: 1900 µF, frequency: 1 kHz")]
    [InlineData("capacitance: 1900 µF, instrument: bridge-2")]
    [InlineData("capacitance: 1900 µF, temperature: 31 °C")]
    [InlineData("capacitance: 1900 µF, circuit: in")]
    [InlineData("esr: 40 mΩ")]
    public void A_reading_taken_in_another_way_is_none_of_the_three(string other)
    {
        var readings =
            "bench:\n"
            + Visit("2022-01-01", "frequency: 120 Hz, temperature: 20 °C, circuit: out, capacitance: 2000 µF")
            + Visit("2023-01-01", With(other))
            + Visit("2024-01-01", "frequency: 120 Hz, temperature: 20 °C, circuit: out, capacitance: 1800 µF");
        Assert.Empty(BoardDrifts.Find(Worked.Board(Reservoir + readings.TrimEnd())));
    }

    [Fact]
    public void A_new_part_has_no_drift_of_the_old_one()
    {
        var record =
            Reservoir
            + Bench(("2022-01-01", "capacitance: 2000 µF"), ("2023-01-01", "capacitance: 1900 µF"))
            + "\n    work:\n      - { part: C1, did: replaced }\n"
            + Visit("2024-01-01", "capacitance: 2210 µF").TrimEnd();
        Assert.Empty(BoardDrifts.Find(Worked.Board(record)));
    }

    [Fact]
    public void Three_readings_of_one_day_are_no_trend() =>
        Assert.Empty(
            BoardDrifts.Find(
                Worked.Board(
                    Reservoir
                        + Bench(
                            ("2022-01-01", "capacitance: 2000 µF"),
                            ("2022-01-01", "capacitance: 1900 µF"),
                            ("2022-01-01", "capacitance: 1800 µF")
                        )
                )
            )
        );

    [Fact]
    public void What_is_not_written_about_the_readings_is_said() =>
        Assert.Equal(
            ["the temperature is not written for all readings", "the instrument is not written: that it was the same one is not known"],
            Only(
                Reservoir
                    + Bench(
                        ("2022-01-01", "capacitance: 2000 µF"),
                        ("2023-01-01", "capacitance: 1900 µF"),
                        ("2024-01-01", "capacitance: 1800 µF")
                    )
            ).Remarks
        );

    private static Drift Only(string record) => Assert.Single(BoardDrifts.Find(Worked.Board(record)));

    private static string With(string other)
    {
        var usual = new[] { "frequency: 120 Hz", "temperature: 20 °C", "circuit: out" }.Where(said =>
            !other.Contains(said[..said.IndexOf(':', StringComparison.Ordinal)], StringComparison.Ordinal)
        );
        return string.Join(", ", usual.Append(other));
    }

    private static string Bench(params (string Day, string Reading)[] visits) =>
        ("bench:\n" + string.Concat(visits.Select(visit => Visit(visit.Day, visit.Reading)))).TrimEnd();

    private static string Visit(string day, string reading) => $"  - date: {day}\n    readings:\n      - {{ part: C1, {reading} }}\n";
}
