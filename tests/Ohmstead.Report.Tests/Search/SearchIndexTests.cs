using System.Globalization;
using System.Text;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Report.Tests.Search;

public sealed class SearchIndexTests
{
    [Fact]
    public void A_board_is_found_by_what_its_record_says()
    {
        var index = WrittenIndex.Of([Record("SP-0001", "Servo", "hums when warm"), Record("SP-0002", "Lamp", "dead")]);
        Assert.Equal(["SP-0001"], index.Holding("hums"));
        Assert.Equal(["SP-0002"], index.Holding("dead"));
        Assert.Equal(["SP-0001", "SP-0002"], index.Holding("=47e-6F"));
        Assert.Equal(["SP-0001"], index.Holding("!sp1"));
        Assert.Equal(["SP-0002"], index.Holding("!lamp"));
        Assert.Equal(["SP-0001", "SP-0002"], index.Holding("@2026-03"));
    }

    // A board that nobody looked at is not yet looked at; one with a crazed suppressor must be made safe first.
    [Fact]
    public void What_presses_most_is_found_first_whoever_was_judged_first()
    {
        var (calm, pressing) = (
            Record("SP-0001", "Servo", "dead"),
            Record("SP-0002", "Servo", "dead", "found: [{ at: C1, what: crazed, severity: safety }]")
        );
        var index = WrittenIndex.Of([calm, pressing]);
        Assert.Equal(["SP-0002", "SP-0001"], index.Names[..2]);
        var other = WrittenIndex.Of([pressing, calm]);
        Assert.Equal(index.Files, other.Files);
    }

    [Fact]
    public void A_sentence_is_told_by_how_many_lie_before_it()
    {
        // The complaint is the second sentence of a page that begins with its reasons, and it alone has the word.
        var index = WrittenIndex.Of([Record("SP-0001", "Servo", "wobbles")]);
        var page = index.Pages().First()[0];
        var sentences = page[5].EnumerateArray().Chunk(2).Select(pair => pair[1].GetString()!).ToList();
        var place = sentences.FindIndex(sentence => sentence.Contains("wobbles", StringComparison.Ordinal));
        Assert.Equal(1, sentences.Count(sentence => sentence.Contains("wobbles", StringComparison.Ordinal)));
        Assert.InRange(place, 0, 24);
        Assert.Equal($"1{(char)('A' + place)}", index.Tokens().Single(pair => pair.Token == "wobbles").Held);
    }

    [Fact]
    public void Every_token_is_in_the_file_that_says_so_and_no_file_is_larger_than_a_phone_reads_at_once()
    {
        var index = WrittenIndex.Of(
            Enumerable
                .Range(1, 300)
                .Select(number =>
                    Record($"SP-{number:0000}", "Servo", "dead") + string.Join(' ', Enumerable.Range(number * 50, 50).Select(Word)) + "\n"
                )
        );
        var firsts = index.Read("index").GetProperty("words").EnumerateArray().Select(word => word.GetString()!).ToArray();
        var pieces = index.Words("w").ToArray();
        Assert.InRange(pieces.Length, 2, 100);
        Assert.Equal(pieces.Select(piece => piece[0]), firsts);
        var tokens = index.Tokens().Select(pair => pair.Token).ToArray();
        Assert.Equal(tokens.Order(StringComparer.Ordinal), tokens);
        var pages = index.Read("index").GetProperty("pages").EnumerateArray().Select(page => page.GetInt32()).ToArray();
        Assert.Equal(index.Pages().Select(piece => piece[0][0].GetString()), pages.Select(page => index.Names[page]));
        Assert.All(index.Files, file => Assert.InRange(Encoding.UTF8.GetByteCount(file.Value), 1, 300_000));
        var lengths = index.Read("index").GetProperty("spellings").EnumerateArray().Select(length => length.GetInt32());
        Assert.Equal(index.Words("s").Select(piece => piece[0].Length), lengths);
    }

    [Theory]
    [InlineData("</script><script>alert(1)</script>")]
    [InlineData("\";alert(1);//")]
    [InlineData("`${alert(1)}`\u2028\u2029\u0001\u202e")]
    public void Hostile_text_cannot_end_the_script_or_hide_in_it(string hostile)
    {
        var finding = new Finding("a-check", Severity.Error, new Place("stock.yaml", 1, 1), hostile);
        var index = WrittenIndex.Of([Record("SP-0001", "Servo", "dead")], [finding], hostile);
        Assert.All(index.Files.Values, script =>
        {
            Assert.DoesNotContain('<', script);
            Assert.DoesNotContain('`', script);
            Assert.All(script, c =>
                Assert.False((char.IsControl(c) && c != '\n') || c is '\u2028' or '\u2029' or '\u202e', $"U+{(int)c:X4}")
            );
        });
        Assert.NotEmpty(index.Holding("alert"));
    }

    [Fact]
    public void A_record_of_thousands_of_sentences_keeps_its_files_small()
    {
        var story = string.Concat(
            Enumerable.Range(1, 5000).Select(number => string.Create(CultureInfo.InvariantCulture, $"Sentence {number} says \"so\".\n\n"))
        );
        var index = WrittenIndex.Of([Record("SP-0001", "Servo", "dead") + story]);
        Assert.All(index.Files, file => Assert.InRange(Encoding.UTF8.GetByteCount(file.Value), 1, 300_000));
        Assert.Equal("1*", index.Tokens().Single(pair => pair.Token == "sentence").Held);
    }

    private static string Word(int number) =>
        string.Concat(number.ToString(CultureInfo.InvariantCulture).Select(digit => (char)('a' + digit - '0'))) + "word";

    private static string Record(string number, string title, string complaint, string more = "note: 47 µF in the bag") =>
        $$"""
            ---
            board: {{number}}
            title: {{title}}
            arrived: { date: 2026-03-01, complaint: "{{complaint}}" }
            format: 1
            parts:
              - { ref: C1, kind: polyester film, capacitance: 47 µF }
            bench:
              - date: 2026-03-07
                by: RK
                {{more}}
            ---

            """;
}
