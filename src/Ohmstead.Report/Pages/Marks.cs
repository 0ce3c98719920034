using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>
/// Marks that tell by shape. A verdict is a point against the two lines of a limit: between them, beyond them, on one of them. A state is a lamp:
/// lit, ringed, dark, half, barred, in a triangle. Colour comes second; the word always stands beside.
/// </summary>
public static class Marks
{
    private const string Size = "0 0 24 16";

    /// <summary>The mark and the word of a verdict.</summary>
    public static void Verdict(HtmlWriter html, VerdictOutcome outcome)
    {
        var (path, pointAt, tone) = outcome switch
        {
            VerdictOutcome.Inside => ("M5 2V14M19 2V14", 12, ClassName.Good),
            VerdictOutcome.Outside => ("M3 2V14M14 2V14", 20, ClassName.Bad),
            VerdictOutcome.Undecided => ("M4 2V14M16 2V5.5M16 10.5V14", 16, ClassName.Open),
            VerdictOutcome.ProvesNothing => ("M5 2V5M5 7V9M5 11V14M19 2V5M19 7V9M19 11V14", 0, ClassName.Quiet),
            _ => ("M8 8H16", 0, ClassName.Quiet),
        };
        using var verdict = html.Open(Tag.Span).With(ClassName.Verdict, tone);
        using (html.Open(Tag.Svg, ClassName.Mark).With(TextAttribute.ViewBox, Size).With(FixedAttribute.AriaHidden))
        {
            html.Open(Tag.Path, ClassName.MarkLine).With(TextAttribute.PathData, path).Close();
            if (pointAt > 0)
            {
                html.Open(Tag.Circle, ClassName.MarkFill).With(NumberAttribute.Cx, pointAt).With(NumberAttribute.Cy, 8).With(NumberAttribute.R, 3).Close();
            }
        }

        html.Text(" ");
        html.Text(VerdictWords.Of(outcome));
    }

    /// <summary>The mark and the words of a state.</summary>
    public static void State(HtmlWriter html, BoardState state)
    {
        using var box = html.Open(Tag.Span).With(ClassName.State, ToneOf(state));
        using (html.Open(Tag.Svg, ClassName.Mark).With(TextAttribute.ViewBox, Size).With(FixedAttribute.AriaHidden))
        {
            var (line, fill) = state switch
            {
                BoardState.FitToRun => ("M12 1V2M12 14V15M5 8H6M18 8H19M7 3L7.7 3.7M16.3 12.3L17 13M17 3L16.3 3.7M7.7 12.3L7 13", "M12 4A4 4 0 0 1 12 12A4 4 0 0 1 12 4Z"),
                BoardState.ProofDue => ("M12 3A5 5 0 0 1 12 13A5 5 0 0 1 12 3Z", "M12 3A5 5 0 0 1 12 13Z"),
                BoardState.NotLookedAt => ("M12 3A5 5 0 0 1 12 13A5 5 0 0 1 12 3Z", string.Empty),
                BoardState.Waiting => ("M7 2H17M7 14H17", "M8 3H16L12 8L16 13H8L12 8Z"),
                BoardState.FaultStands => ("M4 8H8M16 8H20", "M12 2L18 8L12 14L6 8Z"),
                _ => ("M12 2L21 14H3Z", "M11 6H13V10H11ZM11 11H13V13H11Z"),
            };
            html.Open(Tag.Path, ClassName.MarkLine).With(TextAttribute.PathData, line).Close();
            if (fill.Length > 0)
            {
                html.Open(Tag.Path, ClassName.MarkFill).With(TextAttribute.PathData, fill).Close();
            }
        }

        html.Text(" ");
        html.Text(BoardStates.Words(state));
    }

    private static ClassName ToneOf(BoardState state) => state switch
    {
        BoardState.FitToRun => ClassName.Good,
        BoardState.FaultStands or BoardState.MakeSafe => ClassName.Bad,
        BoardState.NotLookedAt => ClassName.Quiet,
        _ => ClassName.Open,
    };
}
