using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Style;

/// <summary>
/// The mark and the word of a verdict. Bars are the limits that there are; a disc between them, a diamond beyond or a reach across one is the reading,
/// drawn where it lies. Dotted bars cannot be held against it, and a ring alone has none. Colour comes second.
/// </summary>
public static class VerdictMark
{
    private const decimal LowerBar = 10m;
    private const decimal UpperBar = 30m;
    private const decimal Middle = 20m;

    // Room that keeps a disc apart from a bar, so that 'inside' and 'undecided' never look alike.
    private const decimal Clear = 3.4m;

    /// <summary>Writes the mark and the word of a verdict.</summary>
    public static void Write(HtmlWriter html, Verdict verdict) =>
        Write(html, verdict.Outcome, verdict.Limit?.Interval ?? default, verdict.Limit is null ? null : Place(verdict.Reading.Value, verdict.Limit.Interval), VerdictWords.Of(verdict.Outcome));

    /// <summary>Writes the mark and the word of an outcome that has no value.</summary>
    public static void Write(HtmlWriter html, VerdictOutcome outcome) => Write(html, outcome, default, null, VerdictWords.Of(outcome));

    /// <summary>Writes the mark and the word of a test of function.</summary>
    public static void Test(HtmlWriter html, bool passed)
    {
        if (passed)
        {
            Write(html, VerdictOutcome.Inside, default, null, "passed its test");
        }
        else
        {
            Write(html, VerdictOutcome.Outside, default, null, "failed its test");
        }
    }

    private static void Write(HtmlWriter html, VerdictOutcome outcome, Interval limits, decimal? place, string words)
    {
        using var box = html.Open(Tag.Span).With(ClassName.Outcome, ToneOf(outcome));
        using (html.Open(Tag.Svg, ClassName.Mark).With(TextAttribute.ViewBox, "0 0 40 12").With(FixedAttribute.AriaHidden))
        {
            var (bars, between) = (limits.Lower, limits.Upper) switch
            {
                (null, { }) => ("M30 0v12", "M4 6h26"),
                ({ }, null) => ("M10 0v12", "M10 6h26"),
                _ => ("M10 0v12M30 0v12", "M10 6h20"),
            };
            switch (outcome)
            {
                case VerdictOutcome.Inside:
                    Draw(html, bars + between, null);
                    Round(html, Math.Clamp(place ?? Middle, LowerBar + Clear, UpperBar - Clear), ClassName.Full);
                    break;
                case VerdictOutcome.Outside:
                    Draw(html, bars + between, null);
                    Draw(html, place < LowerBar + Clear ? "M4.5 1.5L9 6L4.5 10.5L0 6z" : "M35.5 1.5L40 6L35.5 10.5L31 6z", ClassName.Full);
                    break;
                case VerdictOutcome.Undecided:
                    Draw(html, bars, null);
                    Draw(html, place < Middle ? "M4 6h12M4 3v6M16 3v6" : "M24 6h12M24 3v6M36 3v6", null);
                    break;
                case VerdictOutcome.ProvesNothing:
                    Draw(html, "M10 0v12M30 0v12", ClassName.Dotted);
                    Round(html, Middle, null);
                    break;
                default:
                    Round(html, Middle, null);
                    break;
            }
        }

        html.Text(" ");
        html.Text(words);
    }

    // Between two limits in proportion; below one alone from zero to it, above one alone up to twice it.
    private static decimal Place(Quantity reading, Interval limits)
    {
        var (from, to) = (limits.Lower, limits.Upper) switch
        {
            ({ } lower, { } upper) => (lower.Value, upper.Value),
            (null, { } upper) => (0m, upper.Value),
            ({ } lower, null) => (lower.Value, 2m * lower.Value),
            _ => (0m, 0m),
        };
        var room = to - from;
        return room <= 0m ? Middle
            : reading.Value <= from - room ? 0m
            : reading.Value >= to + room ? 2m * Middle
            : decimal.Round(Math.Clamp(LowerBar + ((UpperBar - LowerBar) * ((reading.Value - from) / room)), 0m, 2m * Middle), 1);
    }

    private static void Round(HtmlWriter html, decimal place, ClassName? style)
    {
        var circle = html.Open(Tag.Circle);
        if (style is not null)
        {
            circle.With(style);
        }

        circle.With(NumberAttribute.Cx, place).With(NumberAttribute.Cy, 6).With(NumberAttribute.R, 3).Close();
    }

    private static void Draw(HtmlWriter html, string path, ClassName? style)
    {
        var stroke = html.Open(Tag.Path);
        if (style is not null)
        {
            stroke.With(style);
        }

        stroke.With(TextAttribute.PathData, path).Close();
    }

    private static ClassName ToneOf(VerdictOutcome outcome) => outcome switch
    {
        VerdictOutcome.Inside => ClassName.Good,
        VerdictOutcome.Outside => ClassName.Bad,
        VerdictOutcome.Undecided => ClassName.Open,
        _ => ClassName.Quiet,
    };
}
