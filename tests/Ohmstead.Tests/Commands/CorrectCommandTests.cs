using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>What was written wrongly on an earlier day stands beside its correction, and only the correction counts.</summary>
public sealed class CorrectCommandTests
{
    private const string Board = "boards/SP-0007.md";

    [Fact]
    public void Both_stand_and_the_new_one_says_all_that_the_old_one_said()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = On(copy, "correct", "SP-0007", "K1", "516ohm", "--because", "two figures changed places");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        const string visit = """
              - date: 2026-11-25
                readings:
                  - { part: K1, circuit: out, instrument: meter-1, resistance: 516 Ω, corrects: 2026-02-28, because: two figures changed places }

            """;
        Assert.Equal(before.Replace("waiting:\n", visit + "waiting:\n", StringComparison.Ordinal), copy.Read(Board));
    }

    [Fact]
    public void A_value_that_is_not_said_stays_as_it_was()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(
            0,
            On(copy, "correct", "SP-0007", "C3", "38.1uF", "--of", "2026-02-28", "--state", "as found", "--because", "misread").Exit
        );
        Assert.Contains(
            "{ part: C3, circuit: out, frequency: 120 Hz, instrument: bridge-1, capacitance: 38.1 µF, esr: 9.4 Ω, corrects: 2026-02-28,",
            copy.Read(Board),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_proof_is_corrected_and_why_tells_both_with_the_reason()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, On(copy, "correct", "SP-0007", "+80V", "80.3V", "--because", "a 1 taken for a 0").Exit);
        Assert.Contains(
            "- { point: +80V, voltage: 80.3 V, ripple: 0.82 V, instrument: meter-1, corrects: 2026-05-09, because: a 1 taken for a 0 }",
            copy.Read(Board),
            StringComparison.Ordinal
        );
        var why = On(copy, "why", "SP-0007", "+80V").Out;
        Assert.Contains("2026-05-09 (proof)", why, StringComparison.Ordinal);
        Assert.Contains("corrected, it had said voltage 81.3 V, ripple 0.82 V (inside): a 1 taken for a 0", why, StringComparison.Ordinal);
        Assert.DoesNotContain("81.3 V is", why, StringComparison.Ordinal);
        Assert.Contains("\"corrected\": \"corrected, it had said", On(copy, "why", "SP-0007", "--json").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_failure_that_was_corrected_is_told_with_the_state()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(
            0,
            On(
                copy,
                "correct",
                "SP-0007",
                "C3",
                "46.1uF",
                "esr=0.9ohm",
                "--of",
                "2026-02-28",
                "--state",
                "as found",
                "--because",
                "the drawer's piece"
            ).Exit
        );
        Assert.Contains(
            "  C3: corrected, it had said capacitance 31.8 µF, ESR 9.4 Ω out of circuit (outside): the drawer's piece\n",
            On(copy, "why", "SP-0007").Out,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("3 entries of 2026-02-28 are about 'C3'", "C3", "--of", "2026-02-28")]
    [InlineData("SP-0007 has no entry about 'C3' of 2026-02-27", "C3", "--of", "2026-02-27")]
    [InlineData("SP-0007 has no entry about 'C33'", "C33")]
    public void Where_it_is_not_clear_what_is_meant_nothing_is_written(string message, string place, params string[] more)
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        copy.Write(
            Board,
            before.Replace(
                "      - { part: K1,",
                "      - { part: C3, circuit: in, frequency: 120 Hz, capacitance: 32 µF }\n      - { part: K1,",
                StringComparison.Ordinal
            )
        );
        var run = On(copy, ["correct", "SP-0007", place, "46uF", "--because", "misread", .. more]);
        Assert.Equal(2, run.Exit);
        Assert.Contains(message, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("corrects:", copy.Read(Board), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_entered_today_is_taken_back_instead()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, On(copy, "enter", "SP-0007", "C3", "46uF", "--lifted").Exit);
        var run = On(copy, "correct", "SP-0007", "C3", "47uF", "--because", "misread");
        Assert.Equal(2, run.Exit);
        Assert.Contains("  = take it back and enter it anew: ohmstead remove SP-0007 C3\n", run.Error, StringComparison.Ordinal);
    }

    // What failed once goes, where somebody's life hangs on it: no reason brings it back.
    [Fact]
    public void What_was_read_of_a_part_that_people_rely_on_is_not_corrected()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = On(copy, "correct", "SP-0007", "C1", "99nF", "--because", "misread");
        Assert.Equal((1, before), (run.Exit, copy.Read(Board)));
        Assert.Contains("C1 is or was a part that people rely on not to be hurt", run.Error, StringComparison.Ordinal);
    }

    private static Run On(CollectionCopy copy, params string[] words) => Run.Of([.. words, "--in", copy.Root, "--as-of", "2026-11-25"]);
}
