using System.Globalization;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Html;
using Ohmstead.Report.Labels;
using Ohmstead.Report.Sheets;
using Ohmstead.Report.Tests.Html;
using Ohmstead.Report.Tests.Pages;

namespace Ohmstead.Report.Tests.Labels;

public sealed class LabelPagesTests(DemoPages demo) : IClassFixture<DemoPages>
{
    private const string Record = """
        ---
        board: X-1
        title: Bench supply
        format: 1
        parts:
          - { ref: C1, kind: suppression capacitor, capacitance: 100 nF, safety_class: X2 }
          - { ref: C2, kind: aluminium electrolytic, capacitance: 47 µF, rated_voltage: 160 V }
        hazards:
          - { hazard: crazed suppressor, at: C1 }
          - { hazard: mains, at: T1 }
        bench:
          - date: 2026-03-02
            work:
              - { part: C1, did: removed, hazard: crazed suppressor, kept: bag X-1/1 }
              - { part: C2, did: replaced, new_part: { kind: aluminium electrolytic, capacitance: 68 µF }, kept: bag X-1/1 }
          - date: 2026-05-02
            work:
              - { part: C2, did: removed, kept: bag X-1/2 }
        ---

        """;

    private static readonly PublishedAt Site = new(new("https://boards.example/saltmarsh/"));

    private static readonly DateOnly Today = new(2026, 11, 25);

    public static TheoryData<int> Sheets => [.. Enumerable.Range(0, LabelSheet.Common.Count)];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Every_code_of_the_demo_is_read_by_another_reader_and_leads_to_a_place_that_is_there(int sheet)
    {
        Label[] labels = [.. OfDemo(Site)];
        Assert.InRange(labels.Length, 60, 200);
        var page = Written(LabelSheet.Common[sheet], labels);
        var boxes = page.QuerySelectorAll(".label");
        Assert.Equal(labels.Length, boxes.Length);
        foreach (var (label, box) in labels.Zip(boxes))
        {
            Assert.Equal(label.Number, box.QuerySelector(".number p")!.Words());
            var drawing = box.QuerySelector("svg")!;
            var side = int.Parse(drawing.GetAttribute("viewBox")!.Split(',')[2], CultureInfo.InvariantCulture);
            var read = ReadCode.Of(ReadCode.Drawn(drawing.QuerySelector("path")!.GetAttribute("d")!, side))?.Text;
            Assert.True(read is not null, label.Address);
            Assert.Equal(label.Address, read);
            Assert.StartsWith(Site.Root.AbsoluteUri, read, StringComparison.Ordinal);
            var local = read[Site.Root.AbsoluteUri.Length..].Split('#');
            Assert.True(demo.Pages.TryGetValue(local[0], out var leadsTo), local[0]);
            Assert.True(local.Length == 1 || leadsTo.GetElementById(Uri.UnescapeDataString(local[1])) is not null, read);
        }
    }

    [Fact]
    public void A_reader_that_must_find_the_code_in_a_picture_finds_every_one_of_the_demo() =>
        Assert.All(OfDemo(Site).Select(label => label.Address!), address =>
            Assert.Equal(address, ReadCode.Found(ReadCode.Drawn(QrCode.Of(address))))
        );

    [Theory]
    [MemberData(nameof(Sheets))]
    public void No_module_is_printed_finer_than_a_third_of_a_millimetre(int sheet)
    {
        var page = Written(LabelSheet.Common[sheet], [.. OfDemo(Site)]);
        var style = page.QuerySelector("style")!.TextContent;
        var rule = style[style.IndexOf(".code {", StringComparison.Ordinal)..];
        var start = rule.IndexOf(" width: ", StringComparison.Ordinal) + 8;
        var width = decimal.Parse(rule[start..rule.IndexOf("mm", start, StringComparison.Ordinal)], CultureInfo.InvariantCulture);
        Assert.All(page.QuerySelectorAll("svg"), drawing =>
            Assert.InRange(width / int.Parse(drawing.GetAttribute("viewBox")!.Split(',')[2], CultureInfo.InvariantCulture), 0.33m, 2m)
        );
    }

    [Fact]
    public void An_address_that_is_too_long_for_a_label_gets_no_code_and_the_number_is_there()
    {
        var label = new Label("X-1", "Bench supply", [], [], $"https://boards.example/{new string('a', 180)}/boards/X-1.html");
        var small = new LabelSheet(Paper.A4, 5, 13, 38.1m, 21.2m);
        Assert.True(new LabelPages(small).IsTooFine(label));
        var page = Written(small, [label]);
        Assert.Empty(page.QuerySelectorAll("svg"));
        Assert.Equal("X-1", page.QuerySelector(".plain .number p")!.Words());
        Assert.False(new LabelPages(new(Paper.A4, 1, 1, 150m, 100m)).IsTooFine(label with { Address = Site.Board("X-1") }));
    }

    [Fact]
    public void Without_an_address_there_is_no_code_and_no_address_is_made_up()
    {
        var page = Written(LabelSheet.Common[0], [.. OfDemo(null)]);
        Assert.Empty(page.QuerySelectorAll("svg"));
        Assert.DoesNotContain("http", page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void No_label_tells_a_state(int sheet)
    {
        var text = Written(LabelSheet.Common[sheet], [.. OfDemo(Site)]).Body!.Words();
        Assert.DoesNotContain("fit to run", text, StringComparison.Ordinal);
        Assert.DoesNotContain("proof due", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_is_labelled_with_what_can_still_hurt_and_a_bag_with_what_was_taken_out_and_can_hurt_in_it()
    {
        var board = Judged.Board(Record, today: Today);
        var make = new LabelMaker(Assessment.Workshops.Workshop.Empty, Site, Today);
        Assert.Equal(["mains"], make.Of(board).Cautions);
        Label[] bags = [.. make.Originals(board)];
        Assert.Equal(["X-1 C1", "X-1 C2", "X-1 C2"], bags.Select(bag => bag.Number));
        Assert.Equal(["crazed suppressor"], bags[0].Cautions);
        Assert.Empty(bags[1].Cautions);
        Assert.Equal("out 2026-03-02", bags[1].Facts[0]);
        Assert.Contains("47 µF", bags[1].Title, StringComparison.Ordinal);
        // What came out the second time is what was put in the first time.
        Assert.Contains("68 µF", bags[2].Title, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void What_can_hurt_is_told_whole_or_told_to_be_in_the_record(int sheet)
    {
        string[] kinds =
        [
            "mains",
            "charged capacitor",
            "picture tube",
            "oil-filled part",
            "selenium rectifier",
            "leaking cell",
            "asbestos",
        ];
        for (var count = 1; count <= kinds.Length; count++)
        {
            var page = Written(LabelSheet.Common[sheet], [new("X-1", "Supply", ["a fact"], [.. kinds[..count]], Site.Board("X-1"))]);
            var told = string.Join(' ', page.QuerySelectorAll(".caution p").Select(line => line.Words()));
            Assert.True(
                told == $"! {string.Join("; ", kinds[..count])}" || told == $"! {count} hazards: see record" || told == "! see record",
                told
            );
        }
    }

    [Theory]
    [InlineData("Ohm & Sons <u>a</u> title of a board that nobody would ever write in one breath and that goes on and on")]
    [InlineData("Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft")]
    [InlineData("電子気圧計サーボ増幅器の予備基板")]
    public void A_long_title_ends_at_a_whole_word_with_an_ellipsis_and_stays_text(string title)
    {
        var page = Written(LabelSheet.Common[4], [new("X-1", title, ["a fact"], [], Site.Board("X-1"))]);
        Assert.Empty(page.QuerySelectorAll("u"));
        var lines = page.QuerySelectorAll(".name").Select(line => line.Words()).ToArray();
        Assert.InRange(lines.Length, 1, 2);
        Assert.EndsWith("…", lines[^1], StringComparison.Ordinal);
        var kept = string.Join(title.Contains(' ', StringComparison.Ordinal) ? " " : "", lines).TrimEnd('…').TrimEnd();
        Assert.StartsWith(kept, title, StringComparison.Ordinal);
        Assert.True(!title.Contains(' ', StringComparison.Ordinal) || title[kept.Length] == ' ', kept);
    }

    [Fact]
    public void A_number_is_never_cut_and_one_that_has_no_room_is_refused()
    {
        var small = new LabelPages(LabelSheet.Common[4]);
        var number = $"SAMMLUNG-{new string('0', 20)}-17";
        var label = new Label(number, "x", [], [], null);
        Assert.False(small.LacksRoom(label));
        Assert.Equal(
            number,
            string.Concat(Written(LabelSheet.Common[4], [label]).QuerySelectorAll(".number p").Select(line => line.Words()))
        );
        Assert.True(small.LacksRoom(label with { Number = new string('W', 60) }));
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(5, 4)]
    public void The_labels_that_were_used_up_stay_free(int first, int free)
    {
        var page = Written(LabelSheet.Common[0], [.. OfDemo(Site).Take(3)], first);
        Assert.Equal(free, page.QuerySelector(".sheet")!.Children.TakeWhile(child => !child.ClassList.Contains("label")).Count());
        Assert.Equal(free + 3, page.QuerySelector(".sheet")!.Children.Length);
    }

    [Fact]
    public void A_sheet_that_is_full_goes_on_on_the_next() =>
        Assert.Equal(
            [21, 2],
            Written(LabelSheet.Common[0], [.. OfDemo(Site).Take(20)], 4).QuerySelectorAll(".sheet").Select(sheet => sheet.Children.Length)
        );

    [Fact]
    public void It_stands_alone_and_loads_nothing()
    {
        var page = Written(LabelSheet.Common[0], [.. OfDemo(Site)]);
        Assert.Empty(page.QuerySelectorAll("script, link, img, iframe, object, [src], [href], [style]"));
        Assert.StartsWith(
            "default-src 'none'; style-src 'sha256-",
            page.QuerySelector("meta[http-equiv='Content-Security-Policy']")!.GetAttribute("content"),
            StringComparison.Ordinal
        );
        var style = page.QuerySelector("style")!.TextContent;
        Assert.All(page.All.SelectMany(element => element.ClassList).Distinct(), name =>
            Assert.Contains($".{name} ", style, StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData(3, 7, 63.5, 38.1, 30, "3 columns", false)]
    [InlineData(3, 7, 63.5, 38.1, 2.54, "", true)]
    [InlineData(3, 8, 63.5, 38.1, 2.54, "mm down", false)]
    [InlineData(3, 7, 20, 38.1, 2.54, "no room for a number", false)]
    [InlineData(0, 7, 63.5, 38.1, 2.54, "no sheet", false)]
    public void A_sheet_that_is_larger_than_its_paper_is_refused(
        int columns,
        int rows,
        double wide,
        double high,
        double gap,
        string why,
        bool isOne
    )
    {
        var sheet = new LabelSheet(Paper.A4, columns, rows, (decimal)wide, (decimal)high) { GapAcross = (decimal)gap };
        Assert.Equal(isOne, sheet.Checked().Is(out _, out var refusal));
        Assert.True(isOne || why == "3 columns" || refusal!.Contains(why, StringComparison.Ordinal), refusal);
    }

    [Fact]
    public void Every_common_sheet_is_one() => Assert.All(LabelSheet.Common, sheet => Assert.Null(sheet.Checked().Refusal));

    private IEnumerable<Label> OfDemo(PublishedAt? site)
    {
        var make = new LabelMaker(demo.Workshop, site, Today);
        return [.. demo.Boards.Select(make.Of), .. demo.Boards.SelectMany(make.Originals), .. demo.Workshop.Lots.Values.Select(make.Of)];
    }

    private static IDocument Written(LabelSheet sheet, IReadOnlyList<Label> labels, int first = 1)
    {
        using var buffer = new PageBuffer();
        new LabelPages(sheet).Write(buffer, labels, first);
        return new HtmlParser(new HtmlParserOptions { IsStrictMode = true }).ParseDocument(Encoding.UTF8.GetString(buffer.Written));
    }
}
