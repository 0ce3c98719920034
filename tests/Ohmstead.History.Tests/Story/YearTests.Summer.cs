namespace Ohmstead.History.Tests.Story;

/// <content>Summer: the parts come, one is bad, one is fitted, and the board is proved and lent.</content>
public sealed partial class YearTests
{
    private static async Task SummerAsync(YearStory year)
    {
        const string parcel = "2026-06-06";
        await year.StepAsync(
            parcel,
            "order PO-01 received",
            """
            stock.yaml
            -   - { order: PO-01, placed: 2026-03-21, from: Lantern Yard Spares, for: "470 µF 35 V, four" }
            +   - { order: PO-01, placed: 2026-03-21, from: Lantern Yard Spares, for: "470 µF 35 V, four", received: 2026-06-06 }
            """
        );
        await year.StepAsync(
            parcel,
            "lot L-002 \"aluminium electrolytic\" 470uF 20% 35V date_code=2612 polarity=polarised --quantity 4 --order PO-01 "
                + "--price \"0.60 EUR\"",
            """
            stock.yaml
            +   - { lot: L-002, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 35 V, polarity: polarised,
            +       date_code: 2612, received: 2026-06-06, quantity: 4, order: PO-01, price: 0.60 EUR }
            """
        );
        await year.StepAsync(
            parcel,
            "incoming L-002 472uF 110mohm 120Hz piece=1 --by TS --instrument meter-1",
            """
            stock.yaml
            + bench:
            +   - date: 2026-06-06
            +     by: TS
            +     instrument: meter-1
            +     readings:
            +       - { lot: L-002, piece: 1, state: new, frequency: 120 Hz, capacitance: 472 µF, esr: 110 mΩ }
            """
        );
        await year.StepAsync(
            parcel,
            "incoming L-002 301uF 120Hz piece=2 --by TS --instrument meter-1",
            """
            stock.yaml
            +       - { lot: L-002, piece: 2, state: new, frequency: 120 Hz, capacitance: 301 µF }
            """
        );
        await year.StepAsync(
            parcel,
            "scrap L-002 1 \"reads 64 % of its mark\" --piece 2 --by TS",
            """
            stock.yaml
            +     scrapped:
            +       - { lot: L-002, piece: 2, count: 1, because: reads 64 % of its mark }
            """
        );
        await year.StepAsync(
            parcel,
            "wait GR-0004 \"470 µF 35 V\" --over",
            """
            boards/GR-0004.md
            -   - { since: 2026-03-21, for: 470 µF 35 V, order: PO-01, blocks: everything with power }
            +   - { since: 2026-03-21, for: 470 µF 35 V, order: PO-01, blocks: everything with power, until: 2026-06-06 }
            """
        );

        const string fitted = "2026-06-13";
        await year.StepAsync(
            fitted,
            "bench GR-0004 --by RK --instrument meter-1 --lifted --class C",
            """
            boards/GR-0004.md
            +   - date: 2026-06-13
            +     by: RK
            +     readings:
            +       - { part: C1, state: as left, circuit: out, frequency: 120 Hz, instrument: meter-1, capacitance: 471 µF, esr: 0.11 Ω }
            +     work:
            +       - { part: C1, did: replaced, lot: L-002, polarity: [schematic, photograph before removal], kept: bag 1 }
            """,
            ("C1 [", "work replaced C1 --lot L-002 --polarity schematic --polarity \"photograph before removal\" --kept \"bag 1\"\r"),
            ("C1 [", "471 0.11 120Hz \"state=as left\"\r"),
            ("C2 [", "quit\r")
        );
        await year.StepAsync(
            fitted,
            "work GR-0004 cleaned C1 --with isopropanol --dry 24h --by RK",
            """
            boards/GR-0004.md
            +   - date: 2026-06-13
            +     by: RK
            +     work:
            +       - { part: C1, did: cleaned, with: isopropanol, dry: 24h }
            """
        );
        await year.StepAsync(
            "2026-06-20",
            "enter GR-0004 +24V 24.1V ripple=6mV --by RK --instrument meter-1",
            """
            boards/GR-0004.md
            +   - date: 2026-06-20
            +     by: RK
            +     instrument: meter-1
            +     proof:
            +       - { point: +24V, voltage: 24.1 V, ripple: 6 mV }
            """
        );
        Assert.Contains("fit to run", await year.StepAsync("2026-06-20", "why GR-0004", string.Empty), StringComparison.Ordinal);
        await year.StepAsync(
            "2026-06-27",
            "whereabouts GR-0004 lent --to \"Two Weirs museum\" --until 2026-09-30 --by RK",
            """
            boards/GR-0004.md
            + whereabouts:
            +   - { date: 2026-06-27, did: lent, to: Two Weirs museum, until: 2026-09-30, by: RK }
            """
        );
    }
}
