namespace Ohmstead.History.Tests.Story;

/// <content>A Saturday in March: the collection begins, and what stood in tables moves in.</content>
public sealed partial class YearTests
{
    private const string Saturday = "2026-03-07";

    private static async Task MoveInAsync(YearStory year)
    {
        year.Desk.Write(
            "boards.csv",
            "No;What;Made;Came;From;Fault\nGR-0002;Fog bell timer;1974;03.04.2019;bell tower;strikes late\n"
                + "GR-0003;Harbour lamp dimmer;1979;17.11.2020;boat shed;flickers\n"
        );
        year.Desk.Write(
            "parts.csv",
            "Board;Ref;Value;Kind;DNP\nGR-0002;C1;470uF 20% 35V;aluminium electrolytic;\nGR-0002;C2;470uF 20% 35V;aluminium electrolytic;\n"
                + "GR-0002;C3;104;ceramic class 2;x\nGR-0002;R1;4,7k 5%;carbon film resistor;\n"
                + "GR-0003;C1;22uF 20% 63V;aluminium electrolytic;\n"
        );
        year.Desk.Write(
            "readings.csv",
            "Board;Day;By;Ref;Circuit;Freq (Hz);Capacitance (uF);ESR (ohm)\nGR-0003;12.05.2021;RK;C1;out;120;21,3;1,2\n"
        );
        year.Desk.Write("lots.csv", "Lot;Kind;Value;Came;Pieces;Date code\nL-001;aluminium electrolytic;22uF 20% 63V;14.01.2026;6;2541\n");

        await year.BeginAsync(
            Saturday,
            "start collection . --name \"Gull Rock harbour office\" --board GR-0001",
            ["boards/GR-0001.md", "collection.yaml", "instruments.yaml", "stock.yaml"]
        );
        await year.ShellAsync(
            Saturday,
            "sed -i 's/^#  /  /' instruments.yaml",
            """
            instruments.yaml
            - #  - id: meter-1
            - #    what: multimeter, four digits
            - #    calibrations:
            - #      - { date: 2026-02-09, valid: 12 months, certificate: C-26-003 }
            - #    accuracy:
            - #      - { measures: capacitance, error: 1 %, digits: 3, step: 0.1 µF, up_to: 1000 µF }
            - #      - { measures: resistance, error: 0.5 %, digits: 2, step: 1 Ω, up_to: 10 kΩ }
            - #      - { measures: voltage, error: 0.1 %, digits: 2, step: 0.01 V, up_to: 100 V }
            +   - id: meter-1
            +     what: multimeter, four digits
            +     calibrations:
            +       - { date: 2026-02-09, valid: 12 months, certificate: C-26-003 }
            +     accuracy:
            +       - { measures: capacitance, error: 1 %, digits: 3, step: 0.1 µF, up_to: 1000 µF }
            +       - { measures: resistance, error: 0.5 %, digits: 2, step: 1 Ω, up_to: 10 kΩ }
            +       - { measures: voltage, error: 0.1 %, digits: 2, step: 0.01 V, up_to: 100 V }
            """
        );
        await year.StepAsync(
            Saturday,
            "take-in --boards $desk/boards.csv --parts $desk/parts.csv --readings $desk/readings.csv --lots $desk/lots.csv "
                + "--days day-first --decimals comma --write",
            """
            boards/GR-0002.md
            + ---
            + board: GR-0002
            + title: Fog bell timer
            + made: 1974
            + arrived: { date: 2019-04-03, from: bell tower, complaint: strikes late }
            + parts:
            +   - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 35 V }
            +   - { ref: C2, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 35 V }
            +   - { ref: R1, kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: ±5 % }
            + format: 1
            + ---
            + 
            + ## Story
            boards/GR-0003.md
            + ---
            + board: GR-0003
            + title: Harbour lamp dimmer
            + made: 1979
            + arrived: { date: 2020-11-17, from: boat shed, complaint: flickers }
            + parts:
            +   - { ref: C1, kind: aluminium electrolytic, capacitance: 22 µF, tolerance: ±20 %, rated_voltage: 63 V }
            + bench:
            +   - date: 2021-05-12
            +     by: RK
            +     readings:
            +       - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 21.3 µF, esr: 1.2 Ω }
            + format: 1
            + ---
            + 
            + ## Story
            stock.yaml
            +   - { lot: L-001, kind: aluminium electrolytic, capacitance: 22 µF, tolerance: ±20 %, rated_voltage: 63 V, date_code: "2541",
            +       received: 2026-01-14, quantity: 6 }
            tables.yaml
            + # How old tables are taken in: what their columns hold. Written by 'ohmstead take-in --write'; mend it by hand.
            + days: day-first
            + decimals: comma
            + boards:
            +   board: "No"
            +   title: What
            +   made: Made
            +   arrived: Came
            +   from: From
            +   complaint: Fault
            + parts:
            +   board: Board
            +   ref: Ref
            +   value: Value
            +   kind: Kind
            +   not_fitted: DNP
            + readings:
            +   board: Board
            +   date: Day
            +   by: By
            +   part: Ref
            +   circuit: Circuit
            +   frequency: Freq (Hz)
            +   capacitance: Capacitance (uF)
            +   esr: ESR (ohm)
            + lots:
            +   value: Value
            +   lot: Lot
            +   kind: Kind
            +   date_code: Date code
            +   received: Came
            +   quantity: Pieces
            """
        );
        // Years of old work ask for nothing from then on but what can hurt.
        await year.ShellAsync(
            Saturday,
            "sed -i 's/^# told_before: .*/told_before: 2026-03-01/' collection.yaml",
            """
            collection.yaml
            - # told_before: 2026-12-01
            + told_before: 2026-03-01
            """
        );
    }
}
