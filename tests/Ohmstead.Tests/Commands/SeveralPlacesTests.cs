using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>What was seen, done or decided at several places is typed once and stands as a line for each.</summary>
public sealed class SeveralPlacesTests
{
    private const string Board = "boards/SP-0007.md";

    [Fact]
    public void A_range_and_a_name_become_a_line_each_in_one_visit()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = Enter(copy, "work", "SP-0007", "re-soldered", "C3-C4 R3", "--by", "RK");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        const string visit = """
              - date: 2026-11-25
                by: RK
                work:
                  - { part: C3, did: re-soldered }
                  - { part: C4, did: re-soldered }
                  - { part: R3, did: re-soldered }

            """;
        Assert.Equal(before.Replace("waiting:\n", visit + "waiting:\n", StringComparison.Ordinal), copy.Read(Board));
        Assert.Contains(
            "added { part: C3, did: re-soldered }\n  and { part: C4, did: re-soldered }\n  and { part: R3, did: re-soldered }\n",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Equal(1, run.Out.Split("is now: ").Length - 1);
    }

    [Fact]
    public void Findings_and_decisions_join_the_visit_of_the_day()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, "found", "SP-0007", "C3, C4", "flux around the leads", "minor", "--by", "RK").Exit);
        Assert.Equal(0, Enter(copy, "decide", "SP-0007", "C3-C4", "watch", "a little low", "--by", "RK").Exit);
        const string visit = """
              - date: 2026-11-25
                by: RK
                found:
                  - { at: C3, what: flux around the leads, severity: minor }
                  - { at: C4, what: flux around the leads, severity: minor }
                decided:
                  - { part: C3, decision: watch, because: a little low }
                  - { part: C4, decision: watch, because: a little low }

            """;
        Assert.Contains(visit, copy.Read(Board), StringComparison.Ordinal);
    }

    // C4 was mended in the visit, so what is seen there afterwards comes after it, and C3 with it.
    [Fact]
    public void Where_one_came_after_something_that_stands_further_down_all_begin_a_second_visit()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, "work", "SP-0007", "re-soldered", "C4").Exit);
        Assert.Equal(0, Enter(copy, "found", "SP-0007", "C3 C4", "flux around the leads", "minor").Exit);
        const string visits = """
              - date: 2026-11-25
                work:
                  - { part: C4, did: re-soldered }
              - date: 2026-11-25
                found:
                  - { at: C3, what: flux around the leads, severity: minor }
                  - { at: C4, what: flux around the leads, severity: minor }

            """;
        Assert.Contains(visits, copy.Read(Board), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("SP-0007 has no part 'C6', 'C1' is the nearest\n", "C3-C6")]
    [InlineData("SP-0007 has no part 'R33', 'R3' is the nearest\n", "C3 R33")]
    [InlineData("'C3' is named twice\n", "C3 C1-C3")]
    public void A_place_that_is_not_there_is_refused_with_all_the_others(string message, string places)
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = Enter(copy, "found", "SP-0007", places, "flux around the leads", "minor");
        Assert.Equal((2, message, before), (run.Exit, run.Error, copy.Read(Board)));
    }

    [Theory]
    [InlineData("left edge")]
    [InlineData("J9")]
    [InlineData("pin 3 of J9")]
    public void What_is_told_in_words_is_one_place(string place)
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, "found", "SP-0007", place, "flux", "minor").Exit);
        Assert.Contains($"- {{ at: {place}, what: flux, severity: minor }}\n", copy.Read(Board), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_one_of_them_stands_there_already_nothing_is_written()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, "found", "SP-0007", "C3", "flux", "minor").Exit);
        var once = copy.Read(Board);
        var again = Enter(copy, "found", "SP-0007", "C3 C4", "flux", "minor");
        Assert.Equal(1, again.Exit);
        Assert.Contains("word for word: { at: C3, what: flux, severity: minor }", again.Error, StringComparison.Ordinal);
        Assert.Equal(once, copy.Read(Board));
        Assert.Equal(0, Enter(copy, "found", "SP-0007", "C3 C4", "flux", "minor", "--sure").Exit);
    }

    // None is fitted where one of them cannot be: the record says of each what check would say.
    [Fact]
    public void What_check_would_refuse_of_one_is_refused_of_all()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = Enter(copy, "work", "SP-0007", "replaced", "C3 C4", "--lot", "L-999", "--polarity", "schematic");
        Assert.Equal(1, run.Exit);
        Assert.Equal(before, copy.Read(Board));
    }

    private static Run Enter(CollectionCopy copy, params string[] words) => Run.Of([.. words, "--in", copy.Root, "--as-of", "2026-11-25"]);
}
