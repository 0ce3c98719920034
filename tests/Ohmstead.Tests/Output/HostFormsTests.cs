using System.Text.Json;
using Json.Schema;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Output;

/// <summary>Findings in the forms of hosts: SARIF 2.1.0, held against the schema of the standard by another library, and the code quality
/// report.</summary>
public sealed class HostFormsTests
{
    private const string Today = "2026-11-25";

    [Fact]
    public void A_sound_collection_and_a_spoiled_one_give_valid_documents()
    {
        using var copy = CollectionCopy.Make();
        Holds(Sarif(copy.Root));
        Spoil(copy);
        var results = Holds(Sarif(copy.Root)).GetProperty("results").EnumerateArray().ToArray();
        Assert.True(results.Length > 5);
        Assert.Contains(results, result => result.GetProperty("level").GetString() == "error");
        Assert.Contains(results, result => result.TryGetProperty("relatedLocations", out _));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(5_000)]
    [InlineData(5_001)]
    [InlineData(30_000)]
    public void A_host_gets_the_worst_five_thousand_and_is_told_how_many_more_there_are(int count)
    {
        using var copy = CollectionCopy.Empty();
        const int perFile = 50;
        copy.Write("collection.yaml", "collection: Saltmarsh Point\n");
        for (var file = 0; file * perFile < count; file++)
        {
            var here = Math.Min(perFile, count - (file * perFile));
            var keys = string.Concat(Enumerable.Range(1, here).Select(key => $"wrong{key:00}: x\n"));
            copy.Write($"boards/SP-{file:0000}.md", $"---\nboard: SP-{file:0000}\ntitle: x\n{keys}---\n");
        }

        var run = Holds(Sarif(copy.Root));
        Assert.Equal(Math.Min(count, 5_000), run.GetProperty("results").GetArrayLength());
        var invocation = run.GetProperty("invocations")[0];
        Assert.Equal(count > 5_000, invocation.TryGetProperty("toolExecutionNotifications", out var more));
        if (count > 5_000)
        {
            Assert.Equal(
                $"{count - 5_000} more findings are left out, the least serious; ohmstead check tells all",
                more[0].GetProperty("message").GetProperty("text").GetString()
            );
        }
    }

    [Theory]
    [InlineData("😀😀")]
    [InlineData("漢字")]
    [InlineData("é")]
    public void Columns_are_those_of_an_editor_that_counts_utf_16_units(string before)
    {
        using var copy = CollectionCopy.Make();
        var line = $"      - {{ part: C4, note: \"{before}\", circuit: sideways }}";
        Insert(copy, "    readings:\n", $"    readings:\n{line}\n");
        var region = Holds(Sarif(copy.Root))
            .GetProperty("results")
            .EnumerateArray()
            .Single(result => result.GetProperty("ruleId").GetString() == "word-unknown")
            .GetProperty("locations")[0]
            .GetProperty("physicalLocation")
            .GetProperty("region");
        var first = region.GetProperty("startColumn").GetInt32() - 1;
        Assert.Equal("sideways", line[first..(region.GetProperty("endColumn").GetInt32() - 1)]);
    }

    [Theory]
    [InlineData("sarif")]
    [InlineData("gitlab")]
    public void A_finding_keeps_its_name_under_two_hundred_entries_above_it_and_a_rename(string form)
    {
        using var copy = CollectionCopy.Make();
        Spoil(copy);
        var before = Names(copy, form);
        Assert.Equal(before.Length, before.Distinct().Count());

        // Nothing is wrong with what is entered, so each finding is one that was there.
        var first = new DateOnly(2025, 1, 1);
        var visits = Enumerable
            .Range(0, 200)
            .Select(day =>
                $"  - {{ date: {first.AddDays(day):yyyy-MM-dd}, by: RK, found: [{{ at: J{day}, what: dust, severity: note }}] }}\n"
            );
        Insert(copy, "bench:\n", "bench:\n" + string.Concat(visits));
        Insert(copy, "title: Teleprinter line unit", "note: above it all\ntitle: Teleprinter line unit");
        File.Move(copy.At("boards/SP-0007.md"), copy.At("boards/teleprinter.md"));
        var after = Names(copy, form);
        Assert.Superset(before.ToHashSet(), after.ToHashSet());
        Assert.Equal(after.Length, after.Distinct().Count());
    }

    [Theory]
    [InlineData("sarif")]
    [InlineData("gitlab")]
    public void A_finding_keeps_its_name_when_its_record_is_laid_out_anew(string form)
    {
        using var copy = CollectionCopy.Make();
        Spoil(copy, isReadable: true);
        Insert(copy, "      - { part: C3, circuit: out, frequency: 120 Hz,", "      - {part:   C3, circuit: out,   frequency: 120 Hz,");
        Insert(copy, "title: Teleprinter line unit", "title:    Teleprinter line unit");
        var before = Names(copy, form);
        Assert.NotEmpty(before);
        var was = copy.Read("boards/SP-0007.md");
        Assert.Equal(0, Run.Of("tidy", copy.Root).Exit);
        Assert.NotEqual(was, copy.Read("boards/SP-0007.md"));
        Assert.Equal(before, Names(copy, form));
    }

    [Fact]
    public void Paths_are_addresses_relative_to_the_repository()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("boards/a b#ü%.md", "---\nboard: SP-0900\ntitle: x\nwrong: y\n---\n");
        var uris = Holds(Sarif(copy.Root))
            .GetProperty("results")
            .EnumerateArray()
            .Select(result => result.GetProperty("locations")[0].GetProperty("physicalLocation").GetProperty("artifactLocation"))
            .Select(location => location.GetProperty("uri").GetString());
        Assert.Contains("boards/a%20b%23%C3%BC%25.md", uris);
    }

    [Fact]
    public void One_check_writes_several_forms()
    {
        using var copy = CollectionCopy.Make();
        Spoil(copy);
        using var target = CollectionCopy.Empty();
        string[] words =
        [
            "check",
            copy.Root,
            "--as-of",
            Today,
            "--also",
            $"sarif={target.At("a.sarif")}",
            "--also",
            $"gitlab={target.At("b.json")}",
        ];
        var run = Run.Of(words);
        Assert.Equal(1, run.Exit);
        Assert.Equal(Sarif(copy.Root), target.Read("a.sarif"));
        Assert.Equal(Run.Of("check", copy.Root, "--as-of", Today, "--form", "gitlab").Out, target.Read("b.json"));
        Assert.Equal(Run.Of("check", copy.Root, "--as-of", Today).Out, run.Out);

        // Written again, since it is ours; what is somebody's stays.
        Assert.Equal(1, Run.Of(words).Exit);
        target.Write("a.sarif", "a letter");
        var refused = Run.Of(words);
        Assert.Equal((2, "a letter"), (refused.Exit, target.Read("a.sarif")));
        Assert.Contains("this program did not write it", refused.Error, StringComparison.Ordinal);
    }

    private static void Insert(CollectionCopy copy, string was, string now)
    {
        var text = copy.Read("boards/SP-0007.md");
        var at = text.IndexOf(was, StringComparison.Ordinal);
        copy.Write("boards/SP-0007.md", text[..at] + now + text[(at + was.Length)..]);
    }

    // A design that turns a board, a lot that is overdrawn, a word that is none.
    private static void Spoil(CollectionCopy copy, bool isReadable = false)
    {
        if (!isReadable)
        {
            Insert(copy, "circuit: in, resistance: 128.4", "circuit: sideways, resistance: 128.4");
        }

        Insert(copy, "verdict: out, instrument: meter-1 }", "verdict: in, instrument: meter-1 }");
        var stock = copy.Read("stock.yaml");
        copy.Write("stock.yaml", stock.Replace("quantity: 6, order: PO-01", "quantity: 1, order: PO-01", StringComparison.Ordinal));
        copy.Write(
            "designs/teleprinter-line.md",
            copy.Read("designs/teleprinter-line.md").Replace("tolerance: ±20 %", "tolerance: ±2 %", StringComparison.Ordinal)
        );
    }

    private static string[] Names(CollectionCopy copy, string form)
    {
        var json = JsonDocument.Parse(Run.Of("check", copy.Root, "--form", form, "--as-of", Today).Out).RootElement;
        return form == "gitlab"
            ? [.. json.EnumerateArray().Select(one => one.GetProperty("fingerprint").GetString()!)]
            :
            [
                .. json.GetProperty("runs")[0]
                    .GetProperty("results")
                    .EnumerateArray()
                    .Select(one => one.GetProperty("partialFingerprints").GetProperty("ohmstead/v1").GetString()!),
            ];
    }

    private static string Sarif(string root, params string[] more) =>
        Run.Of(["check", root, "--form", "sarif", "--as-of", Today, .. more]).Out;

    // Valid by the schema of the standard; gives the one run.
    private static JsonElement Holds(string text)
    {
        var document = JsonDocument.Parse(text).RootElement.Clone();
        var schema = JsonSchema.FromText(
            File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Output", "sarif-schema-2.1.0.json")),
            new() { SchemaRegistry = new() }
        );
        var result = schema.Evaluate(document, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(
            result.IsValid,
            string.Join(
                '\n',
                (result.Details ?? [])
                    .Where(one => one.Errors is not null)
                    .Select(one => $"{one.InstanceLocation}: {string.Join(", ", one.Errors!.Values)}")
                    .Take(9)
            )
        );
        return document.GetProperty("runs")[0];
    }
}
