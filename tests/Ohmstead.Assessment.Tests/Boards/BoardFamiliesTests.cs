using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Boards;

/// <summary>Which readings of a board count for its families, and from when the age of a part counts. The limits are 376 µF to 564
/// µF.</summary>
public sealed class BoardFamiliesTests
{
    private const string Part =
        "made: 1980\nparts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 25 V, "
        + "maker: Ostrel, series: RB }\n";
    private const string Stock =
        "lots:\n  - { lot: L-001, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 35 V, maker: "
        + "Wexcote }";

    [Fact]
    public void A_part_belongs_to_its_kind_its_maker_and_its_series() =>
        Assert.Equal(
            ["aluminium electrolytic", "aluminium electrolytic, Ostrel", "aluminium electrolytic, Ostrel, series RB"],
            new FamilyName("aluminium electrolytic", "Ostrel", "RB").Levels().Select(level => level.Text)
        );

    [Fact]
    public void What_is_not_known_is_left_out_of_the_name()
    {
        Assert.Equal(["paper"], new FamilyName("paper", null, null).Levels().Select(level => level.Text));
        Assert.Equal(["paper", "paper, series WX"], new FamilyName("paper", null, "WX").Levels().Select(level => level.Text));
        Assert.Equal(["paper", "paper, Dunmarl"], new FamilyName("paper", "Dunmarl", null).Levels().Select(level => level.Text));
    }

    [Fact]
    public void A_family_is_within_the_wider_ones_that_it_counts_in()
    {
        FamilyName[] names =
        [
            new("paper", null, null),
            new("paper", "Dunmarl", null),
            new("paper", null, "WX"),
            new("paper", "Dunmarl", "WX"),
            new("paper", "Ostrel", "WX"),
            new("mica", "Dunmarl", "WX"),
        ];
        Assert.Equal(
            [
                "paper, Dunmarl: paper",
                "paper, series WX: paper",
                "paper, Dunmarl, series WX: paper",
                "paper, Dunmarl, series WX: paper, Dunmarl",
                "paper, Ostrel, series WX: paper",
            ],
            from name in names
            from wider in names
            where name.IsWithin(wider)
            select $"{name.Text}: {wider.Text}"
        );
    }

    [Fact]
    public void A_reading_out_of_circuit_outside_its_limit_is_a_part_failed_as_found() =>
        Assert.True(Life("circuit: out, capacitance: 300 µF") is { FailedAsFound: true, IsOriginal: true, LastGood: null });

    [Fact]
    public void A_reading_inside_is_a_part_that_is_good() =>
        Assert.True(Life("circuit: out, capacitance: 460 µF") is { FailedAsFound: false, Failed: null });

    // Bridge-2 is good for 0.5 % and 5 x 0.1 µF: 377 µF cannot be told from 376 µF.
    [Theory]
    [InlineData("circuit: out, capacitance: 377 µF, instrument: bridge-2")]
    [InlineData("circuit: in, capacitance: 460 µF")]
    [InlineData("state: new, capacitance: 300 µF, lot: L-001")]
    public void A_reading_that_does_not_decide_about_the_part_in_its_place_does_not_count(string reading) => Assert.Null(Life(reading));

    // In circuit a parallel path only lowers a resistance: too high proves a fault, and nothing proves a good part.
    [Fact]
    public void A_part_proved_outside_in_circuit_is_counted_apart()
    {
        const string record =
            "parts:\n  - { ref: R1, kind: carbon composition resistor, resistance: 4.7 kΩ, tolerance: ±5 % }\nbench:\n  - date: "
            + "2020-03-14\n    readings:\n      - { part: R1, circuit: in, resistance: 5.4 kΩ }";
        var family = Assert.Single(BoardFamilies.Count(Worked.Board(record)));
        Assert.Empty(family.Lives);
        Assert.Equal(1, family.FailedInCircuit);
    }

    [Fact]
    public void A_part_that_reads_right_again_with_nothing_done_had_been_read_wrongly()
    {
        var life = Life("circuit: out, capacitance: 300 µF", Visit("2020-03-15", "circuit: out, capacitance: 460 µF"));
        Assert.True(life is { FailedAsFound: false, Failed: null });
    }

    [Fact]
    public void A_part_that_reads_right_after_forming_has_failed_all_the_same()
    {
        const string formed = "    work:\n      - { part: C1, did: re-formed }\n";
        Assert.True(
            Life("circuit: out, capacitance: 300 µF", formed + Visit("2020-03-15", "circuit: out, capacitance: 460 µF"))
                is { FailedAsFound: true }
        );
    }

    [Fact]
    public void A_good_value_of_one_quantity_does_not_undo_a_bad_one_of_another() =>
        Assert.True(
            Life("circuit: out, capacitance: 300 µF", Visit("2020-03-15", "circuit: out, leakage: 1 µA, after: 5 min, at_voltage: 25 V"))
                is { FailedAsFound: true }
        );

    [Fact]
    public void A_part_good_at_first_and_bad_later_did_not_fail_as_found()
    {
        var life = Life("circuit: out, capacitance: 460 µF", Visit("2024-03-14", "circuit: out, capacitance: 300 µF"));
        Assert.Equal(
            (new DateOnly(2020, 3, 14), new DateOnly(2024, 3, 14), false),
            (life!.Value.LastGood, life.Value.Failed, life.Value.FailedAsFound)
        );
    }

    [Fact]
    public void A_part_fitted_since_belongs_to_the_family_of_its_lot_and_counts_from_its_fitting()
    {
        const string replaced = "    work:\n      - { part: C1, did: replaced, lot: L-001 }\n";
        var families = BoardFamilies.Count(
            Worked.Board(
                Part
                    + "bench:\n"
                    + Visit("2020-03-14", "circuit: out, capacitance: 300 µF")
                    + replaced
                    + Visit("2024-03-14", "circuit: out, capacitance: 455 µF").TrimEnd(),
                Stock
            )
        );
        Assert.Equal(
            ["aluminium electrolytic, Ostrel, series RB", "aluminium electrolytic, Wexcote"],
            families.Select(family => family.Name.Text)
        );
        Assert.Equal([1, 0], families.Select(family => family.Originals));
        var fitted = Assert.Single(families[1].Lives);
        Assert.True(fitted is { IsOriginal: false, Failed: null });
        Assert.Equal(new DateOnly(2020, 3, 14), fitted.Start);
    }

    // The second of the two lots failed after two years in its place.
    [Fact]
    public void Of_a_place_whose_part_was_replaced_twice_each_part_has_its_own_life()
    {
        const string first = "    work:\n      - { part: C1, did: replaced, lot: L-001 }\n";
        const string second = "    work:\n      - { part: C1, did: replaced, lot: L-002 }\n";
        var visits =
            Visit("2020-03-14", "circuit: out, capacitance: 300 µF")
            + first
            + Visit("2022-03-14", "circuit: out, capacitance: 460 µF")
            + second
            + Visit("2024-03-14", "circuit: out, capacitance: 300 µF");
        var families = BoardFamilies.Count(
            Worked.Board(
                Part + "bench:\n" + visits.TrimEnd(),
                Stock
                    + "\n  - { lot: L-002, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 35 V, "
                    + "maker: Keld }"
            )
        );
        Assert.Equal(
            ["aluminium electrolytic, Ostrel, series RB", "aluminium electrolytic, Wexcote", "aluminium electrolytic, Keld"],
            families.Select(family => family.Name.Text)
        );
        var lives = families.Select(family => Assert.Single(family.Lives)).ToArray();
        Assert.Equal([true, false, false], lives.Select(life => life.IsOriginal));
        Assert.Equal([new DateOnly(2020, 3, 14), null, new DateOnly(2024, 3, 14)], lives.Select(life => life.Failed));
        Assert.Equal([new DateOnly(2020, 3, 14), new DateOnly(2022, 3, 14)], lives.Skip(1).Select(life => life.Start!.Value));
    }

    // Four digits are year and week.
    [Theory]
    [InlineData("made: 1980", "", 1980)]
    [InlineData("made: 1980", ", date_code: \"0914\"", 2009)]
    [InlineData("serial: x", ", date_code: \"8730\"", 1987)]
    [InlineData("serial: x", "", null)]
    public void The_age_counts_from_the_own_date_code_else_from_the_year_of_the_board(string board, string code, int? year)
    {
        var record =
            $"{board}\nparts:\n  - {{ ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %{code} }}\nbench:\n"
            + Visit("2020-03-14", "circuit: out, capacitance: 460 µF").TrimEnd();
        var life = Assert.Single(Assert.Single(BoardFamilies.Count(Worked.Board(record))).Lives);
        Assert.Equal(year, life.Start?.Year);
    }

    // T5 is May 1985 or 2005: the year of the board tells which, and without one nothing does.
    [Theory]
    [InlineData("made: 1986", 1985)]
    [InlineData("serial: x", null)]
    public void A_date_code_that_can_mean_two_years_is_told_by_the_year_of_the_board_or_not_at_all(string board, int? year)
    {
        var record =
            $"{board}\nparts:\n  - {{ ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, date_code: T5 "
            + "}\nbench:\n"
            + Visit("2020-03-14", "circuit: out, capacitance: 460 µF").TrimEnd();
        Assert.Equal(year, Assert.Single(Assert.Single(BoardFamilies.Count(Worked.Board(record))).Lives).Start?.Year);
    }

    private static ObservedLife? Life(string reading, string after = "")
    {
        var family = BoardFamilies.Count(Worked.Board((Part + "bench:\n" + Visit("2020-03-14", reading) + after).TrimEnd(), Stock))[0];
        return family.Lives.Count == 0 ? null : Assert.Single(family.Lives);
    }

    private static string Visit(string day, string reading) => $"  - date: {day}\n    readings:\n      - {{ part: C1, {reading} }}\n";
}
