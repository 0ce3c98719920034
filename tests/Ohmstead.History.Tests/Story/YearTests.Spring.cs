using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Story;

/// <content>Spring: a board comes in, is looked at, measured and photographed; what must go is ordered.</content>
public sealed partial class YearTests
{
    private static async Task SpringAsync(YearStory year)
    {
        const string came = "2026-03-14";
        await year.StepAsync(
            came,
            "start board GR-0004 --name \"Tide bell driver\" --from \"pilot house\" --complaint \"rings twice\"",
            """
            boards/GR-0004.md
            + ---
            + board: GR-0004
            + title: Tide bell driver
            + arrived: { date: 2026-03-14, from: pilot house, complaint: rings twice }
            + format: 1
            + ---
            + 
            + ## Story
            """
        );
        await year.StepAsync(
            came,
            "add part GR-0004 C1 \"aluminium electrolytic\" 470uF 20% 35V 85C polarity=polarised",
            """
            boards/GR-0004.md
            + parts:
            +   - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 35 V, temperature: 85 °C,
            +       polarity: polarised }
            """
        );
        await year.StepAsync(
            came,
            "add part GR-0004 C2 \"aluminium electrolytic\" 470uF 20% 35V 85C polarity=polarised",
            """
            boards/GR-0004.md
            +   - { ref: C2, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 35 V, temperature: 85 °C,
            +       polarity: polarised }
            """
        );
        await year.StepAsync(
            came,
            "add part GR-0004 R1 \"carbon film resistor\" 4.7kohm 5%",
            """
            boards/GR-0004.md
            +   - { ref: R1, kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: 5 % }
            """
        );
        await year.StepAsync(
            came,
            "add point GR-0004 +24V 24V 5% ripple_limit=50mV",
            """
            boards/GR-0004.md
            + points:
            +   - { point: +24V, nominal: 24 V, tolerance: 5 %, ripple_limit: 50 mV }
            """
        );
        await year.StepAsync(
            came,
            "add hazard GR-0004 \"charged capacitor\" at=C1 35V 470uF 10kohm",
            """
            boards/GR-0004.md
            + hazards:
            +   - { hazard: charged capacitor, at: C1, voltage: 35 V, capacitance: 470 µF, bleed: 10 kΩ }
            """
        );

        const string looked = "2026-03-21";
        await year.StepAsync(
            looked,
            "found GR-0004 C1 \"vent open, crust at the foot\" major --by RK",
            """
            boards/GR-0004.md
            + bench:
            +   - date: 2026-03-21
            +     by: RK
            +     found:
            +       - { at: C1, what: "vent open, crust at the foot", severity: major }
            """
        );
        await year.StepAsync(
            looked,
            "work GR-0004 \"made safe\" C1 --hazard \"charged capacitor\" --with \"10 kΩ probe\" --by RK",
            """
            boards/GR-0004.md
            +     work:
            +       - { part: C1, did: made safe, with: 10 kΩ probe, hazard: charged capacitor }
            """
        );
        await File.WriteAllBytesAsync(year.Desk.At("rim.png"), CameraPicture.Png(40, 30), TestContext.Current.CancellationToken);
        await year.StepAsync(
            looked,
            "photo GR-0004 $desk/rim.png --by RK",
            """
            boards/GR-0004.md
            +     photos:
            +       - { file: photos/GR-0004/2026-03-21-1.png, shows: C1 with its open vent }
            binary photos/GR-0004/2026-03-21-1.png
            """,
            ("rim.png", "C1 with its open vent\r")
        );
        await year.StepAsync(
            looked,
            "bench GR-0004 --by RK --instrument meter-1 --lifted",
            """
            boards/GR-0004.md
            +   - date: 2026-03-21
            +     by: RK
            +     instrument: meter-1
            +     readings:
            +       - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 288 µF, esr: 1.9 Ω }
            +       - { part: C2, circuit: out, frequency: 120 Hz, capacitance: 460 µF, esr: 0.1 Ω }
            +       - { part: R1, circuit: out, resistance: 4.71 kΩ }
            """,
            ("C1 [", "288 1.9 120Hz\r"),
            ("C2 [", "460 0.1\r"),
            ("R1 [", "4.71\r"),
            ("+24V [", "quit\r")
        );
        await year.StepAsync(
            looked,
            "decide GR-0004 C1 replace \"a third of it is gone\" --by RK",
            """
            boards/GR-0004.md
            +     decided:
            +       - { part: C1, decision: replace, because: a third of it is gone }
            """
        );
        await year.StepAsync(
            looked,
            "order PO-01 placed \"470 µF 35 V, four\" --from \"Lantern Yard Spares\"",
            """
            stock.yaml
            +   - { order: PO-01, placed: 2026-03-21, from: Lantern Yard Spares, for: "470 µF 35 V, four" }
            """
        );
        await year.StepAsync(
            looked,
            "wait GR-0004 \"470 µF 35 V\" --order PO-01 --blocks \"everything with power\"",
            """
            boards/GR-0004.md
            + waiting:
            +   - { since: 2026-03-21, for: 470 µF 35 V, order: PO-01, blocks: everything with power }
            """
        );
    }
}
