using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Fit;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Report.Html;
using Reason = Ohmstead.Electronics.Substitution.Reason;

namespace Ohmstead.Report.Pages;

/// <summary>What fits a place: folded below the part, the reasons that call for a look first.</summary>
internal static class FitFold
{
    // The best few are what somebody takes from the drawer; a drawer full of lots that fit would bury them.
    private const int Most = 4;

    /// <summary>Writes whether the part that was fitted fits, and why.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="verdict">How it fits.</param>
    /// <param name="sources">The sources of the page, each told once.</param>
    public static void Replacement(HtmlWriter html, FitVerdict verdict, SourceList sources)
    {
        using var fold = html.Open(Tag.Details, ClassName.Fold);
        html.Open(Tag.Summary).Text(verdict.Outcome == ReasonWeight.For ? "It fits" : char.ToUpperInvariant(FitWords.Of(verdict)[0]) + FitWords.Of(verdict)[1..]);
        using var list = html.Open(Tag.Ul);
        Reasons(html, verdict, null, sources);
    }

    /// <summary>Writes what would fit a place that needs a part: out of the drawer, and what to look for.</summary>
    public static void Wanted(HtmlWriter html, FitReport report)
    {
        using var fold = html.Open(Tag.Details, ClassName.Fold);
        html.Open(Tag.Summary).Text(report.Fitting.Count > 0 ? $"Fits from the drawer: {string.Join(", ", report.Fitting.Take(Most).Select(Short))}{Rest(report.Fitting.Count)}"
            : report.Together.Count > 0 ? $"Fits from the drawer: {string.Join(" or ", report.Together.Select(pair => pair.Verdict.Lot))}"
            : "Nothing in the drawer fits: what to look for");
        using var list = html.Open(Tag.Ul);
        foreach (var assumption in report.Assumptions)
        {
            html.Open(Tag.Li).Text(assumption);
        }

        FitVerdict? before = null;
        foreach (var candidate in report.Fitting.Take(Most).Concat(report.Together.Take(Most)))
        {
            using var item = html.Open(Tag.Li);
            html.Text($"{Short(candidate)}, {PartWords.Describe(candidate.Values)}: {FitWords.Of(candidate.Verdict)}");
            using var reasons = html.Open(Tag.Ul);
            Reasons(html, candidate.Verdict, before);
            before = candidate.Verdict;
        }

        foreach (var unknown in report.Unknown.Take(Most))
        {
            html.Open(Tag.Li).Text($"{Short(unknown)}, {PartWords.Describe(unknown.Values)}: {FitWords.Of(unknown.Verdict)}: {FitWords.Weightiest(unknown.Verdict)}");
        }

        foreach (var refused in report.Refused.Take(Most))
        {
            html.Open(Tag.Li).Text($"{refused.Verdict.Lot} does not: {FitWords.Weightiest(refused.Verdict)}");
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

    // Lots that fit for the same reasons tell them once.
    private static void Reasons(HtmlWriter html, FitVerdict verdict, FitVerdict? before, SourceList? sources = null)
    {
        var good = 0;
        foreach (var reason in verdict.Reasons)
        {
            if (reason.Weight == ReasonWeight.For)
            {
                good++;
            }
            else
            {
                using var against = html.Open(Tag.Li);
                html.Text($"{FitWords.Of(reason.Weight)}, {reason.Aspect}: {reason.Words}");
                Cite(html, reason, sources);
            }
        }

        if (good == 0)
        {
            return;
        }

        // What fits is one line: nobody looks for it, but it must be there to be checked.
        using var line = html.Open(Tag.Li);
        html.Text("for, ");
        if (before is not null && Good(before).SequenceEqual(Good(verdict), SameWords.Instance))
        {
            html.Text("the same as the one before");
            return;
        }

        var between = string.Empty;
        foreach (var reason in Good(verdict))
        {
            html.Text($"{between}{reason.Aspect}: {reason.Words}");
            Cite(html, reason, sources);
            between = "; ";
        }
    }

    private static void Cite(HtmlWriter html, Reason reason, SourceList? sources)
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

    private static IEnumerable<Reason> Good(FitVerdict verdict) => verdict.Reasons.Where(reason => reason.Weight == ReasonWeight.For);

    private static string Rest(int count) => count > Most ? string.Create(CultureInfo.InvariantCulture, $" and {count - Most} more") : string.Empty;

    private static string Short(FitCandidate candidate) => string.Create(CultureInfo.InvariantCulture, $"{candidate.Verdict.Lot} ({candidate.Left} left)");

    private sealed class SameWords : IEqualityComparer<Reason>
    {
        internal static SameWords Instance { get; } = new();

        public bool Equals(Reason? x, Reason? y) =>
            ReferenceEquals(x, y) || (x is not null && y is not null && x.Aspect == y.Aspect && x.Words.Text == y.Words.Text && x.Source == y.Source);

        public int GetHashCode(Reason obj) => obj.Aspect.GetHashCode(StringComparison.Ordinal);
    }
}
