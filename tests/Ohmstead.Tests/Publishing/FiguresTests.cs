using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;
using Ohmstead.Electronics.Quantities;
using Ohmstead.MovingIn;
using Ohmstead.Publishing;
using Ohmstead.Report.Html;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Publishing;

/// <summary>The figures in the tables for spreadsheets, held against the words beside them.</summary>
public sealed class FiguresTests
{
    private const string Day = "2026-11-25";

    // By hand: 391 nF is 0.000000391 F; ±20 % of 470 nF allows 376 nF to 564 nF.
    private const string Board = """
        ---
        board: SP-0001
        title: Lamp dimmer
        parts:
          - { ref: C1, kind: polypropylene film, capacitance: 470 nF, tolerance: ±20 %, rated_voltage: 250 V }
          - { ref: R1, kind: carbon film resistor, resistance: 4k7 }
        bench:
          - date: 2026-03-14
            by: RK
            readings:
              - { part: C1, state: as found, circuit: out, capacitance: 391 nF, instrument: bridge-1 }
              - { part: C1, state: as found, circuit: out, insulation: "> 20 MΩ" }
              - { part: R1, state: as found, circuit: out, resistance: 4.81 kΩ }
        ---
        """;

    // At 391 nF the bridge is good for a = 1 % of 391 nF + 3 nF = 6.91 nF, spread evenly, so that U = 2 · 6.91 nF / √3 = 7.98 nF (GUM,
    // 4.3.7, from memory). 391 nF - 376 nF = 15 nF is 3.76 standard uncertainties: the normal integral is 0.99992.
    private const string Instruments = """
        instruments:
          - id: bridge-1
            what: bridge
            calibrations:
              - { date: 2026-01-05, valid: 12 months }
            accuracy:
              - { measures: capacitance, error: 1 %, digits: 3, step: 1 nF, up_to: 10 µF }
        """;

    [Fact]
    public void A_reading_is_a_figure_beside_its_words()
    {
        using var copy = Made();
        Assert.Equal(
            "SP-0001,2026-03-14,RK,C1,as found,out,bridge-1,capacitance,391 nF,0.000000391,F,0.00000000798,0.000000376,"
                + "0.000000564,delivery limit,inside,0.9999,11",
            Row(copy, "readings.csv", "391 nF")
        );
    }

    // What the meter did not show is no figure: a bound stays words.
    [Fact]
    public void A_bound_is_no_figure()
    {
        using var copy = Made();
        var cells = Row(copy, "readings.csv", "> 20 MΩ").Split(',');
        Assert.Equal(["insulation resistance", "> 20 MΩ", "", "Ω"], cells[7..11]);
    }

    [Fact]
    public void A_part_is_told_with_its_marked_value_and_what_its_tolerance_allows()
    {
        using var copy = Made();
        Assert.StartsWith("SP-0001,C1,", Row(copy, "parts.csv", ",C1,"), StringComparison.Ordinal);
        Assert.Contains(",0.00000047,F,0.000000376,0.000000564,original,", Row(copy, "parts.csv", ",C1,"), StringComparison.Ordinal);
        // No tolerance is written: its limits are not known.
        Assert.Contains(",4700,Ω,,,original,", Row(copy, "parts.csv", ",R1,"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_lot_is_told_with_what_is_left_and_until_when()
    {
        using var copy = Made();
        copy.Write(
            "stock.yaml",
            """
            lots:
              - lot: L-1
                kind: aluminium electrolytic
                capacitance: 100 µF
                tolerance: ±20 %
                rated_voltage: 25 V
                quantity: 10
                received: 2026-01-08
                shelf_life: 2 years
              - { lot: L-2, kind: polyester film, capacitance: 100 nF, rated_voltage: 100 V }
            bench:
              - date: 2026-02-01
                by: RK
                scrapped:
                  - { lot: L-1, count: 3, because: bent leads }
            """
        );
        Publish(copy);
        // 10 came, 3 went to the bin, none was fitted; two years from 8 January 2026.
        Assert.EndsWith(
            ",0.0001,F,0.00008,0.00012,10,0,2026-01-08,,3,,7,2028-01-08",
            Row(copy, "lots.csv", "L-1,"),
            StringComparison.Ordinal
        );
        // How many came is not written, and film does not age on a shelf.
        Assert.EndsWith(",0.0000001,F,,,,0,,,0,,,", Row(copy, "lots.csv", "L-2,"), StringComparison.Ordinal);
    }

    // Every figure of the demo, by the reader of records: the words as written and the figure are one quantity.
    [Fact]
    public void Every_figure_of_the_demo_is_the_quantity_that_its_words_say()
    {
        using var copy = DataFilesTests.Report();
        var compared = 0;
        foreach (var row in Table(copy, "readings"))
        {
            if (row["value"].Length == 0)
            {
                Assert.Matches("^(?:[<>≤≥] .*|open|short|over range|pass|fail)$", row["written"]);
                continue;
            }

            // A number and a ratio have no unit: the words are the one or the other.
            var read = Enum.GetValues<Dimension>()
                .Where(one => QuantityText.BaseUnit(one) == row["unit"])
                .Select(one => Reads(row["written"], one));
            Assert.Equal(Number(row["value"]), read.First(quantity => quantity is not null));
            compared++;
        }

        Assert.True(compared > 100, compared.ToString(CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Every_limit_of_the_demo_is_the_one_that_the_verdict_tells()
    {
        using var copy = DataFilesTests.Report();
        var page = Table(copy, "readings").Where(row => row["low"].Length + row["high"].Length > 0).ToArray();
        Assert.NotEmpty(page);
        Assert.All(page, row =>
        {
            var (low, high, value) = (Number(row["low"]), Number(row["high"]), Number(row["value"]));
            if (row["outcome"] is "inside" && value is not null)
            {
                Assert.True(low is null || low <= value, string.Join(',', row.Values));
                Assert.True(high is null || value <= high, string.Join(',', row.Values));
            }

            if (row["outcome"] is "outside" && value is not null)
            {
                Assert.True(value < low || value > high, string.Join(',', row.Values));
            }
        });
    }

    // What a met obligation does not tell again stands where it says: no figure is lost.
    [Fact]
    public void A_reading_that_meets_an_obligation_is_told_among_the_readings()
    {
        using var copy = DataFilesTests.Report();
        var readings = Table(copy, "readings")
            .Select(row => (row["board"], row["line"], Told: $"{row["measured"]}: {row["outcome"]}"))
            .ToHashSet();
        var kinds = Table(copy, "kinds").ToDictionary(row => row["kind"], row => row["met"], StringComparer.Ordinal);
        var met = Table(copy, "obligations").Where(row => row["standing"] == "met").ToArray();
        var told = met.Where(row => row["kind"] == "reading-answered" && row["text"].Length == 0).ToArray();
        Assert.True(told.Length > 50, told.Length.ToString(CultureInfo.InvariantCulture));
        Assert.All(told, row => Assert.Contains((row["board"], row["line"], row["evidence"]), readings));
        // A lot is read in the drawer: of that no table of readings tells, and the words stay.
        Assert.All(met.Where(row => row["record"].Length > 0), row =>
            Assert.DoesNotContain((row["board"], row["line"], row["evidence"]), readings)
        );
        Assert.All(met.Where(row => row["text"].Length == 0), row => Assert.NotEmpty(kinds[row["kind"]]));
    }

    [Fact]
    public void No_figure_is_written_with_a_power_of_ten()
    {
        using var copy = DataFilesTests.Report();
        string[] figures = ["value", "low", "high", "uncertainty", "probability_inside"];
        foreach (var table in new[] { "readings", "parts", "lots" })
        {
            Assert.All(Table(copy, table).SelectMany(row => figures.Select(name => row.GetValueOrDefault(name, string.Empty))), cell =>
                Assert.Matches(@"^(?:-?[0-9]+(?:\.[0-9]*[1-9])?)?$", cell)
            );
        }
    }

    // Without the mark a spreadsheet reads Ω as two letters of its own code page.
    [Fact]
    public void Every_table_begins_with_the_mark_of_UTF_8()
    {
        using var copy = DataFilesTests.Report();
        Assert.All(Directory.GetFiles(copy.At("pages"), "*.csv"), file => Assert.Equal([0xEF, 0xBB, 0xBF], File.ReadAllBytes(file)[..3]));
    }

    [Fact]
    public void What_was_written_is_read_again_by_whoever_takes_tables_in()
    {
        using var copy = Made();
        var (table, fault, _) = TableReader.Read(copy.At("pages/readings.csv"));
        Assert.Null(fault);
        // The mark belongs to no heading.
        Assert.Equal("board", table!.Cells.Rows[0].Cells[0]);
        Assert.Equal("0.000000391", table.Cells.Rows[1].Cells[9]);
    }

    [Fact]
    public void A_table_for_the_next_program_has_no_mark()
    {
        using var copy = Made();
        var listed = Run.Of("boards", copy.Root, "--form", "csv", "--as-of", Day).Out;
        Assert.NotEqual('\uFEFF', listed[0]);
    }

    [Theory]
    [InlineData("0.00000000544", "544e-11")]
    [InlineData("-0.0047", "-47e-4")]
    [InlineData("0.5", "0.5")]
    [InlineData("12.5", "12.5")]
    [InlineData("0", "0")]
    [InlineData("4700", "4700")]
    [InlineData("0.0001", "1e-4")]
    public void A_number_in_the_file_of_a_board_is_as_exact_and_no_longer(string plain, string expected)
    {
        using var bytes = new PageBuffer();
        JsonCell.AppendShort(bytes, Records.Shapes.ValueKind.Number, plain);
        var written = System.Text.Encoding.UTF8.GetString(bytes.Written);
        Assert.Equal(expected, written);
        using var read = System.Text.Json.JsonDocument.Parse(written);
        Assert.Equal(Number(plain), read.RootElement.GetDecimal());
    }

    private static CollectionCopy Made()
    {
        var copy = CollectionCopy.Empty();
        copy.Write("collection.yaml", "collection: Boards\n");
        copy.Write("instruments.yaml", Instruments);
        copy.Write("boards/SP-0001.md", Board);
        Publish(copy);
        return copy;
    }

    private static void Publish(CollectionCopy copy)
    {
        var run = Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", Day);
        Assert.True(run.Exit is 0, run.Out + run.Error);
    }

    // The one line of a table that holds some words.
    private static string Row(CollectionCopy copy, string table, string words) =>
        Assert.Single(copy.Read("pages/" + table).Split("\r\n"), line => line.Contains(words, StringComparison.Ordinal));

    private static IEnumerable<Dictionary<string, string>> Table(CollectionCopy copy, string name)
    {
        using var reader = new StringReader(copy.Read($"pages/{name}.csv"));
        using var parser = new CsvParser(reader, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n" });
        Assert.True(parser.Read());
        var heads = parser.Record!;
        while (parser.Read())
        {
            // Words that a spreadsheet would take for a formula have an apostrophe before them; figures never have.
            yield return heads
                .Zip(parser.Record!)
                .ToDictionary(
                    cell => cell.First,
                    cell => cell is { First: "written", Second: ['\'', .. var words] } ? words : cell.Second,
                    StringComparer.Ordinal
                );
        }
    }

    private static decimal? Reads(string words, Dimension dimension) =>
        QuantityText.Parse(words, dimension).Is(out var quantity, out _) ? quantity.Value : null;

    private static decimal? Number(string cell) =>
        cell.Length == 0
            ? null
            : decimal.Parse(cell, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
}
