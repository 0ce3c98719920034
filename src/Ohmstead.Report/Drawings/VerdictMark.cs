using Ohmstead.Assessment.Verdicts;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Drawings;

/// <summary>The mark and the word of a verdict that has no value to draw: the same shapes as on the strip of a reading, alone. Colour comes
/// second.</summary>
public static class VerdictMark
{
    /// <summary>Writes the mark and the word of an outcome that has no value.</summary>
    public static void Write(HtmlWriter html, VerdictOutcome outcome) => Write(html, outcome, VerdictWords.Describe(outcome));

    /// <summary>Writes the mark and the word of a test of function.</summary>
    public static void Test(HtmlWriter html, bool passed) =>
        Write(html, passed ? VerdictOutcome.Inside : VerdictOutcome.Outside, TestWords(passed));

    /// <summary>What a test of function says, in words.</summary>
    internal static string TestWords(bool passed) => passed ? "passed its test" : "failed its test";

    /// <summary>The colour that goes with an outcome.</summary>
    internal static ClassName ToneOf(VerdictOutcome outcome) =>
        outcome switch
        {
            VerdictOutcome.Inside => ClassName.Good,
            VerdictOutcome.Outside => ClassName.Bad,
            VerdictOutcome.Undecided => ClassName.Open,
            _ => ClassName.Quiet,
        };

    /// <summary>Gives a verdict its class, and its tone where it is not inside: nearly all are.</summary>
    internal static Element Toned(this Element verdict, ClassName kind, VerdictOutcome outcome) =>
        outcome == VerdictOutcome.Inside ? verdict.With(kind) : verdict.With(kind, ToneOf(outcome));

    private static void Write(HtmlWriter html, VerdictOutcome outcome, string words)
    {
        using var box = html.Open(Tag.Span).With(ClassName.Outcome, ToneOf(outcome));
        using (html.Open(Tag.Svg, ClassName.Strip).With(FixedAttribute.RoleNone))
        {
            html.Open(Tag.Use).Using(ReadingStrip.ShapeOf(outcome)).With(NumberAttribute.X, StripScale.Wide / 2).Close();
        }

        html.Text(words);
    }
}
