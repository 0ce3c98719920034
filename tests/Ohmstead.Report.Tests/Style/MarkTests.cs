using AngleSharp.Dom;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Style;
using Ohmstead.Report.Tests.Html;

namespace Ohmstead.Report.Tests.Style;

public class MarkTests
{
    private static readonly VerdictOutcome[] Outcomes = Enum.GetValues<VerdictOutcome>();

    [Fact]
    public void Every_state_has_a_shape_of_its_own() =>
        Assert.Equal(
            BoardStates.All.Count,
            BoardStates
                .All.Select(state => Shape(Probe.Body(html => StateMark.Write(html, state))))
                .Distinct(StringComparer.Ordinal)
                .Count()
        );

    [Fact]
    public void Every_outcome_has_a_shape_of_its_own() =>
        Assert.Equal(
            Outcomes.Length,
            Outcomes.Select(outcome => Shape(Probe.Body(html => VerdictMark.Write(html, outcome)))).Distinct(StringComparer.Ordinal).Count()
        );

    [Fact]
    public void A_mark_is_hidden_from_those_who_hear_the_page_and_its_word_stands_beside()
    {
        Assert.All(BoardStates.All, state => Check(Probe.Body(html => StateMark.Write(html, state)), BoardStates.Words(state)));
        Assert.All(Outcomes, outcome => Check(Probe.Body(html => VerdictMark.Write(html, outcome)), VerdictWords.Describe(outcome)));
    }

    private static string Shape(IElement body) =>
        string.Concat(
            body.QuerySelectorAll("path, use").Select(shape => shape.GetAttribute("d") + shape.GetAttribute("href") + shape.ClassName)
        );

    private static void Check(IElement body, string words)
    {
        var mark = body.QuerySelector("svg")!;
        Assert.True(mark.GetAttribute("aria-hidden") == "true" || (mark.GetAttribute("role") == "none" && mark.TextContent.Length == 0));
        Assert.Equal(words, body.TextContent.Trim());
        Harmless.Check(body);
    }
}
