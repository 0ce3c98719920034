using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Ohmstead.Browser.Tests;

/// <summary>Labels as they come out of the printer: where each letter stands, in millimetres, read out of the PDF.</summary>
public sealed class LabelPrintTests(ReportFixture report)
{
    private const double OfPoint = 25.4 / 72;

    private const string Awkward =
        "Ww@%mM WWWWWWWWWWWWWWWWWWWWWWWWWWWWWW 電子気圧計 \u0646\u0635 \ud83d\udd0c\ud83d\udd0c Ångström & <Sons> "
        + "\u0130\u0130\u0130\u0130 of 100 µF ±20 %";

    // The measures of each sheet: columns, rows, width, height, gap across, paper; the margins follow: a sheet is alike on both sides.
    [Theory]
    [InlineData("A4", 3, 7, 63.5, 38.1, 2.54, 210, 297)]
    [InlineData("A4", 3, 8, 70, 37, 0, 210, 297)]
    [InlineData("A4", 2, 7, 99.1, 38.1, 2.54, 210, 297)]
    [InlineData("A4", 4, 10, 48.5, 25.4, 0, 210, 297)]
    [InlineData("A4", 5, 13, 38.1, 21.2, 2.54, 210, 297)]
    [InlineData("Letter", 3, 10, 66.7, 25.4, 3.18, 215.9, 279.4)]
    [InlineData("Letter", 2, 5, 101.6, 50.8, 4.76, 215.9, 279.4)]
    public async Task Every_letter_of_a_label_stands_on_its_label(
        string paper,
        int columns,
        int rows,
        double width,
        double height,
        double gap,
        double wide,
        double high
    )
    {
        const int first = 3;
        using var printed = await PrintedAsync([
            "--paper",
            paper,
            "--size",
            FormattableString.Invariant($"{width}x{height}"),
            "--from",
            $"{first}",
        ]);
        var left = (wide - (columns * width) - ((columns - 1) * gap)) / 2;
        var top = (high - (rows * height)) / 2;
        var boards = Directory.GetFiles(Path.Combine(Repository.Root, "records", "boards"), "*.md").Length + 1;
        var sheets = (boards + first - 1 + (columns * rows) - 1) / (columns * rows);
        Assert.Equal(sheets, printed.NumberOfPages);
        var said = new Dictionary<int, string>();
        foreach (var sheet in printed.GetPages())
        {
            Assert.InRange(sheet.Width * OfPoint, wide - 0.2, wide + 0.2);
            Assert.InRange(sheet.Height * OfPoint, high - 0.2, high + 0.2);
            foreach (var letter in sheet.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)))
            {
                var (column, row) = LabelOf(letter, sheet);
                var label = ((sheet.Number - 1) * columns * rows) + (row * columns) + column;
                said[label] = said.GetValueOrDefault(label) + letter.Value;
            }
        }

        // The labels before the first are free, and each board has one.
        Assert.Equal(Enumerable.Range(first - 1, boards), said.Keys.Order());
        Assert.All(said.OrderBy(pair => pair.Key).Skip(1).Index(), one =>
            Assert.EndsWith(FormattableString.Invariant($"SP-{one.Index + 1:0000}"), one.Item.Value, StringComparison.Ordinal)
        );

        (int Column, int Row) LabelOf(Letter letter, Page sheet)
        {
            var (from, to) = (letter.StartBaseLine.X * OfPoint, letter.EndBaseLine.X * OfPoint);
            var down = (sheet.Height - letter.StartBaseLine.Y) * OfPoint;
            var (column, row) = ((int)((from - left) / (width + gap)), (int)((down - top) / height));
            // One millimetre from each edge: a sheet lies so far off in many a printer.
            Assert.InRange(from, left + (column * (width + gap)) + 1, left + (column * (width + gap)) + width - 1);
            Assert.InRange(to, left + (column * (width + gap)) + 1, left + (column * (width + gap)) + width - 1);
            Assert.InRange(down, top + (row * height) + 1, top + (row * height) + height - 1);
            return (column, row);
        }
    }

    [Theory]
    [InlineData("63.5x38.1")]
    [InlineData("38.1x21.2")]
    public async Task Whatever_a_record_says_nothing_is_hidden_at_the_edge_of_its_label(string size)
    {
        using var folder = new Scratch();
        await WrittenAsync(folder, ["--size", size]);
        await using var view = await report.ViewAsync();
        await view.Page.GotoAsync(new Uri(folder.Page).AbsoluteUri);
        Assert.Empty(
            await view.Page.EvaluateAsync<string[]>(
                "() => [...document.querySelectorAll('.words, .number, .caution, .label')]"
                    + ".filter(box => box.scrollWidth > box.clientWidth + 1 || box.scrollHeight > box.clientHeight + 1)"
                    + ".map(box => `${box.className}: ${box.textContent}`)"
            )
        );
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task Each_board_of_the_demo_is_one_sheet_of_paper(string paper)
    {
        ReportPage[] pages = [.. report.Pages.Where(page => page.Name.StartsWith("sheets/", StringComparison.Ordinal))];
        Assert.InRange(pages.Length, report.Boards.Count, report.Boards.Count + 1);
        var sheets = await report.LookAsync(pages, async (view, page) =>
        {
            await view.OpenAsync(page);
            return (await PrintedSheets.OfAsync(view, paper)).Count;
        });
        Assert.All(sheets, count => Assert.Equal(1, count));
    }

    // More of everything than any board of the demo has, each in many words.
    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task A_board_of_which_everything_is_said_and_much_of_it_is_one_sheet_too(string paper)
    {
        using var folder = new Scratch();
        const string many =
            "a long remark of many words that goes on and on until nobody reads it any more and then a little further still";
        var record = new StringBuilder();
        record.Append($"---\nboard: Z-1\ntitle: {many}\nserial: {many}\nmaker: {many}\nrevision: {many}\nmade: 1978\nnote: {many}\n");
        record.Append($"arrived: {{ date: 2001-01-01, from: {many}, complaint: {many} }}\nparts:\n");
        for (var at = 1; at <= 60; at++)
        {
            record.Append(
                $"  - {{ ref: C{at}, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 400 V }}\n"
            );
        }

        record.Append("hazards:\n");
        foreach (
            var kind in "mains;charged capacitor;picture tube;leaking cell;asbestos;selenium rectifier;beryllia;mercury;radium".Split(';')
        )
        {
            record.Append($"  - {{ hazard: {kind}, at: {many} }}\n");
        }

        record.Append("bench:\n");
        for (var day = 1; day <= 28; day++)
        {
            record.Append(
                $"  - date: 2026-02-{day:00}\n    found:\n      - {{ at: C{day}, what: {many}, severity: major }}\n    readings:\n"
            );
            record.Append($"      - {{ part: C{day}, circuit: out, frequency: 120 Hz, capacitance: 100 µF }}\n    work:\n");
            record.Append($"      - {{ at: {many}, did: cleaned, with: isopropanol }}\n");
        }

        record.Append("waiting:\n");
        for (var day = 1; day <= 9; day++)
        {
            record.Append($"  - {{ since: 2026-03-0{day}, for: {many}, blocks: {many} }}\n");
        }

        Directory.CreateDirectory(Path.Combine(folder.Root, "records", "boards"));
        await File.WriteAllTextAsync(
            Path.Combine(folder.Root, "records", "boards", "Z-1.md"),
            record.Append("---\n").ToString(),
            TestContext.Current.CancellationToken
        );
        await File.WriteAllTextAsync(
            Path.Combine(folder.Root, "records", "collection.yaml"),
            $"collection: {many}\nsite: https://boards.example/\nlook_every: 24 months\n",
            TestContext.Current.CancellationToken
        );
        var pages = await ReportPage.BuildAsync(Path.Combine(folder.Root, "records"), Path.Combine(folder.Root, "pages"));
        await using var view = await report.ViewAsync();
        foreach (var page in pages.Where(page => page.Name.StartsWith("sheets/", StringComparison.Ordinal)))
        {
            await view.OpenAsync(page);
            var sheets = await PrintedSheets.OfAsync(view, paper);
            Assert.True(sheets.Count == 1, $"{page} is {sheets.Count} sheets of {paper}");
            Assert.Contains("Z-1", string.Join(' ', sheets[0]), StringComparison.Ordinal);
        }
    }

    private async Task<PdfDocument> PrintedAsync(string[] words)
    {
        using var folder = new Scratch();
        await WrittenAsync(folder, words);
        await using var view = await report.ViewAsync();
        await view.Page.GotoAsync(new Uri(folder.Page).AbsoluteUri);
        return PdfDocument.Open(await view.Page.PdfAsync(new() { PreferCSSPageSize = true }));
    }

    // The demo, and a board whose title is as awkward as any.
    private static async Task WrittenAsync(Scratch folder, string[] words)
    {
        var records = Path.Combine(Repository.Root, "records");
        foreach (var file in new[] { "*.md", "*.yaml" }.SelectMany(kind => Directory.GetFiles(records, kind, SearchOption.AllDirectories)))
        {
            var target = Path.Combine(folder.Root, "records", Path.GetRelativePath(records, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        await File.WriteAllTextAsync(
            Path.Combine(folder.Root, "records", "boards", "AA-0001.md"),
            $"---\nboard: AA-0001\ntitle: \"{Awkward}\"\nmaker: \"{Awkward}\"\n"
                + "hazards: [{ hazard: mains }, { hazard: radium }, { hazard: asbestos }]\n---\n"
        );
        var run = await Command.RunAsync(
            "dotnet",
            [
                Repository.Program,
                "labels",
                "--in",
                Path.Combine(folder.Root, "records"),
                "--as-of",
                "2026-11-25",
                "--site",
                "https://boards.example/saltmarsh/",
                "--to",
                folder.Page,
                .. words,
            ]
        );
        Assert.True(run.ExitCode == 0, run.Output);
    }

    private sealed class Scratch : IDisposable
    {
        public string Root { get; } = Directory.CreateTempSubdirectory("ohmstead-labels-").FullName;

        public string Page => Path.Combine(Root, "labels.html");

        public void Dispose() => Directory.Delete(Root, recursive: true);
    }
}
