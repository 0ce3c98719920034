using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>An error in a file that boards share is one about every board on which it counts, and about no other.</summary>
public sealed class SharedFaultsTests
{
    private const string Stock = """
        lots:
          - { lot: L-030, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V, quantity: 5 }
          - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V, polarity: none, quantity: 5 }
          - { lot: L-032, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V, quantity: 5 }

        """;

    private const string Instruments = """
        instruments:
          - { id: bridge-1, what: component bridge }
          - { id: bridge-2, what: component bridge }
          - { id: bridge-2, what: component bridge in the hut }

        """;

    private const string Design =
        "---\ndesign: NAME\ntitle: Tide-gauge logger\npoints:\n  - { point: +5V, nominal: 5 V, tolerance: 5 %RANGE }\n---\n";

    [Fact]
    public void An_error_in_a_lot_reaches_the_boards_it_sits_on_and_no_other()
    {
        Assert.Equal(
            ["L-030 False", "L-031 True", "L-032 False"],
            Fitted("L-030", "L-031", "L-032").Select(board => $"{board.Lot} {board.IsHeld}")
        );
    }

    // What was found of the readings of a lot is about that lot, wherever the lot itself stands.
    [Fact]
    public void A_doubtful_reading_of_a_lot_is_about_that_lot() =>
        Assert.Equal(
            ["L-030 True", "L-032 False"],
            FittedFrom(
                    Stock
                        + "bench:\n  - date: 2026-02-21\n    readings:\n      - { lot: L-032, state: new, frequency: 120 Hz, "
                        + "capacitance: 474 µF }\n      - { lot: L-030, state: new, frequency: 120 Hz, capacitance: 474 nF }\n",
                    "L-030",
                    "L-032"
                )
                .Select(board => $"{board.Lot} {board.IsHeld}")
        );

    // Of a thousand lots with one fault the last ones are counted and not told: any of them may be among those.
    [Fact]
    public void Where_faults_of_lots_are_only_counted_each_lot_is_in_doubt()
    {
        var workshop = new SmallCollection([new("yaml", "stock.yaml", 0, Stock)]).Workshop;
        var (told, counted) = (new FindingList(), new FindingList());
        for (var at = 0; at < FindingList.MostOfOneCheck; at++)
        {
            told.Add(FaultOfTheFirstLot());
            counted.Add(FaultOfTheFirstLot());
        }

        counted.Add(FaultOfTheFirstLot());
        Assert.Empty(SharedFaults.From(workshop, told.ToImmutable()).OfLot("L-032"));
        Assert.Single(SharedFaults.From(workshop, counted.ToImmutable()).OfLot("L-032"));
    }

    [Fact]
    public void A_lot_taken_out_again_troubles_the_board_no_more() =>
        Assert.False(
            Held(
                Board(
                    "SP-0001",
                    "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF }\nbench:\n  - date: 2026-03-14\n    "
                        + "work:\n      - { part: C1, did: replaced, lot: L-031, polarity: schematic }\n      - { part: C1, did: removed }"
                ),
                new("yaml", "stock.yaml", 0, Stock)
            )
        );

    // An order or a visit that stands behind the lots is no part of the last of them.
    [Theory]
    [InlineData("orders:\n  - { order: PO-12, placed: 2026-11-26, for: a belt }\n")]
    [InlineData("bench:\n  - date: 2027-02-21\n")]
    public void What_is_wrong_with_an_order_or_a_visit_is_not_the_fault_of_the_lot_before_it(string behind)
    {
        var collection = new SmallCollection([.. Fitting(Stock + behind, "L-032")]);
        Assert.Contains(collection.Findings(), finding => finding.Check == "stock-date-in-future");
        Assert.False(IsHeld(Assert.Single(collection.Boards)));
    }

    [Theory]
    [InlineData("bridge-1", false)]
    [InlineData("bridge-2", true)]
    public void An_error_in_an_instrument_reaches_the_boards_whose_readings_it_took(string instrument, bool isHeld) =>
        Assert.Equal(
            isHeld,
            Held(
                Board(
                    "SP-0001",
                    $"bench:\n  - date: 2026-03-14\n    proof:\n      - {{ point: lamp, result: pass, instrument: {instrument} }}"
                ),
                new("yaml", "instruments.yaml", 0, Instruments)
            )
        );

    [Fact]
    public void An_instrument_whose_readings_no_longer_count_troubles_nobody() =>
        Assert.False(
            Held(
                Board(
                    "SP-0001",
                    "parts:\n  - { ref: C1, kind: mica, capacitance: 100 pF }\nbench:\n  - date: 2026-03-14\n    readings:\n      - { "
                        + "part: C1, circuit: out, capacitance: 90 pF, instrument: bridge-2 }\n    work:\n      - { part: C1, did: "
                        + "removed }"
                ),
                new("yaml", "instruments.yaml", 0, Instruments)
            )
        );

    [Fact]
    public void An_error_in_a_design_reaches_the_boards_made_to_it()
    {
        var collection = new SmallCollection([
            Board("SP-0001", "design: tide-logger\nbench:\n  - date: 2026-03-14"),
            Board("SP-0002", "design: barograph-amp\nbench:\n  - date: 2026-03-14"),
            Board("SP-0003", "bench:\n  - date: 2026-03-14"),
            new(
                "markdown",
                "designs/tide-logger.md",
                0,
                Design
                    .Replace("NAME", "tide-logger", StringComparison.Ordinal)
                    .Replace("RANGE", ", low: 5.25 V, high: 4.75 V", StringComparison.Ordinal)
            ),
            new(
                "markdown",
                "designs/barograph-amp.md",
                0,
                Design.Replace("NAME", "barograph-amp", StringComparison.Ordinal).Replace("RANGE", string.Empty, StringComparison.Ordinal)
            ),
        ]);
        Assert.Equal(
            ["SP-0001 True", "SP-0002 False", "SP-0003 False"],
            collection.Boards.Select(board => $"{board.Board.Id.Value} {IsHeld(board)}")
        );
    }

    [Fact]
    public void What_is_only_told_is_kept_from_the_boards() =>
        Assert.Empty(
            SharedFaults
                .From(
                    new SmallCollection([.. Fitting(Stock, "L-030")]).Workshop,
                    [new Finding("date-code-impossible", Severity.Warning, new("stock.yaml", 2, 7), "a code that is no date")]
                )
                .OfLot("L-030")
        );

    [Fact]
    public void Where_nothing_was_found_nothing_is_told()
    {
        Assert.Empty(SharedFaults.None.OfBoard("boards/SP-0001.md"));
        Assert.Empty(SharedFaults.None.OfLot("L-031"));
        Assert.Empty(SharedFaults.None.OfDesign("tide-logger"));
        Assert.Empty(SharedFaults.None.OfInstrument("bridge-2"));
    }

    private static IEnumerable<(string Lot, bool IsHeld)> Fitted(params string[] lots) => FittedFrom(Stock, lots);

    private static IEnumerable<(string Lot, bool IsHeld)> FittedFrom(string stock, params string[] lots) =>
        lots.Zip(new SmallCollection([.. Fitting(stock, lots)]).Boards, (lot, board) => (lot, IsHeld(board)));

    private static IEnumerable<CaseBlock> Fitting(string stock, params string[] lots) =>
        lots.Select(
                (lot, index) =>
                    Board(
                        $"SP-000{index}",
                        $"parts:\n  - {{ ref: C1, kind: aluminium electrolytic, capacitance: 470 µF }}\nbench:\n  - date: 2026-03-14\n  "
                            + $"  work:\n      - {{ part: C1, did: replaced, lot: {lot}, polarity: schematic }}"
                    )
            )
            .Append(new("yaml", "stock.yaml", 0, stock));

    private static CaseBlock Board(string number, string record) =>
        new("markdown", $"boards/{number}.md", 0, $"---\nboard: {number}\ntitle: Tide-gauge logger\n{record}\n---\n");

    private static bool Held(params CaseBlock[] blocks) => IsHeld(Assert.Single(new SmallCollection(blocks).Boards));

    private static bool IsHeld(JudgedBoard board) =>
        board.Obligations.Any(one => one is { Kind: "record-sound", Standing: ObligationStanding.Open });

    private static Finding FaultOfTheFirstLot() => new("polarity-contradicts-kind", Severity.Error, new("stock.yaml", 2, 5), "a fault");
}
