namespace Ohmstead.History.Tests.Story;

/// <content>Autumn: the board comes back, a misread figure is corrected, a slip of today is taken back, and what was noted on paper is
/// entered.</content>
public sealed partial class YearTests
{
    private static async Task AutumnAsync(YearStory year)
    {
        const string back = "2026-10-03";
        await year.StepAsync(
            back,
            "whereabouts GR-0004 \"came back\" --at \"store, shelf 3\" --by RK",
            """
            boards/GR-0004.md
            +   - { date: 2026-10-03, did: came back, at: "store, shelf 3", by: RK }
            """
        );
        await year.StepAsync(
            back,
            "enter GR-0004 C2 433uF 0.2ohm 120Hz --lifted --by RK --instrument meter-1",
            """
            boards/GR-0004.md
            +   - date: 2026-10-03
            +     by: RK
            +     instrument: meter-1
            +     readings:
            +       - { part: C2, circuit: out, frequency: 120 Hz, capacitance: 433 µF, esr: 0.2 Ω }
            """
        );
        await year.StepAsync(
            back,
            "remove GR-0004 C2 --by RK",
            """
            boards/GR-0004.md
            -   - date: 2026-10-03
            -     by: RK
            -     instrument: meter-1
            -     readings:
            -       - { part: C2, circuit: out, frequency: 120 Hz, capacitance: 433 µF, esr: 0.2 Ω }
            """
        );
        await year.StepAsync(
            "2026-10-10",
            "correct GR-0004 R1 4.81kohm --of 2026-03-21 --because \"a 1 read for a 8\" --by RK",
            """
            boards/GR-0004.md
            +   - date: 2026-10-10
            +     by: RK
            +     readings:
            +       - { part: R1, circuit: out, instrument: meter-1, resistance: 4.81 kΩ, corrects: 2026-03-21, because: a 1 read for a 8 }
            """
        );
        await year.StepAsync(
            "2026-10-10",
            "found GR-0004 R1 \"end cap dull\" minor --on 2026-06-13 --by RK",
            """
            boards/GR-0004.md
            +     found:
            +       - { at: R1, what: end cap dull, severity: minor }
            """
        );
        await year.StepAsync(
            "2026-10-10",
            "enter GR-0003 C1 21.1uF 1.3ohm 120Hz --lifted --on 2026-08-02 --by TS --instrument meter-1",
            """
            boards/GR-0003.md
            +   - date: 2026-08-02
            +     by: TS
            +     instrument: meter-1
            +     readings:
            +       - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 21.1 µF, esr: 1.3 Ω }
            """
        );
    }
}
