using System.Globalization;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>What fits a place: folded below the part, the reasons that call for a look first.</summary>
internal static class FitFold
{
    // The best few are what somebody takes from the drawer; a drawer full of lots that fit would bury them.
    private const int Most = 4;

    /// <summary>Writes whether the part that was fitted fits, and why.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="verdict">How it fits.</param>
    /// <param name="working">What the page tells once.</param>
    /// <param name="here">The place.</param>
    public static void Replacement(HtmlWriter html, FitVerdict verdict, SharedWorking working, PageAnchor here)
    {
        using var fold = html.Open(Tag.Details, ClassName.Fold);
        var words = FitWords.Describe(verdict);
        html.Open(Tag.Summary).Text(verdict.Outcome == ReasonWeight.For ? "It fits" : char.ToUpperInvariant(words[0]) + words[1..]);
        using var list = html.Open(Tag.Ul);
        Against(html, verdict, working.Sources);
        For(html, verdict, working, here);
    }

    /// <summary>Writes what would fit a place that needs a part: out of the drawer, and what to look for.</summary>
    public static void Wanted(HtmlWriter html, FitReport report)
    {
        using var fold = html.Open(Tag.Details, ClassName.Fold);
        var best = string.Join(", ", report.Fitting.Take(Most).Select(Short));
        html.Open(Tag.Summary)
            .Text(
                report.Fitting.Count > 0 ? $"Fits from the drawer: {best}{Rest(report.Fitting.Count)}"
                : report.Together.Count > 0
                    ? $"Fits from the drawer: {string.Join(" or ", report.Together.Select(pair => pair.Verdict.Lot))}"
                : "Nothing in the drawer fits: what to look for"
            );
        using var list = html.Open(Tag.Ul);
        foreach (var assumption in report.Assumptions)
        {
            html.Open(Tag.Li).Text(assumption);
        }

        // How many are left of a lot that fits stands in the line above.
        Candidates(html, report.Fitting.Take(Most), Name);
        Candidates(html, report.Together.Take(Most), Short);
        foreach (var unknown in report.Unknown.Take(Most).GroupBy(Unknown))
        {
            html.Open(Tag.Li).Text($"{string.Join(", ", unknown.Select(Short))}, {unknown.Key}");
        }

        foreach (var refused in report.Refused.Take(Most).GroupBy(candidate => FitWords.Weightiest(candidate.Verdict)))
        {
            var does = refused.Count() == 1 ? "does" : "do";
            html.Open(Tag.Li).Text($"{string.Join(", ", refused.Select(Name))} {does} not: {refused.Key}");
        }

        if (report.Fitting.Count > Most || report.Together.Count > Most || report.Unknown.Count > Most || report.Refused.Count > Most)
        {
            html.Open(Tag.Li).Text("The best four are told, four that are not known and four that do not fit; ohmstead fit tells all.");
        }

        Need(html, report.Need);
    }

    /// <summary>Writes what to look for where nothing is known of the drawer.</summary>
    public static void Wanted(HtmlWriter html, IReadOnlyList<NeedLine> need)
    {
        using var fold = html.Open(Tag.Details, ClassName.Fold);
        html.Open(Tag.Summary).Text("What to look for");
        using var list = html.Open(Tag.Ul);
        Need(html, need);
    }

    private static void Need(HtmlWriter html, IReadOnlyList<NeedLine> need)
    {
        foreach (var line in need)
        {
            html.Open(Tag.Li).Text($"Look for {line.Aspect}: {line.Words}{FitWords.Cited(line.Source)}");
        }

        html.Open(Tag.Li).Text($"{char.ToUpperInvariant(FitWords.Unsourced[0])}{FitWords.Unsourced[1..]}.");
    }

    // Lots that fit for the same reasons tell them once. The best stay first.
    private static void Candidates(HtmlWriter html, IEnumerable<FitCandidate> candidates, Func<FitCandidate, string> name)
    {
        foreach (var alike in candidates.GroupBy(one => (What: PartWords.Describe(one.Values), Why: Reasons(one.Verdict))))
        {
            var verdict = alike.First().Verdict;
            using var item = html.Open(Tag.Li);
            html.Text($"{string.Join(", ", alike.Select(name))}, {alike.Key.What}: {FitWords.Describe(verdict)}");
            using var reasons = html.Open(Tag.Ul);
            Reasons(html, verdict);
        }
    }

    private static void Reasons(HtmlWriter html, FitVerdict verdict)
    {
        Against(html, verdict, null);
        if (Good(verdict).Any())
        {
            using var line = html.Open(Tag.Li);
            html.Text("for, ");
            Each(html, Good(verdict), null);
        }
    }

    private static void Against(HtmlWriter html, FitVerdict verdict, SourceList? sources)
    {
        foreach (var reason in verdict.Reasons)
        {
            if (reason.Weight != ReasonWeight.For)
            {
                using var against = html.Open(Tag.Li);
                html.Text($"{FitWords.Describe(reason.Weight)}, {reason.Aspect}: {reason.Words}");
                Cite(html, reason, sources);
            }
        }
    }

    // What fits is one line: nobody looks for it, but it must be there to be checked. What was told of another place leads there.
    private static void For(HtmlWriter html, FitVerdict verdict, SharedWorking working, PageAnchor here)
    {
        if (!Good(verdict).Any())
        {
            return;
        }

        using var line = html.Open(Tag.Li);
        html.Text("for, ");
        var told = Good(verdict).ToLookup(reason => working.ToldOfFit(FitWords.Describe(reason), here));
        Each(html, told[null], working.Sources);
        var between = told.Contains(null) ? "; " : string.Empty;
        foreach (var before in told)
        {
            if (before.Key is { } place)
            {
                html.Text($"{between}{string.Join(", ", before.Select(reason => reason.Aspect))} as at ");
                place.Link(html);
                between = "; ";
            }
        }
    }

    private static void Each(HtmlWriter html, IEnumerable<FitReason> reasons, SourceList? sources)
    {
        var between = string.Empty;
        foreach (var reason in reasons)
        {
            html.Text($"{between}{reason.Aspect}: {reason.Words}");
            Cite(html, reason, sources);
            between = "; ";
        }
    }

    private static void Cite(HtmlWriter html, FitReason reason, SourceList? sources)
    {
        if (sources is not null && reason.Source != Source.CommonPractice)
        {
            sources.Cite(html, reason.Source.Text);
        }
        else
        {
            html.Text(FitWords.Cited(reason.Source));
        }
    }

    private static IEnumerable<FitReason> Good(FitVerdict verdict) => verdict.Reasons.Where(reason => reason.Weight == ReasonWeight.For);

    private static string Reasons(FitVerdict verdict) => string.Join('\n', verdict.Reasons.Select(FitWords.Describe));

    private static string Unknown(FitCandidate candidate) =>
        $"{PartWords.Describe(candidate.Values)}: {FitWords.Describe(candidate.Verdict)}: {FitWords.Weightiest(candidate.Verdict)}";

    private static string Rest(int count) =>
        count > Most ? string.Create(CultureInfo.InvariantCulture, $" and {count - Most} more") : string.Empty;

    private static string Name(FitCandidate candidate) => candidate.Verdict.Lot;

    private static string Short(FitCandidate candidate) =>
        string.Create(CultureInfo.InvariantCulture, $"{candidate.Verdict.Lot} ({candidate.Left} left)");
}
