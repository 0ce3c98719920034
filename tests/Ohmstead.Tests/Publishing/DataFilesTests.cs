using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using CsvHelper;
using CsvHelper.Configuration;
using Ohmstead.Output;
using Ohmstead.Publishing;
using Ohmstead.Publishing.Tables;
using Ohmstead.Records.Schemas;
using Ohmstead.Report.Html;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Publishing;

/// <summary>The tables beside the pages, read back by libraries that did not write them.</summary>
public sealed class DataFilesTests
{
    private static string Lines(params string?[] row)
    {
        using var lines = new PageBuffer();
        CsvRows.Append(lines, row);
        return Encoding.UTF8.GetString(lines.Written);
    }

    private static readonly string[] Tables =
    [
        "boards",
        "parts",
        "readings",
        "bench",
        "obligations",
        "designs",
        "lots",
        "findings",
        "kinds",
    ];

    [Theory]
    [InlineData(DataFiles.SchemaName)]
    [InlineData(DataFiles.BoardSchemaName)]
    public void The_schema_in_the_repository_is_the_one_the_tables_give(string name)
    {
        var current = name == DataFiles.SchemaName ? SchemaWriter.Write(DataShapes.Whole) : BoardSchema.Write();
        WrittenFile.IsCurrent($"schema/{SchemaFiles.FileName(name)}", current);
        Assert.Equal(current, SchemaFiles.Read(name));
    }

    [Fact]
    public void The_data_of_the_demo_keep_to_the_published_schemas()
    {
        using var copy = Report();
        using var data = JsonDocument.Parse(copy.Read("pages/data.json"));
        Valid(copy, "report-data", data);
        Assert.All(DataShapes.OfAll, table => Assert.NotEqual(0, data.RootElement.GetProperty(table.Name).GetArrayLength()));
        var boards = data.RootElement.GetProperty("boards").EnumerateArray().ToArray();
        Assert.Equal(CollectionCopy.Boards, boards.Length);
        foreach (var row in boards)
        {
            using var board = JsonDocument.Parse(copy.Read("pages/" + row.GetProperty("data").GetString()));
            Valid(copy, "report-board", board);
            Assert.Equal(row.GetProperty("board").GetString(), board.RootElement.GetProperty("board").GetString());
        }
    }

    [Fact]
    public void Every_table_says_the_same_as_csv_and_as_json()
    {
        using var copy = Report();
        using var data = JsonDocument.Parse(copy.Read("pages/data.json"));
        foreach (var (name, shape) in DataShapes.OfAll)
        {
            Same(shape, [.. data.RootElement.GetProperty(name).EnumerateArray()], Csv(copy.Read($"pages/{name}.csv")));
        }

        BoardFile[] boards =
        [
            .. data
                .RootElement.GetProperty("boards")
                .EnumerateArray()
                .Select(row => BoardFile.Read(copy.Read("pages/" + row.GetProperty("data").GetString()))),
        ];
        foreach (var (name, shape) in DataShapes.OfEachBoard)
        {
            var rows = Csv(copy.Read($"pages/{name}.csv"));
            Assert.Equal(shape.Keys.Select(key => key.Name), rows[0]);
            var told = boards.SelectMany(board => board.Rows(name)).ToArray();
            Assert.Equal(told.Length, rows.Count - 1);
            foreach (var (row, cells) in told.Zip(rows.Skip(1)))
            {
                Assert.All(rows[0].Zip(cells), cell =>
                    Assert.True(IsSame(row.GetValueOrDefault(cell.First), cell.Second), cell.ToString())
                );
            }
        }

        // A number may be written with a power of ten in JSON, and is the same to its last digit.
        static bool IsSame(JsonElement json, string cell) =>
            json.ValueKind switch
            {
                JsonValueKind.Undefined => cell.Length == 0,
                JsonValueKind.Number => json.GetDecimal() == decimal.Parse(cell, CultureInfo.InvariantCulture),
                _ => json.GetString() == (cell.StartsWith('\'') ? cell[1..] : cell),
            };

        static void Same(Records.Shapes.Shape shape, JsonElement[] objects, List<string[]> rows)
        {
            Assert.Equal(shape.Keys.Select(key => key.Name), rows[0]);
            Assert.Equal(objects.Length, rows.Count - 1);
            foreach (var (json, row) in objects.Zip(rows.Skip(1)))
            {
                var said = shape.Keys.Select(key => json.TryGetProperty(key.Name, out var value) ? value.ToString() : string.Empty);
                // A cell that a spreadsheet would take for a formula has an apostrophe before it.
                Assert.Equal(said, row.Select(cell => cell.StartsWith('\'') ? cell[1..] : cell));
            }
        }
    }

    [Fact]
    public void A_reading_stands_in_the_table_with_its_limit_and_its_verdict()
    {
        using var copy = Report();
        var written = copy.Read("boards/SP-0007.md").Split('\n');
        var readings = BoardFile.Read(copy.Read("pages/boards/SP-0007.json")).Rows("readings").ToArray();
        Assert.NotEmpty(readings);
        // Each value stands, as written, on the line that its row names.
        Assert.All(readings.Where(row => row["measured"].GetString() != "test"), row =>
            Assert.Contains(row["written"].GetString()!, written[row["line"].GetInt32() - 1], StringComparison.Ordinal)
        );
        Assert.Contains(readings, row => row["outcome"].GetString() == "inside" && row.ContainsKey("low") && row.ContainsKey("limit_from"));
    }

    [Fact]
    public void An_obligation_stands_in_the_table_with_the_entry_that_meets_it()
    {
        using var copy = Report();
        var proved = BoardFile
            .Read(copy.Read("pages/boards/SP-0007.json"))
            .Rows("obligations")
            .Single(row => row["kind"].GetString() == "point-proved" && row["at"].GetString() == "loop");
        Assert.Equal("met", proved["standing"].GetString());
        // The record of the board is not named in each row.
        Assert.False(proved.ContainsKey("record"));
        Assert.Contains("point: loop", copy.Read("boards/SP-0007.md").Split('\n')[proved["line"].GetInt32() - 1], StringComparison.Ordinal);
    }

    // What one board tells is a small file of its own: an entry at the bench changes that, and not one that grows with the collection.
    [Fact]
    public void An_entry_on_one_board_changes_the_data_of_that_board_alone()
    {
        using var copy = Report();
        var before = Directory
            .GetFiles(copy.At("pages/boards"), "*.json")
            .ToDictionary(file => file, File.ReadAllText, StringComparer.Ordinal);
        copy.Write(
            "boards/SP-0007.md",
            copy.Read("boards/SP-0007.md").Replace("\nbench:\n", "\nnote: looked at again\nbench:\n", StringComparison.Ordinal)
        );
        Assert.Equal(0, Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25").Exit);
        // The lines of its readings moved by one.
        Assert.Equal(
            ["SP-0007.json"],
            before.Where(file => File.ReadAllText(file.Key) != file.Value).Select(file => Path.GetFileName(file.Key))
        );
    }

    [Fact]
    public void The_number_of_workers_never_shows()
    {
        using var copy = CollectionCopy.Make();
        Run.Of("report", copy.Root, "--to", copy.At("one"), "--as-of", "2026-11-25", "--workers", "1");
        Run.Of("report", copy.Root, "--to", copy.At("eight"), "--as-of", "2026-11-25", "--workers", "8");
        Assert.All(
            [
                "data.json",
                "boards/SP-0007.json",
                "feed.xml",
                "search/index.js",
                "search/p1.js",
                "search/w1.js",
                "search/s1.js",
                .. Tables.Select(table => table + ".csv"),
            ],
            (string file) => Assert.Equal(copy.Read("one/" + file), copy.Read("eight/" + file))
        );
    }

    // What a spreadsheet takes for a formula: common practice.
    [Theory]
    [InlineData("=HYPERLINK(\"x\")")]
    [InlineData("+1")]
    [InlineData("-1+2")]
    [InlineData("@SUM(A1)")]
    [InlineData("-5V")]
    [InlineData("-A1")]
    [InlineData("＝HYPERLINK(\"x\")")]
    [InlineData("＋1")]
    [InlineData("－1")]
    [InlineData("＠SUM(A1)")]
    public void A_formula_in_a_record_is_text_in_a_spreadsheet(string hostile)
    {
        var row = Csv(Lines(hostile, "391 µF"))[0];
        Assert.Equal(["'" + hostile, "391 µF"], row);
    }

    [Theory]
    [InlineData("-5")]
    [InlineData("-0.0047")]
    [InlineData("-12000000")]
    public void A_figure_below_zero_stays_a_figure(string figure) => Assert.Equal($"{figure},391 µF\r\n", Lines(figure, "391 µF"));

    [Theory]
    [InlineData("\t=1", "<U+0009>=1")]
    [InlineData("\r=1", "<U+000D>=1")]
    public void A_tab_before_a_formula_is_shown_and_hides_none(string hostile, string expected) =>
        Assert.Equal([expected], Csv(Lines(hostile))[0]);

    [Theory]
    [InlineData("a\"b,c;d")]
    [InlineData("</script><script>alert(1)</script>")]
    [InlineData("é漢😀")]
    public void Text_comes_back_as_it_was(string text)
    {
        Assert.Equal([text], Csv(Lines(text))[0]);
        var json = Json(Lot(text));
        Assert.DoesNotContain('<', json);
        using var read = JsonDocument.Parse(json);
        Assert.Equal(text, read.RootElement.GetProperty("what").GetString());
    }

    [Fact]
    public void Control_characters_reach_no_file()
    {
        const string hostile = "a\u0000\u001b[31m\u202eb\r\nc\u2028d";
        Assert.All(Lines(hostile).TrimEnd() + Json(Lot(hostile)).Trim(), c =>
            Assert.False(char.IsControl(c) || c is '\u202e' or '\u2028', $"U+{(int)c:X4}")
        );
    }

    [Theory]
    [InlineData("22 µF -10/+50 % 25 V")]
    [InlineData("+")]
    [InlineData("a & b < c > d \"e\" 'f' \\ g ` h")]
    [InlineData("9 … 15 Ω, 105 °C, ¾")]
    [InlineData("plain as long as it may be, and then a pair \U0001F50C and more of it")]
    [InlineData("\U0001F50C")]
    [InlineData("\u0001\t\n\u007F\u0085\u2028")]
    public void A_cell_is_written_as_the_library_for_JSON_writes_it(string cell) => IsWrittenAsByTheLibrary(cell);

    [Fact]
    public void Half_a_pair_is_written_as_the_library_for_JSON_writes_it()
    {
        // Built here because a lone surrogate cannot travel through a theory's row.
        Assert.All(["\uD83D", "a\uDD0C", "\uD83D\uD83D\uDD0C", "\uDD0C\uD83D and more than eight"], IsWrittenAsByTheLibrary);
    }

    private static void IsWrittenAsByTheLibrary(string cell)
    {
        var expected = new ArrayBufferWriter<byte>();
        using (var library = new Utf8JsonWriter(expected, new() { Encoder = DataForm.Escapes }))
        {
            library.WriteStringValue(cell);
        }

        Assert.Equal(
            $"\n{{\"lot\":\"L-1\",\"what\":{AsInNoPage(Encoding.UTF8.GetString(expected.WrittenSpan))},\"fitted\":0,\"scrapped\":1}}",
            Json(Lot(cell))
        );
    }

    // What the library escapes for the sake of pages, which these files are no part of; what opens a tag stays escaped.
    private static string AsInNoPage(string json) =>
        json.Replace("\\u002B", "+", StringComparison.Ordinal)
            .Replace("\\u0026", "&", StringComparison.Ordinal)
            .Replace("\\u0027", "'", StringComparison.Ordinal)
            .Replace("\\u003E", ">", StringComparison.Ordinal)
            .Replace("\\u0060", "`", StringComparison.Ordinal);

    [Fact]
    public void The_rows_of_a_table_have_a_cell_for_each_of_its_keys()
    {
        using var copy = Report();
        Assert.All(Tables, table => Assert.Single(Csv(copy.Read($"pages/{table}.csv")).Select(row => row.Length).Distinct()));
    }

    internal static CollectionCopy Report(params string[] more)
    {
        var copy = CollectionCopy.Make();
        Assert.Equal(0, Run.Of(["report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25", .. more]).Exit);
        return copy;
    }

    // A lot of which nothing is written but its name and what it is.
    private static string?[] Lot(string what) => ["L-1", what, null, null, null, null, null, "0", null, null, "1"];

    private static string Json(string?[] lot)
    {
        using var bytes = new PageBuffer();
        var rows = new JsonRows(bytes);
        rows.Start(DataTable.For("lots", LotsTable.Columns.Row));
        rows.Take([.. lot, .. new string?[LotsTable.Columns.Row.Keys.Count - lot.Length]]);
        return Encoding.UTF8.GetString(bytes.Written)[1..];
    }

    private static void Valid(CollectionCopy copy, string schema, JsonDocument data)
    {
        var result = global::Json
            .Schema.JsonSchema.FromText(copy.Read($"pages/{schema}.schema.json"), new() { SchemaRegistry = new() })
            .Evaluate(data.RootElement, new() { OutputFormat = global::Json.Schema.OutputFormat.List });
        Assert.True(
            result.IsValid,
            string.Join(
                '\n',
                (result.Details ?? [])
                    .Where(detail => detail.Errors is { Count: > 0 })
                    .Select(detail => $"{detail.InstanceLocation}: {string.Join(", ", detail.Errors!.Values)}")
            )
        );
    }

    private static List<string[]> Csv(string text)
    {
        using var reader = new StringReader(text);
        using var parser = new CsvParser(reader, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n" });
        var rows = new List<string[]>();
        while (parser.Read())
        {
            rows.Add(parser.Record!);
        }

        return rows;
    }
}
