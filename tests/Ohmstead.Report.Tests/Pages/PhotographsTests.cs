namespace Ohmstead.Report.Tests.Pages;

public sealed class PhotographsTests
{
    private const string Record = """
        ---
        board: X-1
        title: Line unit
        format: 1
        parts:
          - { ref: C1, kind: suppression capacitor, capacitance: 100 nF, safety_class: X2 }
          - { ref: C2, kind: suppression capacitor, capacitance: 2.2 nF, safety_class: Y2 }
        bench:
          - date: 2026-02-28
            by: RK
            work:
              - { part: C1, did: removed, kept: bag 1 }
            photos:
              - { file: photos/X-1/c1-old.jpg, shows: the cracks in C1 }
              - { file: photos/X-1/c2-old.jpg, shows: hairlines in C2 }
              - { file: photos/X-1/damaged.jpg, shows: nothing that can be opened }
          - date: 2026-05-02
            by: RK
            photos:
              - { file: photos/X-1/c1-new.jpg, shows: "the place of C1, <empty>" }
              - { file: photos/X-1/c2-again.jpg, shows: C2 is as it was }
        ---

        """;

    [Fact]
    public void Photographs_of_one_place_with_work_between_stand_side_by_side_the_earlier_first()
    {
        var pair = Assert.Single(OneBoard.Page(Record).QuerySelectorAll(".pair"));
        Assert.Equal(
            ["2026-02-28: the cracks in C1", "2026-05-02: the place of C1, <empty>"],
            pair.QuerySelectorAll("figcaption").Select(caption => caption.TextContent.Trim())
        );
        Assert.Contains("removed on 2026-02-28", pair.PreviousElementSibling!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Photographs_of_a_place_where_nothing_was_done_are_no_before_and_after() =>
        Assert.Equal(
            ["C2 is as it was", "hairlines in C2"],
            OneBoard.Page(Record).QuerySelectorAll("figure:not(.pair figure) img").Select(picture => picture.GetAttribute("alt"))
        );

    [Fact]
    public void The_latest_photograph_that_is_no_half_of_a_pair_stands_beside_the_state_and_nowhere_else() =>
        Assert.Equal("C2 is as it was", Assert.Single(OneBoard.Page(Record).QuerySelectorAll("header figure img")).GetAttribute("alt"));

    [Fact]
    public void Every_photograph_says_what_it_shows_and_how_much_room_it_needs_and_leads_to_the_larger_one() =>
        Assert.All(OneBoard.Page(Record).QuerySelectorAll("figure"), figure =>
        {
            var picture = figure.QuerySelector("img")!;
            Assert.False(string.IsNullOrEmpty(picture.GetAttribute("alt")));
            Assert.Equal(
                ("480", "360", "lazy"),
                (picture.GetAttribute("width"), picture.GetAttribute("height"), picture.GetAttribute("loading"))
            );
            Assert.EndsWith(".small.jpg", picture.GetAttribute("src"), StringComparison.Ordinal);
            Assert.Equal(
                picture.GetAttribute("src")!.Replace(".small", string.Empty, StringComparison.Ordinal),
                picture.ParentElement!.GetAttribute("href")
            );
        });

    [Fact]
    public void A_photograph_that_cannot_be_shown_leaves_no_hole() =>
        Assert.DoesNotContain("damaged", OneBoard.Page(Record).QuerySelector("section:has(.pair)")!.InnerHtml, StringComparison.Ordinal);
}
