using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Pages;

/// <summary>The page that says how verdicts are reached, how the drawings are read, what the states mean, and from what these pages were
/// made.</summary>
public static class AboutPage
{
    private const string Lead =
        "A person writes what was found, measured and done. What follows is computed anew from the records each time these pages are "
        + "written, and no verdict is typed.";

    private static readonly Ledger<(Verdict Example, string Means)> Shapes = new(
        new("Shape", (html, shape) => Shape(html, shape.Example)),
        new("Says", shape => VerdictWords.Describe(shape.Example.Outcome)),
        new("Means", shape => shape.Means)
    );
    private static readonly Ledger<BoardState> StatesAndWhen = new(
        new("State", (html, state) => StateMark.Write(html, state)),
        new("When", state => CollectionWords.When(state))
    );

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context) =>
        PageFrame.Write(buffer, context, new(SiteAddress.About, "How verdicts are reached", Lead), context, static (html, page) =>
            Content(html, page)
        );

    private static void Content(HtmlWriter html, ReportContext context)
    {
        StripShapes.Write(html);
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            html.Open(Tag.H1).Text("How verdicts are reached");
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(Lead);
        }

        Limits(html);
        Rules(html, context.Workshop.Rule);
        Reading(html);
        Draw(html);
        States(html);
        Programs(html, context);
        Made(html, context);
    }

    private static void Limits(HtmlWriter html)
    {
        using var section = Section.Open(html, "limits", "Three kinds of limit", "a verdict names the one it used");
        var list = html.Open(Tag.Dl);
        Term(html, "Delivery limit", "what a new part must keep: its marked tolerance, its data sheet");
        Term(html, "End-of-life limit", "what a worn part may reach and still not count as failed");
        Term(html, "Circuit limit", "what this place in this circuit needs; where one is written it governs the main value of the part");
        list.Close();
        html.Open(Tag.P)
            .Text(
                "A value exactly on a limit is inside. Limits are worked out in decimals: 2200 µF ±20 % ends at exactly 1760 µF. A "
                    + "reading for which no limit is known has no verdict, and that is no pass."
            );
        html.Open(Tag.P)
            .Text(
                "Where the meter showed no figure, the reading is a bound such as > 20 MΩ, or open, short, over range. It is inside or "
                    + "outside only where every value that it allows is; it stands on no scale, in no mean and on no line over the years."
            );
    }

    private static void Rules(HtmlWriter html, DecisionRule chosen)
    {
        using var section = Section.Open(html, "decision", "Near a limit", $"this collection decides by: {chosen.Name}");
        html.Open(Tag.P)
            .Text(
                "Where the instrument and what it is good for are on record, the reading has an expanded uncertainty U with k = 2 "
                    + $"({ReadingUncertainty.Rule}), the calibration's included where the certificate is written. The rule says how U "
                    + "counts; a reading that it cannot decide is undecided."
            );
        new Ledger<DecisionRule>(
            new("Rule", rule => rule == chosen ? $"{rule.Name}, chosen here" : rule.Name),
            new("Asks", rule => rule.Meaning),
            new("Source", rule => rule.Source.Text)
        ).Write(html, "Decision rules", DecisionRule.All);
    }

    private static void Reading(HtmlWriter html)
    {
        using var section = Section.Open(html, "taken", "How it was taken");
        html.Open(Tag.P)
            .Text(
                "A reading taken in a way that cannot prove what it seems to prove says so. In circuit a path beside a part lowers "
                    + "resistance and raises capacitance, never the other way, and raises ESR only so far (circuit theory), so one side "
                    + "of a limit may be proved and the other not. ESR at another frequency than its limit, a value read in the cold or "
                    + "in the warm, a voltage, a minute or a circuit that nobody wrote down, a meter beyond its range: each is told "
                    + "with its reason."
            );
        html.Open(Tag.P)
            .Text(
                "What sits in a place is judged by readings of that very part. A replacement starts a new history, to which the "
                    + "incoming reading of its lot belongs, unless that piece was scrapped. A person may overrule a verdict with a "
                    + "reason; both are shown, and the reading stays as it was written."
            );
    }

    private static void Draw(HtmlWriter html)
    {
        using var section = Section.Open(html, "drawings", "How to read the drawings", "shape first, then colour");
        Shapes.Write(
            html,
            "Shapes",
            [
                (
                    Example(VerdictOutcome.Inside, 51m, 37.6m, 56.4m, 47m, 3m),
                    "the filled band is the room its limits leave, the short stroke below is the nominal value, the line through the disc "
                        + "is the uncertainty"
                ),
                (Example(VerdictOutcome.Outside, 31.8m, 37.6m, 56.4m, 47m, null), "beyond the stroke of the limit it broke"),
                (Example(VerdictOutcome.Undecided, 56m, 37.6m, 56.4m, 47m, 4m), "its uncertainty lies across a limit"),
                (Example(VerdictOutcome.ProvesNothing, 50m, 37.6m, 56.4m, null, null), "it was taken in a way that cannot prove it"),
                (Example(VerdictOutcome.NoLimit, 50m, null, null, null, null), "there is nothing to hold it against"),
                (
                    Example(VerdictOutcome.Inside, 0.2m, null, 10m, null, null),
                    "strokes on the band: each a factor of ten, since the reading is far from its one limit"
                ),
                (
                    Example(VerdictOutcome.Outside, 900m, 37.6m, 56.4m, 47m, null),
                    "two slanting strokes: it lies beyond the end of the drawing"
                ),
            ]
        );
        html.Open(Tag.P)
            .Text(
                "Limits stand at the same place on every strip, so strips below each other compare. With two limits the scale is even; "
                    + "with one it starts from zero, or takes factors of ten. A cross is the part that sat there before, on the same "
                    + "scale. Every number that is drawn stands in words beside it."
            );
    }

    private static void Shape(HtmlWriter html, Verdict example)
    {
        using var tone = html.Open(Tag.Span).With(ClassName.Outcome, VerdictMark.ToneOf(example.Outcome));
        ReadingStrip.Write(html, example, isAlone: true);
    }

    private static Verdict Example(
        VerdictOutcome outcome,
        decimal microfarads,
        decimal? low,
        decimal? high,
        decimal? nominal,
        decimal? uncertainty
    )
    {
        const decimal micro = 1_000_000m;
        Quantity Of(decimal value) => new(value / micro, Dimension.Capacitance);
        var reading = Of(microfarads);
        var verdict = new Verdict(
            outcome,
            Measured.Capacitance,
            new Written<Indication>(Indication.From(reading), QuantityText.Format(reading), new Spot(1, 1)),
            "an example"
        )
        {
            Uncertainty = uncertainty is { } u ? Of(u) : null,
        };
        return low is null && high is null
            ? verdict
            : verdict with
            {
                Limit = new Assessment.Limits.Limit(
                    Assessment.Limits.LimitKind.Delivery,
                    new Interval(low is { } lower ? Of(lower) : null, high is { } upper ? Of(upper) : null),
                    "an example",
                    "an example",
                    "an example"
                )
                {
                    Nominal = nominal is { } middle ? Of(middle) : null,
                },
            };
    }

    private static void States(HtmlWriter html)
    {
        using var section = Section.Open(html, "states", "States of a board", "the worst that applies counts");
        StatesAndWhen.Write(html, "States", BoardStates.WorstFirst);
    }

    private static void Programs(HtmlWriter html, ReportContext context)
    {
        if (context.ForPrograms.Count == 0)
        {
            return;
        }

        using var section = Section.Open(html, "programs", "For programs", "the same as tables, for other programs and sites");
        using (html.Open(Tag.Ul))
        {
            foreach (var other in context.ForPrograms)
            {
                using var item = html.Open(Tag.Li);
                html.Open(Tag.A).To(LocalLink.ToFile(other.Path)).Text(other.Path);
                html.Text($": {other.Title.TrimEnd('.')}");
            }
        }

        BadgeSnippet.Write(html, context);
    }

    private static void Made(HtmlWriter html, ReportContext context)
    {
        using var section = Section.Open(html, "made", "These pages");
        var list = html.Open(Tag.Dl, ClassName.Facts);
        PageFrame.Fact(html, "Written by", $"Ohmstead {context.Version}");
        PageFrame.Fact(html, "As of", PageFrame.Iso(context.Today));
        if (context.Commit is { } commit)
        {
            using var pair = html.Open(Tag.Div);
            html.Open(Tag.Dt).Text("Records");
            using var said = html.Open(Tag.Dd);
            html.Text("commit ");
            RecordLink.Write(html, context, context.Workshop.Collection.Path, commit);
        }
        else
        {
            PageFrame.Fact(html, "Records", "the commit was not given");
        }

        PageFrame.Fact(html, "Collection", context.Workshop.Collection.Name);
        list.Close();
        html.Open(Tag.P)
            .Text(
                "The same records, day and version give the same bytes. The pages need no script and ask for nothing outside their own "
                    + "folder."
            );
    }

    private static void Term(HtmlWriter html, string term, string means)
    {
        html.Open(Tag.Dt).Text(term);
        html.Open(Tag.Dd).Text(means);
    }
}
