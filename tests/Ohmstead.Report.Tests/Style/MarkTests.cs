using AngleSharp.Dom;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;
using Ohmstead.Report.Style;
using Ohmstead.Report.Tests.Html;

namespace Ohmstead.Report.Tests.Style;

public class MarkTests
{
    private static readonly VerdictOutcome[] Outcomes = Enum.GetValues<VerdictOutcome>();

    [Fact]
    public void Every_state_has_a_shape_of_its_own() =>
        Assert.Equal(BoardStates.All.Count, BoardStates.All.Select(state => Shape(Probe.Body(html => StateMark.Write(html, state)))).Distinct(StringComparer.Ordinal).Count());

    [Fact]
    public void Every_outcome_has_a_shape_of_its_own() =>
        Assert.Equal(Outcomes.Length, Outcomes.Select(outcome => Shape(Probe.Body(html => VerdictMark.Write(html, outcome)))).Distinct(StringComparer.Ordinal).Count());

    [Fact]
    public void A_mark_is_hidden_from_those_who_hear_the_page_and_its_word_stands_beside()
    {
        Assert.All(BoardStates.All, state => Check(Probe.Body(html => StateMark.Write(html, state)), BoardStates.Words(state)));
        Assert.All(Outcomes, outcome => Check(Probe.Body(html => VerdictMark.Write(html, outcome)), VerdictWords.Of(outcome)));
    }

    // The bars stand at 10 and 30 of 40; 470 µF ±20 % allows 376 to 564 µF, and a quarter of the room is 47 µF.
    [Theory]
    [InlineData(470, "20.0")]
    [InlineData(517, "25.0")]
    [InlineData(423, "15.0")]
    [InlineData(376, "13.4")]
    [InlineData(564, "26.6")]
    public void A_reading_inside_is_drawn_where_it_lies_and_never_upon_a_bar(int microfarads, string across) =>
        Assert.Equal(across, Drawn(microfarads, VerdictOutcome.Inside).QuerySelector("circle.full")!.GetAttribute("cx"));

    [Theory]
    [InlineData(61, "M4.5")]
    [InlineData(900, "M35.5")]
    public void A_reading_outside_is_drawn_beyond_the_bar_that_it_broke(int microfarads, string start) =>
        Assert.StartsWith(start, Drawn(microfarads, VerdictOutcome.Outside).QuerySelector("path.full")!.GetAttribute("d"), StringComparison.Ordinal);

    [Theory]
    [InlineData(377, "M4 ")]
    [InlineData(563, "M24 ")]
    public void A_reading_too_close_to_call_lies_across_the_bar(int microfarads, string start) =>
        Assert.StartsWith(start, Drawn(microfarads, VerdictOutcome.Undecided).QuerySelectorAll("path")[^1].GetAttribute("d"), StringComparison.Ordinal);

    [Fact]
    public void The_largest_reading_against_the_narrowest_limit_is_drawn_at_the_edge()
    {
        var limit = new Interval(new Quantity(0.0000000000000000000000000001m, Dimension.Capacitance), new Quantity(0.0000000000000000000000000002m, Dimension.Capacitance));
        Assert.NotNull(Drawn(new Quantity(100m, Dimension.Capacitance), limit, VerdictOutcome.Outside).QuerySelector("path.full"));
    }

    private static IElement Drawn(int microfarads, VerdictOutcome outcome) => Drawn(
        new Quantity(microfarads / 1_000_000m, Dimension.Capacitance),
        new Interval(new Quantity(0.000376m, Dimension.Capacitance), new Quantity(0.000564m, Dimension.Capacitance)),
        outcome);

    private static IElement Drawn(Quantity reading, Interval limits, VerdictOutcome outcome)
    {
        var written = new Written<Quantity>(reading, QuantityText.Format(reading), new Spot(1, 1, 1));
        var verdict = new Verdict(outcome, Measured.Capacitance, written, "a worked example") { Limit = new Limit(LimitKind.Delivery, limits, "the marking", "470 µF ±20 %", "common practice") };
        return Probe.Body(html => VerdictMark.Write(html, verdict));
    }

    private static string Shape(IElement body) => string.Concat(body.QuerySelectorAll("path, circle").Select(shape => shape.GetAttribute("d") + shape.GetAttribute("cx") + shape.ClassName));

    private static void Check(IElement body, string words)
    {
        Assert.Equal("true", body.QuerySelector("svg.mark")!.GetAttribute("aria-hidden"));
        Assert.Equal(words, body.TextContent.Trim());
        Harmless.Check(body);
    }
}
