using System.Globalization;
using AngleSharp.Dom;
using Ohmstead.Report.Tests.Html;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>The page of the families, and the drifts of a board.</summary>
public sealed class FamiliesPageTests(DemoPages demo) : IClassFixture<DemoPages>
{
    private IDocument Families => demo.Pages["families.html"];

    [Fact]
    public void The_collection_leads_to_it_and_it_leads_back()
    {
        Assert.NotNull(demo.Pages["index.html"].QuerySelector("a[href='families.html']"));
        Assert.NotNull(Families.QuerySelector("a[href='index.html']"));
    }

    [Fact]
    public void No_share_and_no_bar_is_shown_of_fewer_than_five_parts() => Assert.All(Families.QuerySelectorAll("tr[id^=family-]"), row =>
        {
            var measured = int.Parse(row.QuerySelector("td[data-column=Measured]")!.Words(), CultureInfo.InvariantCulture);
            var share = row.QuerySelector("td[data-column=Share]")!;
            Assert.Equal(measured >= 5, share.QuerySelector("svg") is not null);
            Assert.Equal(measured >= 5, share.Words().Contains('%', StringComparison.Ordinal));
        });

    [Fact]
    public void Families_of_which_too_few_were_measured_are_folded_and_counted()
    {
        var fold = Families
            .QuerySelector("#s-shares")!
            .Closest("section")!
            .QuerySelectorAll("details")
            .Single(one => one.QuerySelector("table") is not null);
        var rows = fold.QuerySelectorAll("tr[id^=family-]");
        Assert.Equal($"{rows.Length} families of which too few were measured to say", fold.QuerySelector("summary")!.Words());
        Assert.All(rows, row => Assert.Equal("too few to say", row.QuerySelector("td[data-column=Share]")!.Words()));
        Assert.All(Families.QuerySelectorAll("tr[id^=family-]").Except(rows), row =>
            Assert.NotEqual("too few to say", row.QuerySelector("td[data-column=Share]")!.Words())
        );
    }

    [Fact]
    public void The_axes_are_named_and_the_key_stands_once()
    {
        var drawings = Families.QuerySelectorAll("#s-ages ~ * figure svg.plot, section:has(#s-ages) figure svg.plot");
        Assert.NotEmpty(drawings);
        Assert.All(drawings, drawing =>
        {
            var labels = drawing.QuerySelectorAll("text").Select(text => text.Words()).ToArray();
            Assert.Contains("share failed", labels);
            Assert.Contains("age in years", labels);
        });
        Assert.Single(Families.QuerySelectorAll("svg.plot > title"), title => title.Words() == "Key of the drawings by age");
    }

    // A family whose failures fall into one range of ages, and of which no life can be told, is folded; every other is not.
    [Fact]
    public void Ages_that_say_little_are_folded()
    {
        var figures = Families.QuerySelector("#s-ages")!.Closest("section")!.QuerySelectorAll("figure");
        Assert.Contains(figures, figure => figure.Closest("details") is not null);
        Assert.All(figures, figure =>
        {
            var ranges = figure.QuerySelectorAll("tbody tr").Count(row => !row.Words().StartsWith("not by", StringComparison.Ordinal));
            var hasLife = figure.QuerySelector("path.dotted") is not null;
            Assert.Equal(ranges < 2 && !hasLife, figure.Closest("details") is not null);
        });
    }

    [Fact]
    public void Every_bar_says_in_words_what_it_draws() => Assert.All(Families.QuerySelectorAll("svg.bar"), bar =>
        {
            var words = bar.ParentElement!.QuerySelector("summary")!.Words();
            Assert.EndsWith(words, bar.QuerySelector("title")!.Words(), StringComparison.Ordinal);
            Assert.NotEmpty(bar.QuerySelector("desc")!.Words());
            Assert.Equal("img", bar.GetAttribute("role"));
        });

    [Fact]
    public void The_demo_has_a_family_that_fails_one_that_does_not_and_ages_at_failure()
    {
        var words = Families.QuerySelectorAll("td[data-column=Share] summary").Select(share => share.Words()).ToArray();
        Assert.Contains(words, share => share.StartsWith("none, at most ", StringComparison.Ordinal));
        Assert.Contains(words, share => !share.StartsWith("none", StringComparison.Ordinal));
        Assert.NotEmpty(Families.QuerySelectorAll("#s-ages")[0].Closest("section")!.QuerySelectorAll("table tbody tr"));
    }

    // Readings of three springs, 936.4, 899.0 and 862.1 µF: about 37 µF a year, and the line is at 800 µF (1000 µF less 20 %) 3.7 years
    // after the first.
    [Fact]
    public void A_board_that_is_read_each_spring_shows_where_a_part_is_going()
    {
        var row = demo.Pages["boards/SP-0020.html"].QuerySelector("#s-drift")!.Closest("section")!.QuerySelector("tbody tr")!;
        Assert.Contains("falls by 37.", row.Words(), StringComparison.Ordinal);
        Assert.Matches("may meet 800 µF from 2027-[0-9-]+ on, the line itself does on 2027-1[0-2]", row.Words());
    }

    [Fact]
    public void A_board_with_too_few_readings_has_no_section_of_drifts() =>
        Assert.Null(demo.Pages["boards/SP-0014.html"].QuerySelector("#s-drift"));
}
