using Ohmstead.Assessment.Life;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Electronics.Life;

namespace Ohmstead.Assessment.Tests.Life;

/// <summary>Lives of fitted electrolytics, worked by hand from the ten-kelvin rule and from makers' published pairs.</summary>
public sealed class WearOutLifeTests
{
    private const string Lot = "kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, temperature: 105 °C, life: 2000 h";

    // Air at 60 °C known to 5 K: 2000 h at 105 °C are 32 000 h at 65 °C and 64 000 h at 55 °C, which is 6.4 and 12.8 years of 5000 h.
    [Fact]
    public void A_fitted_part_is_counted_from_the_day_it_was_fitted_by_the_ten_kelvin_rule()
    {
        var life = Fitted("hours_per_year: 5000, temperature: 60 °C", Lot);
        Assert.Equal("fitted 2026-03-01", life.Start!.Words);
        Assert.Equal(new LifeDates("C1", new(2032, 7, 24), new(2038, 12, 18), null), life.Dates);
        Assert.Equal("rated 2000 h at 105 °C (lot L-031), fitted 2026-03-01", life.Inputs[0].Text);
        Assert.Equal(
            "5000 h a year in air of 60 °C (the board's duty), taken 5 K warmer for the earliest date and cooler for the latest (common "
                + "practice)",
            life.Inputs[1].Text
        );
        // k ln 2 / (1/333.15 - 1/343.15) with k = 8.617 333 e-5 eV/K; by hand calculator.
        Assert.StartsWith(
            "twice the life for ten kelvin less means 0.68 eV between 60 and 70 °C",
            life.Inputs[2].Text,
            StringComparison.Ordinal
        );
    }

    // Half the hours at 60 °C and half at 70: 5 K warmer 32 000 h and 16 000 h, together 1 / (0.5 / 32 000 + 0.5 / 16 000) = 21 333.3 h;
    // cooler twice that.
    // At 5000 h a year 4.26667 and 8.53333 years, 1558 and 3116 whole days.
    [Fact]
    public void A_mixed_duty_is_counted_by_the_share_of_each_temperature()
    {
        var life = Fitted("hours_per_year: 5000, temperature: 60 °C, at_times: [ { hours_per_year: 2500, temperature: 70 °C } ]", Lot);
        Assert.Equal(new DateOnly(2026, 3, 1).AddDays(1558), life.Estimate.Value.Earliest);
        Assert.Equal(new DateOnly(2026, 3, 1).AddDays(3116), life.Estimate.Value.Latest);
        Assert.StartsWith(
            "5000 h a year in air of 60 °C for 2500 h, 70 °C for 2500 h (the board's duty)",
            life.Inputs[1].Text,
            StringComparison.Ordinal
        );
    }

    // A 25 V part of 2000 h at 105 °C worked at 20 V and 65 °C lasts 40 000 h by the linear voltage form: 5 years of 8000 h. The earliest
    // date takes no credit for it: 16 000 h at 75 °C, 2 years.
    [Fact]
    public void A_lower_voltage_lengthens_the_latest_date_and_not_the_earliest()
    {
        var life = Fitted("hours_per_year: 8000, temperature: 70 °C", Lot, "working_voltage: 20 V");
        Assert.Equal(new DateOnly(2028, 2, 29), life.Estimate.Value.Earliest);
        Assert.Equal(new DateOnly(2031, 3, 1), life.Estimate.Value.Latest);
        Assert.Equal(MakersLifeForms.LinearVoltageFormSource, life.Estimate.Value.OtherSource);
        Assert.Equal("works at 20 V of 25 V", life.Inputs[2].Text);
    }

    // 1 V peak to peak of 100 Hz across 1000 µF is 2 pi x 100 x 0.001 / (2 sqrt 3) = 0.18138 A, half as much again as a rating of 120.92
    // mA: a maker's form gives 16 069 h at 65 °C where the rule alone gives 32 000 h. 16 069 h are 2 years and 3 days of 8000 h.
    [Fact]
    public void Ripple_over_the_rating_shortens_both_dates()
    {
        var life = Fitted(
            "hours_per_year: 8000, temperature: 60 °C",
            Lot + ", ripple_current: 120.92 mA",
            null,
            "{ part: C1, state: as left, circuit: in, frequency: 100 Hz, ripple: 1 V }"
        );
        Assert.StartsWith("ripple form: ", life.Estimate.Value.Arithmetic.Text, StringComparison.Ordinal);
        Assert.Equal(new DateOnly(2028, 3, 3), life.Estimate.Value.Earliest);
        Assert.Equal(MakersLifeForms.RippleFormSource, life.Estimate.Value.Source);
        Assert.Contains("1.50 of the rated 120.92 mA", life.Inputs[2].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Ripple_that_was_read_before_the_part_was_fitted_says_nothing_of_it()
    {
        var before = Fitted(
            "hours_per_year: 8000, temperature: 60 °C",
            Lot + ", ripple_current: 120 mA",
            null,
            "{ part: C1, circuit: in, frequency: 100 Hz, ripple: 1 V }"
        );
        Assert.StartsWith("ten-kelvin rule: ", before.Estimate.Value.Arithmetic.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_original_is_counted_from_the_year_it_was_made_and_for_fifteen_years_at_most()
    {
        var board = Worked.Board(
            """
            made: 1978
            duty: { hours_per_year: 100, temperature: 40 °C }
            parts:
              - { ref: C1, kind: bipolar electrolytic, capacitance: 10 µF, rated_voltage: 25 V, temperature: 85 °C, life: 2000 h }
            bench:
              - date: 2026-03-14
                readings:
                  - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 10.1 µF }
            """
        );
        var dates = Assert.Single(board.Lives).Dates!;
        Assert.Equal(new LifeDates("C1", new(1992, 12, 31), new(1993, 12, 30), new(2026, 3, 14)), dates);
        Assert.Null(dates.MeasureOn);
        Assert.False(dates.IsPastOn(SmallCollection.Today));
    }

    [Theory]
    [InlineData("temperature: 105 °C", "hours_per_year: 900, temperature: 38 °C", "its rated life is not written, as in life: 2000 h")]
    [InlineData(
        "life: 2000 h",
        "hours_per_year: 900, temperature: 38 °C",
        "the temperature of its rated life is not written, as in temperature: 105 °C"
    )]
    [InlineData(
        "life: 2000 h, temperature: 105 °C",
        "hours_per_year: 900",
        "neither the board nor the collection says its duty in hours a year and temperature"
    )]
    public void What_is_missing_for_an_estimate_is_told(string values, string duty, string expected) =>
        Assert.Equal(
            expected,
            Fitted(duty, "kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, " + values).Estimate.Refusal
        );

    [Fact]
    public void A_part_from_a_lot_that_is_not_known_does_not_borrow_the_life_of_the_original()
    {
        var board = Worked.Board(
            """
            duty: { hours_per_year: 900, temperature: 38 °C }
            parts:
              - { ref: C1, kind: aluminium electrolytic, capacitance: 10 µF, rated_voltage: 25 V, temperature: 85 °C, life: 2000 h }
            bench:
              - date: 2026-03-14
                work:
                  - { part: C1, did: replaced, polarity: schematic }
            """
        );
        Assert.Equal("the lot that it was fitted from is not known", Assert.Single(board.Lives).Estimate.Refusal);
    }

    [Fact]
    public void Only_parts_that_dry_out_have_a_life_here()
    {
        var board = Worked.Board(
            """
            parts:
              - { ref: C1, kind: tantalum, capacitance: 10 µF }
              - { ref: C2, kind: polyester film, capacitance: 100 nF }
              - { ref: C3, kind: aluminium electrolytic, capacitance: 10 µF }
            bench:
              - date: 2026-03-14
                work:
                  - { part: C3, did: removed }
            """
        );
        Assert.Empty(board.Lives);
    }

    // Week 21 of 1998 ends on 1998-05-24; to 2026-03-01 that is 27 whole years.
    [Fact]
    public void Years_on_the_shelf_before_it_was_fitted_are_told_and_not_counted()
    {
        var life = Fitted("hours_per_year: 5000, temperature: 60 °C", Lot + ", date_code: \"9821\"");
        Assert.Equal(new DateOnly(2032, 7, 24), life.Estimate.Value.Earliest);
        Assert.Equal(
            "made 1998-W21, 27 years or more before it was fitted: not counted, but seals age on the shelf too",
            life.Inputs[^1].Text
        );
    }

    private static WearOutLife Fitted(string duty, string lot, string? place = null, string? reading = null) =>
        Assert.Single(
            Worked
                .Board(
                    $$"""
                    duty: { {{duty}} }
                    parts:
                      - { ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V{{(
                        place is null ? string.Empty : ", " + place
                    )}} }
                    bench:
                      - date: 2026-03-01
                        {{(reading is null ? "note: none" : "readings: [" + reading + "]")}}
                        work:
                          - { part: C1, did: replaced, lot: L-031, polarity: schematic }
                    """,
                    $"lots:\n  - {{ lot: L-031, {lot} }}"
                )
                .Lives
        );
}
