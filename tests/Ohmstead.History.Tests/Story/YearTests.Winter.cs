namespace Ohmstead.History.Tests.Story;

/// <content>Winter: a board gets the number of the new book, sheets are printed, the year ahead is looked at, and the pages are
/// built.</content>
public sealed partial class YearTests
{
    private static async Task WinterAsync(YearStory year)
    {
        const string evening = "2027-01-16";
        await year.StepAsync(
            evening,
            "renumber GR-0003 GR-0103",
            """
            rename from boards/GR-0003.md
            rename to boards/GR-0103.md
            boards/GR-0103.md
            - board: GR-0003
            + board: GR-0103
            + formerly:
            +   - { number: GR-0003, until: 2027-01-16 }
            """
        );
        await year.StepAsync(evening, "sheet GR-0004", string.Empty);
        Assert.Contains("charged capacitor", year.Read("GR-0004-sheet.html"), StringComparison.Ordinal);
        await year.StepAsync(evening, "ahead . --calendar looks.ics", string.Empty);
        Assert.Contains("BEGIN:VEVENT", year.Read("looks.ics"), StringComparison.Ordinal);
        await year.StepAsync(evening, "report . --to report", string.Empty);
        Assert.Contains("GR-0103", year.Read("report/boards/GR-0103.html"), StringComparison.Ordinal);
        Assert.Contains("GR-0103", year.Read("report/boards/GR-0003.html"), StringComparison.Ordinal);
    }

    private static async Task NextSpringAsync(YearStory year)
    {
        const string looked = "2027-03-20";
        await year.StepAsync(
            looked,
            "bench GR-0004 --by RK --instrument meter-1 --in-circuit",
            """
            boards/GR-0004.md
            +   - date: 2027-03-20
            +     by: RK
            +     instrument: meter-1
            +     proof:
            +       - { point: +24V, voltage: 24.2 V, ripple: 7 mV }
            """,
            ("C1 [", "+24V 24.2 7\r"),
            ("the last of them", "")
        );
        Assert.Contains("GR-0004", await year.StepAsync(looked, "boards --brief", string.Empty), StringComparison.Ordinal);
    }
}
