using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>A later program is held against what an earlier one judged of the same records on the same day.</summary>
public sealed class KeptJudgementTests
{
    [Fact]
    public void The_same_program_judges_the_same()
    {
        using var copy = Kept();
        // Another day than that on which it was judged: the file says which.
        var run = Run.Of("changes", "--judged", copy.At("judged.json"), "--in", copy.Root);
        Assert.Equal((0, "nothing differs in meaning; 20 boards are as they were\n"), (run.Exit, run.Out));
    }

    [Fact]
    public void What_another_program_judged_otherwise_is_laid_to_the_program()
    {
        // What an earlier program might have said: C3 of SP-0007 outside another limit, and the board not fit to run.
        using var copy = Kept();
        var text = copy.Read("judged.json");
        var at = text.IndexOf("\"board\": \"SP-0007\"", StringComparison.Ordinal);
        var state = text.IndexOf("\"state\": \"fit to run\"", at, StringComparison.Ordinal);
        text = text[..state] + "\"state\": \"proof due\"" + text[(state + "\"state\": \"fit to run\"".Length)..];
        var outcome = text.IndexOf("\"outcome\": \"outside\"", at, StringComparison.Ordinal);
        text = text[..outcome] + "\"outcome\": \"inside\"" + text[(outcome + "\"outcome\": \"outside\"".Length)..];
        copy.Write("judged.json", text);

        var run = Run.Of("changes", "--judged", copy.At("judged.json"), "--in", copy.Root, "--exit");
        Assert.Equal(1, run.Exit);
        Assert.StartsWith("1 state, 1 verdict differ; 19 boards are as they were\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("SP-0007  was proof due, now fit to run\n", run.Out, StringComparison.Ordinal);
        Assert.Contains(": was inside, now outside\n  because of the program\n", run.Out, StringComparison.Ordinal);
        var json = JsonDocument.Parse(Run.Of("changes", "--judged", copy.At("judged.json"), "--in", copy.Root, "--form", "json").Out);
        Assert.Equal("program", json.RootElement.GetProperty("boards")[0].GetProperty("changes")[0].GetProperty("because")[0].GetString());
    }

    [Theory]
    [InlineData("\"look_again\": \"2027-11-09\"", "\"look_again\": \"2027-11-10\"", "look again  was 2027-11-10, now 2027-11-09")]
    [InlineData(
        "110 k\\u03A9 (delivery limit)",
        "111 k\\u03A9 (delivery limit)",
        "was 90 kΩ … 111 kΩ (delivery limit), now 90 kΩ … 110 kΩ"
    )]
    public void Days_of_the_next_look_and_limits_are_held_against_each_other(string now, string was, string told)
    {
        using var copy = Kept();
        var text = copy.Read("judged.json");
        var at = text.IndexOf(now, text.IndexOf("\"board\": \"SP-0007\"", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.True(at > 0, "it is kept");
        copy.Write("judged.json", text[..at] + was + text[(at + now.Length)..]);
        Assert.Contains(told, Run.Of("changes", "--judged", copy.At("judged.json"), "--in", copy.Root).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Proofs_are_held_against_each_other_as_readings_are()
    {
        using var copy = Kept();
        var text = copy.Read("judged.json");
        var at = text.IndexOf("\"place\": \"\\u002B80V\"", StringComparison.Ordinal);
        var outcome = text.IndexOf("\"outcome\": \"inside\"", at, StringComparison.Ordinal);
        copy.Write(
            "judged.json",
            text[..outcome] + text[outcome..].Replace("\"outcome\": \"inside\"", "\"outcome\": \"outside\"", StringComparison.Ordinal)
        );
        Assert.Matches(
            "verdict  \\+80V .*: was outside, now inside",
            Run.Of("changes", "--judged", copy.At("judged.json"), "--in", copy.Root).Out
        );
    }

    [Fact]
    public void It_is_judged_again_on_the_day_on_which_it_was_kept()
    {
        // By then looks are overdue that are not today.
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Run.Of("check", copy.Root, "--keep", copy.At("judged.json"), "--as-of", "2031-01-01").Exit);
        Assert.Contains("overdue", copy.Read("judged.json"), StringComparison.Ordinal);
        var run = Run.Of("changes", "--judged", copy.At("judged.json"), "--in", copy.Root);
        Assert.Equal("nothing differs in meaning; 20 boards are as they were\n", run.Out);
    }

    [Fact]
    public void A_record_that_is_another_one_now_is_left_out_and_told()
    {
        using var copy = Kept();
        copy.Write("boards/SP-0007.md", copy.Read("boards/SP-0007.md").Replace("31.8 µF", "41.8 µF", StringComparison.Ordinal));
        var run = Run.Of("changes", "--judged", copy.At("judged.json"), "--in", copy.Root);
        Assert.Equal((3, "boards/SP-0007.md is not what it was, and left out\n"), (run.Exit, run.Error));
        Assert.Equal("nothing differs in meaning; 19 boards are as they were\n", run.Out);
    }

    [Fact]
    public void A_photograph_that_is_gone_or_taken_anew_is_not_laid_to_the_program()
    {
        using var copy = Kept();
        var photos = Directory.GetFiles(copy.At("photos"), "*.*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).ToArray();
        var path = Path.GetRelativePath(copy.Root, photos[0]).Replace('\\', '/');
        var other = File.ReadAllBytes(photos[^1]);
        foreach (var change in new Action[] { () => File.Delete(photos[0]), () => File.WriteAllBytes(photos[0], other) })
        {
            change();
            var run = Run.Of("changes", "--judged", copy.At("judged.json"), "--in", copy.Root);
            Assert.Equal((3, $"{path} is not what it was, and left out\n"), (run.Exit, run.Error));
            Assert.Equal("nothing differs in meaning; 19 boards are as they were\n", run.Out);
        }
    }

    [Fact]
    public void Where_a_shared_file_is_another_one_nothing_is_laid_to_the_program()
    {
        using var copy = Kept();
        copy.Write("stock.yaml", copy.Read("stock.yaml") + "\n");
        var run = Run.Of("changes", "--judged", copy.At("judged.json"), "--in", copy.Root);
        Assert.Equal(2, run.Exit);
        Assert.StartsWith("stock.yaml is not what it was when that was judged", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Theory]
    [InlineData("{}", "it is no kept judgement: ohmstead check --keep FILE writes one")]
    [InlineData("not json", "it cannot be read: write it anew with ohmstead check --keep FILE")]
    [InlineData("{\"judgement\": true}", "it cannot be read: write it anew with ohmstead check --keep FILE")]
    [InlineData("{\"judgement\": true, \"version\": 2}", "it was written by a later program than this one")]
    [InlineData(
        "{\"judgement\": true, \"version\": 1, \"program\": \"0\", \"on\": \"2026-13-01\", \"shared\": {}, \"boards\": []}",
        "it cannot be read: write it anew with ohmstead check --keep FILE"
    )]
    [InlineData(
        "{\"judgement\": true, \"version\": 1, \"program\": \"0\", \"on\": \"2026-11-01\", \"shared\": {\"a\": 1}, \"boards\": [1]}",
        "it cannot be read: write it anew with ohmstead check --keep FILE"
    )]
    public void Another_file_is_refused(string text, string why)
    {
        using var copy = CollectionCopy.Make();
        copy.Write("judged.json", text);
        var run = Run.Of("changes", "--judged", copy.At("judged.json"), "--in", copy.Root);
        Assert.Equal(2, run.Exit);
        Assert.EndsWith($": {why}\n", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_kept_of_a_whole_collection_and_over_no_other_file()
    {
        using var copy = CollectionCopy.Make();
        var one = Run.Of("check", copy.At("boards/SP-0007.md"), "--keep", copy.At("judged.json"), "--as-of", "2026-11-25");
        Assert.Equal((2, "--keep keeps what is judged of a whole collection: give its folder\n"), (one.Exit, one.Error));
        var over = Run.Of("check", copy.Root, "--keep", copy.At("stock.yaml"), "--as-of", "2026-11-25");
        Assert.Equal(2, over.Exit);
        Assert.Contains("this program did not write it", over.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(copy.At("judged.json")));
    }

    [Theory]
    [InlineData("--on")]
    [InlineData("--known")]
    public void A_past_state_is_not_kept_for_what_came_later_would_be_laid_to_the_program(string option)
    {
        using var copy = CollectionCopy.Make();
        var run = Run.Of("check", copy.Root, "--keep", copy.At("judged.json"), option, "2026-05-01");
        Assert.Equal((2, "--keep keeps what is judged of the files as they lie; leave --on and --known out\n"), (run.Exit, run.Error));
        Assert.False(File.Exists(copy.At("judged.json")));
    }

    private static CollectionCopy Kept()
    {
        var copy = CollectionCopy.Make();
        var run = Run.Of("check", copy.Root, "--keep", copy.At("judged.json"), "--as-of", "2026-11-25");
        Assert.True(run.Exit == 0, run.Error);
        return copy;
    }
}
