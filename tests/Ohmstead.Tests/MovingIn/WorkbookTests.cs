using System.IO.Compression;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.MovingIn;

/// <summary>Tables in the sheets of a workbook.</summary>
public sealed class WorkbookTests
{
    private static readonly string[] Headings = Workbook.Text("Board", "Day", "Ref", "Circuit", "Freq (Hz)", "Cap (uF)");

    [Fact]
    public void Days_and_figures_of_a_sheet_need_no_option_for_the_spreadsheet_knows_what_they_are()
    {
        using var copy = CollectionCopy.Make();
        Workbook.Write(
            copy.At("old.xlsx"),
            (
                "Readings",
                [
                    Headings,
                    [],
                    // 46309 is 2026-10-14, and 192.4 is kept as the binary number next to it.
                    [
                        .. Workbook.Text("SP-0019"),
                        Workbook.Day(46309),
                        .. Workbook.Text("C1", "out"),
                        Workbook.Figure("120"),
                        Workbook.Figure("192.40000000000001"),
                    ],
                ]
            )
        );
        var run = TakeIn(copy, "--readings", copy.At("old.xlsx"), "--decimals", "comma", "--write");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains(
            "  - date: 2026-10-14\n    readings:\n      - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 192.4 µF }\n",
            copy.Read("boards/SP-0019.md"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Of_several_sheets_one_is_named_and_a_refused_row_has_the_row_of_the_sheet()
    {
        using var copy = CollectionCopy.Make();
        Workbook.Write(
            copy.At("old.xlsx"),
            ("Shopping", [Workbook.Text("tin", "flux")]),
            ("My readings", [Headings, [], Workbook.Text("SP-0019", "2026-10-14", "C99", "out", "120", "1")])
        );
        var run = TakeIn(copy, "--readings", copy.At("old.xlsx"));
        Assert.Equal(
            (
                2,
                $"{copy.At("old.xlsx")} has 2 sheets\n  = name one: \"{copy.At("old.xlsx")}#Shopping\", "
                    + $"\"{copy.At("old.xlsx")}#My readings\"\n"
            ),
            (run.Exit, run.Error)
        );
        var named = TakeIn(copy, "--readings", copy.At("old.xlsx") + "#My readings", "--write");
        Assert.Contains(
            "#My readings, row 3, column 3 'Ref': SP-0019 has no part and no point 'C99'",
            named.Error,
            StringComparison.Ordinal
        );
        Assert.StartsWith("row,of,Board,", copy.Read("old-Myreadings.refused.csv"), StringComparison.Ordinal);
        Assert.Contains("has no sheet 'Mine'", TakeIn(copy, "--readings", copy.At("old.xlsx") + "#Mine").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_that_shows_an_error_is_no_empty_cell()
    {
        using var copy = CollectionCopy.Make();
        Workbook.Write(
            copy.At("old.xlsx"),
            ("Readings", [Headings, [.. Workbook.Text("SP-0019", "2026-10-14", "C1", "out"), Workbook.Wrong(), Workbook.Figure("192.4")]])
        );
        Assert.Equal(
            $"{copy.At("old.xlsx")}: cell E2 shows an error (sheet1)\n  = mend it in the spreadsheet, or save the sheet as CSV\n",
            TakeIn(copy, "--readings", copy.At("old.xlsx")).Error
        );
    }

    [Fact]
    public void What_only_looks_like_a_workbook_is_told_and_never_a_bug()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("text.xlsx", "Board,Day\n");
        using (var packed = ZipFile.Open(copy.At("empty.xlsx"), ZipArchiveMode.Create))
        {
            packed.CreateEntry("readme.txt");
        }

        using (var packed = ZipFile.Open(copy.At("broken.xlsx"), ZipArchiveMode.Create))
        {
            using var entry = new StreamWriter(packed.CreateEntry("xl/worksheets/sheet1.xml").Open());
            entry.Write("<!DOCTYPE x [<!ENTITY a \"aaaa\">]><worksheet>&a;");
        }

        foreach (var file in new[] { "text.xlsx", "empty.xlsx", "broken.xlsx" })
        {
            var run = TakeIn(copy, "--readings", copy.At(file));
            Assert.Equal(2, run.Exit);
            Assert.Contains("is no workbook that can be read", run.Error, StringComparison.Ordinal);
        }

        Assert.Contains("there is no file", TakeIn(copy, "--readings", copy.At("none.xlsx")).Error, StringComparison.Ordinal);
        copy.Write("old.xls", "x");
        Assert.Contains("save it as .xlsx or as CSV", TakeIn(copy, "--readings", copy.At("old.xls")).Error, StringComparison.Ordinal);
    }

    private static Run TakeIn(CollectionCopy copy, params string[] words) =>
        Run.Of(["take-in", "--in", copy.Root, "--as-of", "2026-11-25", .. words]);
}
