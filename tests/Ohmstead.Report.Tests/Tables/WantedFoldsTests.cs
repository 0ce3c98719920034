using System.Globalization;
using System.Text;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;
using Ohmstead.Report.Tests.Pages;
using Ohmstead.Yaml;

namespace Ohmstead.Report.Tests.Tables;

/// <summary>What is told of an open place is what would be worked out for it alone, whoever asked before.</summary>
public sealed class WantedFoldsTests
{
    private const string Filter =
        "kind: aluminium electrolytic, role: decoupling, capacitance: 100 µF, tolerance: ±20 %, rated_voltage: 25 V";

    private const string Stock = """
        lots:
          - { lot: L-1, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V, received: 2026-01-28, quantity: 2 }
          - { lot: L-2, kind: metal film resistor, resistance: 4.7 kΩ, tolerance: 1 %, power: 0.5 W, received: 2026-01-28, quantity: 9 }

        """;

    // Places that differ in one thing only, and some that come again on another line.
    private static readonly string[] Places =
    [
        Filter,
        Filter + ", working_voltage: 12 V",
        Filter + ", working_voltage: 12.0 V",
        Filter + ", esr_limit: 0.5 Ω",
        "kind: metal film resistor, resistance: 4.7 kΩ",
        "kind: metal film resistor, resistance: 4.7 kΩ, power: 1 W",
        Filter,
        Filter + ", working_voltage: 12 V",
        Filter + ", maker: Ostrel, date_code: \"7549\"",
    ];

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(1_000)]
    public void A_place_is_told_the_same_whoever_asked_before(int most)
    {
        var (places, drawer) = Read();
        var shared = new WantedFolds(drawer, most);
        var told = places.Select(place => Told(shared, place)).ToArray();
        Assert.Equal(places.Select(place => Told(new WantedFolds(drawer, 0), place)), told);
        Assert.Equal(told[0], told[6]);
        Assert.Equal(told[0], told[8]);
        // 12 V and 12.0 V are asked for apart and told alike.
        Assert.Equal(5, told.Distinct().Count());
    }

    [Fact]
    public void What_is_told_goes_where_its_place_was_left_open()
    {
        var (places, drawer) = Read();
        var folds = new WantedFolds(drawer);
        var page = "one two three"u8;

        // In whatever pieces the page comes back, cut just before or behind a place too.
        for (var cut = 0; cut <= page.Length; cut++)
        {
            using var buffer = new PageBuffer();
            var filled = new FilledPage(buffer, [new(3, places[0]), new(7, places[4])], folds);
            filled.Append(page[..cut]);
            filled.Append(page[cut..]);
            Assert.Equal($"one{Told(folds, places[0])} two{Told(folds, places[4])} three", Encoding.UTF8.GetString(buffer.Written));
        }
    }

    private static string Told(WantedFolds folds, FitPlace place)
    {
        using var buffer = new PageBuffer();
        folds.Write(buffer, place);
        return Encoding.UTF8.GetString(buffer.Written);
    }

    private static (FitPlace[] Places, Drawer Drawer) Read()
    {
        var nodes = new YamlNodeReader();
        NodeReading Nodes(string path, string text, FileForm form) =>
            nodes.Read(path, Encoding.UTF8.GetBytes(text), form, ReadingLimits.Usual);
        var stock = FileBinding.Stock("stock.yaml", Nodes("stock.yaml", Stock, FileForm.Yaml));
        var parts = Places.Select((place, at) => string.Create(CultureInfo.InvariantCulture, $"  - {{ ref: X{at}, {place} }}\n"));
        var record = $"---\nboard: SP-0001\ntitle: Tide-gauge logger\nparts:\n{string.Concat(parts)}---\n";
        var board = FileBinding.Board("boards/SP-0001.md", Nodes("boards/SP-0001.md", record, FileForm.Markdown));
        Assert.Empty(stock.Findings.Concat(board.Findings));
        var workshop = new Workshop(CollectionFile.Nameless, null, stock.File, []);
        var assessed = Judged.Board(board.File!, workshop);
        return (
            [.. assessed.Places.Select(place => FitPlace.From(assessed, place))],
            Drawer.Count(workshop, BoardSummary.UseOfLots([BoardSummary.From(assessed)]), new DateOnly(2026, 11, 25))
        );
    }
}
