using Ohmstead.Assessment.Ahead;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Ahead;

/// <summary>What falls due, as seen on 2026-11-25.</summary>
public sealed class YearAheadTests
{
    [Fact]
    public void A_board_is_due_when_the_collection_says_how_often_it_is_looked_at()
    {
        var item = Assert.Single(Ahead("bench:\n  - { date: 2025-03-14, note: dusted }", collection: "look_every: 24 months"));
        Assert.Equal((DueKind.LookAgain, new DateOnly(2027, 3, 14), "SP-0001"), (item.Kind, item.First, item.Whom));
    }

    // 30 days after 2026-11-09, by the calendar.
    [Fact]
    public void A_wait_is_asked_after_when_thirty_days_have_gone()
    {
        var item = Assert.Single(Ahead("waiting:\n  - { since: 2026-11-09, for: pen motor belt, order: PO-12 }"));
        Assert.Equal((DueKind.Wait, new DateOnly(2026, 12, 9), "ask after pen motor belt"), (item.Kind, item.First, item.What));
        Assert.False(item.IsOverdueOn(SmallCollection.Today));
    }

    [Fact]
    public void A_wait_that_has_ended_is_not_asked_after() =>
        Assert.Empty(Ahead("waiting:\n  - { since: 2026-11-09, for: pen motor belt, until: 2026-11-20 }"));

    [Fact]
    public void What_is_lent_is_to_come_back_on_its_day_and_its_looks_go_on()
    {
        var items = Ahead(
            "bench:\n  - { date: 2025-03-14, note: dusted }\n"
                + "whereabouts:\n  - { date: 2026-05-02, did: lent, to: Two Weirs museum, until: 2026-11-20 }",
            collection: "look_every: 24 months"
        );
        Assert.Equal(
            [(DueKind.Loan, new DateOnly(2026, 11, 20)), (DueKind.LookAgain, new(2027, 3, 14))],
            items.Select(item => (item.Kind, item.First))
        );
        Assert.Equal(
            ("have it back from Two Weirs museum", "lent on 2026-05-02 until 2026-11-20", true),
            (items[0].What, items[0].Why, items[0].IsOverdueOn(SmallCollection.Today))
        );
    }

    [Fact]
    public void A_loan_without_an_end_is_asked_after_when_a_year_has_gone()
    {
        var item = Assert.Single(Ahead("whereabouts:\n  - { date: 2026-05-02, did: lent, to: Two Weirs museum }"));
        Assert.Equal((new DateOnly(2027, 5, 2), "ask Two Weirs museum after it"), (item.First, item.What));
    }

    [Theory]
    [InlineData("sold")]
    [InlineData("given away")]
    [InlineData("lost")]
    [InlineData("broken up")]
    [InlineData("retired")]
    public void On_a_board_that_is_gone_or_kept_for_show_nothing_falls_due(string did)
    {
        const string due = Worn + "\nwaiting:\n  - { since: 2026-11-09, for: pen motor belt }\n";
        var until = new DateOnly(2029, 1, 1);
        Assert.Equal(3, Ahead(due, collection: "look_every: 24 months", until: until).Count);
        Assert.Empty(
            Ahead($"{due}whereabouts:\n  - {{ date: 2026-11-10, did: {did} }}", collection: "look_every: 24 months", until: until)
        );
    }

    [Fact]
    public void A_board_that_is_kept_for_show_and_lent_is_to_come_back() =>
        Assert.Equal(
            DueKind.Loan,
            Assert
                .Single(
                    Ahead(
                        Worn
                            + "\nwhereabouts:\n  - { date: 2026-05-20, did: retired }\n"
                            + "  - { date: 2026-06-02, did: lent, to: Two Weirs museum }",
                        collection: "look_every: 24 months"
                    )
                )
                .Kind
        );

    [Fact]
    public void Only_the_last_calibration_of_an_instrument_counts()
    {
        var item = Assert.Single(
            Ahead("note: none", instruments: "calibrations: [{ date: 2024-09-12 }, { date: 2025-09-12, valid: 24 months }]")
        );
        Assert.Equal((DueKind.Calibration, new DateOnly(2027, 9, 12), "bridge-1"), (item.Kind, item.First, item.Whom));
    }

    [Fact]
    public void A_later_calibration_that_holds_shorter_is_the_one_in_force()
    {
        // Readings after 2026-12-01 are warned of: the year ahead must not say that the older one still holds.
        var item = Assert.Single(
            Ahead(
                "note: none",
                instruments: "calibrations: [{ date: 2026-01-19, valid: 24 months }, { date: 2026-06-01, valid: 6 months }]"
            )
        );
        Assert.Equal(new DateOnly(2026, 12, 1), item.First);
    }

    [Fact]
    public void A_calibration_that_ran_out_is_overdue() =>
        Assert.True(
            Assert.Single(Ahead("note: none", instruments: "calibrations: [{ date: 2025-09-12 }]")).IsOverdueOn(SmallCollection.Today)
        );

    [Theory]
    [InlineData("kind: aluminium electrolytic, received: 2024-02-28, quantity: 2", DueKind.Reforming)]
    [InlineData("kind: cell, received: 2025-02-28, shelf_life: 24 months, quantity: 2", DueKind.Shelf)]
    [InlineData("kind: bipolar electrolytic, received: 2024-02-28, quantity: 2", DueKind.Shelf)]
    public void A_lot_is_due_when_its_shelf_life_ends(string lot, DueKind kind)
    {
        var item = Assert.Single(Ahead("note: none", $"lots:\n  - {{ lot: L-031, {lot} }}"));
        Assert.Equal((kind, new DateOnly(2027, 2, 28), "L-031"), (item.Kind, item.First, item.Whom));
    }

    [Fact]
    public void A_lot_of_which_nothing_is_left_is_not_due()
    {
        const string board = """
            parts:
              - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF }
            bench:
              - date: 2026-03-14
                work:
                  - { part: C1, did: replaced, lot: L-031, polarity: schematic }
            """;
        Assert.Empty(Ahead(board, "lots:\n  - { lot: L-031, kind: aluminium electrolytic, received: 2024-02-28, quantity: 1 }"));
    }

    [Fact]
    public void A_lot_that_failed_its_incoming_reading_is_not_formed_again() =>
        Assert.Empty(
            Ahead(
                "note: none",
                """
                lots:
                  - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, received: 2024-02-28 }
                bench:
                  - date: 2026-03-14
                    readings:
                      - { lot: L-031, state: new, frequency: 120 Hz, capacitance: 301 µF }
                """
            )
        );

    // 1000 h at 85 °C are 11 313.7 h at 50 °C, 1.29 years of 8760 h after 2026-05-16, and 22 627 h at 40 °C, 2.58 years.
    [Fact]
    public void A_part_is_measured_when_its_life_may_be_used_up()
    {
        var item = Assert.Single(Ahead(Worn));
        Assert.Equal(
            (DueKind.Life, "SP-0001 C1", new DateOnly(2027, 8, 30), new DateOnly(2028, 12, 14)),
            (item.Kind, item.At, item.First, item.Last)
        );
        Assert.Equal("2027-08-30 … 2028-12-14", item.When);
    }

    [Fact]
    public void What_falls_due_after_the_last_day_is_left_out() => Assert.Empty(Ahead(Worn, until: new DateOnly(2027, 8, 29)));

    [Fact]
    public void A_part_measured_after_its_earliest_date_is_due_at_its_latest()
    {
        var dates = new Assessment.Life.LifeDates("C1", new(2025, 1, 1), new(2029, 1, 1), new(2026, 1, 1));
        Assert.Equal(new DateOnly(2029, 1, 1), dates.MeasureOn);
        Assert.Equal(new DateOnly(2025, 1, 1), (dates with { LastRead = null }).MeasureOn);
        Assert.Null((dates with { LastRead = new(2030, 1, 1) }).MeasureOn);
    }

    [Fact]
    public void Items_stand_in_order_of_date() =>
        Assert.Equal(
            [DueKind.Wait, DueKind.Calibration, DueKind.LookAgain],
            Ahead(
                    "waiting:\n  - { since: 2026-11-09, for: pen motor belt }\nbench:\n  - { date: 2025-08-14, note: dusted }",
                    collection: "look_every: 24 months",
                    instruments: "calibrations: [{ date: 2026-01-19 }]"
                )
                .Select(item => item.Kind)
        );

    private const string Worn = """
        duty: { hours_per_year: 8760, temperature: 45 °C }
        made: 1981
        parts:
          - { ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V }
        bench:
          - date: 2026-05-16
            work:
              - { part: C1, did: replaced, lot: L-050, polarity: schematic }
        """;

    private static IReadOnlyList<DueItem> Ahead(
        string board,
        string? stock = null,
        string? collection = null,
        string? instruments = null,
        DateOnly? until = null
    )
    {
        var small = new SmallCollection([
            new("yaml", "collection.yaml", 0, $"collection: Saltmarsh Point weather collection\n{collection}\n"),
            new(
                "yaml",
                "instruments.yaml",
                0,
                instruments is null ? "instruments: []\n" : $"instruments:\n  - {{ id: bridge-1, what: component bridge, {instruments} }}\n"
            ),
            new(
                "yaml",
                "stock.yaml",
                0,
                (
                    stock
                    ?? "lots:\n  - { lot: L-050, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, temperature: "
                        + "85 °C, life: 1000 h, quantity: 1 }"
                ) + "\n"
            ),
            new("markdown", "boards/SP-0001.md", 0, $"---\nboard: SP-0001\ntitle: Tide-gauge logger\n{board}\n---\n"),
        ]);
        Assert.Empty(small.ReadingFindings.Select(finding => finding.Message));
        return YearAhead.List(
            small.Workshop,
            [.. small.Boards.Select(board => BoardSummary.From(board))],
            SmallCollection.Today,
            until ?? SmallCollection.Today.AddYears(1)
        );
    }
}
