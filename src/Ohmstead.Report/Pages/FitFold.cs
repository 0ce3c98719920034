using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Fit;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>What fits a place: folded below the part, the reasons that call for a look first.</summary>
internal static class FitFold
{
    // The best few are what somebody takes from the drawer; a drawer full of lots that fit would bury them.
    private const int Most = 4;

    /// <summary>Writes whether the part that was fitted fits, and why.</summary>
    public static void Replacement(HtmlWriter html, FitVerdict verdict)
    {
        using var fold = html.Open(Tag.Details, ClassName.Fold);
        html.Open(Tag.Summary).Text(verdict.Outcome == ReasonWeight.For ? "It fits" : char.ToUpperInvariant(FitWords.Of(verdict)[0]) + FitWords.Of(verdict)[1..]);
        using var list = html.Open(Tag.Ul);
        Reasons(html, verdict);
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

        string? before = null;
        foreach (var candidate in report.Fitting.Take(Most).Concat(report.Together.Take(Most)))
        {
            using var item = html.Open(Tag.Li);
            html.Text($"{Short(candidate)}, {PartWords.Describe(candidate.Values)}: {FitWords.Of(candidate.Verdict)}");
            using var reasons = html.Open(Tag.Ul);
            before = Reasons(html, candidate.Verdict, before);
        }

        foreach (var refused in report.Refused.Take(Most))
        {
            html.Open(Tag.Li).Text($"{refused.Verdict.Lot} does not: {FitWords.Weightiest(refused.Verdict)}");
        }

        if (report.Fitting.Count > Most || report.Together.Count > Most || report.Refused.Count > Most)
        {
            html.Open(Tag.Li).Text("The best four are told, and four that do not fit; ohmstead fit tells all.");
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

    // Lots that fit for the same reasons tell them once. Returns the reasons that speak for it.
    private static string Reasons(HtmlWriter html, FitVerdict verdict, string? before = null)
    {
        foreach (var reason in verdict.Reasons.Where(reason => reason.Weight != ReasonWeight.For))
        {
            html.Open(Tag.Li).Text(FitWords.Of(reason));
        }

        // What fits is one line: nobody looks for it, but it must be there to be checked.
        string[] good = [.. verdict.Reasons.Where(reason => reason.Weight == ReasonWeight.For).Select(reason => $"{reason.Aspect}: {reason.Words}{FitWords.Cited(reason.Source)}")];
        var words = string.Join("; ", good);
        if (words.Length > 0)
        {
            html.Open(Tag.Li).Text(words == before ? "for, the same as the one before" : $"for, {words}");
        }

        return words;
    }

    private static string Rest(int count) => count > Most ? string.Create(CultureInfo.InvariantCulture, $" and {count - Most} more") : string.Empty;

    private static string Short(FitCandidate candidate) => string.Create(CultureInfo.InvariantCulture, $"{candidate.Verdict.Lot} ({candidate.Left} left)");
}
