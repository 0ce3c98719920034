using Ohmstead.Assessment.History;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Style;

/// <summary>
/// The mark and the words of a state. The mark is a pair of contacts: joined, joined to one that is still hollow, hollow both, joined by
/// dots, open; earth for what must be made safe first. Behind glass for what is kept for show, one contact where the board is gone, the two
/// crossed out where it was broken up. Colour comes second.
/// </summary>
public static class StateMark
{
    private const string Left = "M4 4a2 2 0 1 1 0 4a2 2 0 1 1 0-4z";
    private const string Right = "M20 4a2 2 0 1 1 0 4a2 2 0 1 1 0-4z";

    /// <summary>Writes the mark and the words, and what is said beside the state.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="state">The state.</param>
    /// <param name="overdueSince">Since when the inspection is overdue; null when it is not, or when no one board is meant.</param>
    public static void Write(HtmlWriter html, BoardState state, DateOnly? overdueSince = null)
    {
        using (html.Open(Tag.Span).With(ClassName.State, ToneOf(state)))
        {
            using (html.Open(Tag.Svg, ClassName.Mark).With(TextAttribute.ViewBox, "0 0 24 12").With(FixedAttribute.AriaHidden))
            {
                Draw(html, state);
            }

            html.Text(" ");
            html.Text(BoardStates.Words(state));
        }

        if (BoardStates.OverdueWords(overdueSince) is { } beside)
        {
            html.Text($"; {beside}");
        }
    }

    /// <summary>Draws the mark into a drawing, on a field of 24 by 12.</summary>
    internal static void Draw(HtmlWriter html, BoardState state)
    {
        foreach (var (path, stroke) in Strokes(state))
        {
            Draw(
                html,
                path,
                stroke switch
                {
                    MarkStroke.Full => ClassName.Full,
                    MarkStroke.Dotted => ClassName.Dotted,
                    _ => null,
                }
            );
        }
    }

    /// <summary>The shapes of the mark, on a field of 24 by 12.</summary>
    internal static IReadOnlyList<(string Path, MarkStroke Stroke)> Strokes(BoardState state) =>
        state switch
        {
            BoardState.FitToRun => [(Left + Right, MarkStroke.Full), ("M5 6h14", MarkStroke.Line)],
            BoardState.AsTold => [(Left + Right, MarkStroke.Line), ("M5 6h14", MarkStroke.Dotted)],
            BoardState.ProofDue => [(Left, MarkStroke.Full), ("M5 6h13" + Right, MarkStroke.Line)],
            BoardState.NotLookedAt => [(Left + Right, MarkStroke.Line)],
            BoardState.Waiting => [(Left + Right, MarkStroke.Full), ("M8 6h9", MarkStroke.Dotted)],
            BoardState.FaultStands => [(Left + Right, MarkStroke.Full), ("M5 6L16 0", MarkStroke.Line)],
            BoardState.Retired => [(Left + Right, MarkStroke.Line), ("M1 1h22v10H1z", MarkStroke.Line)],
            BoardState.Gone => [(Left, MarkStroke.Line), ("M8 6h4", MarkStroke.Dotted)],
            BoardState.BrokenUp => [(Left + Right, MarkStroke.Line), ("M9 1l6 10M15 1l-6 10", MarkStroke.Line)],
            _ => [("M12 0v4M3 4h18M7 7.5h10M10.5 11h3", MarkStroke.Line)],
        };

    private static void Draw(HtmlWriter html, string path, ClassName? style)
    {
        var stroke = html.Open(Tag.Path);
        if (style is not null)
        {
            stroke.With(style);
        }

        stroke.With(TextAttribute.PathData, path).Close();
    }

    /// <summary>The colour that goes with a state.</summary>
    internal static ClassName ToneOf(BoardState state) =>
        state switch
        {
            BoardState.FitToRun => ClassName.Good,
            BoardState.FaultStands or BoardState.MakeSafe => ClassName.Bad,
            BoardState.NotLookedAt or BoardState.AsTold or BoardState.Retired or BoardState.Gone or BoardState.BrokenUp => ClassName.Quiet,
            _ => ClassName.Open,
        };
}
