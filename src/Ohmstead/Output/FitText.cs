using System.Globalization;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>What would fit a place, as text for people.</summary>
internal static class FitText
{
    /// <summary>Writes the report.</summary>
    /// <param name="target">Where to.</param>
    /// <param name="board">The number of the board.</param>
    /// <param name="reference">The place.</param>
    /// <param name="report">What fits it.</param>
    public static void Write(TextWriter target, string board, string reference, FitReport report)
    {
        Line(target, $"{board} {reference}: {report.What}");
        foreach (var assumption in report.Assumptions)
        {
            Line(target, $"  {assumption}");
        }

        Line(target, report.Fitting.Count == 0 ? "in the drawer: nothing that fits" : "in the drawer, the best first:");
        Candidates(target, report.Fitting);
        if (report.Together.Count > 0)
        {
            Line(target, "two together:");
            Candidates(target, report.Together);
        }

        if (report.Unknown.Count > 0)
        {
            Line(target, "in the drawer, and not known whether they fit, since a rating is not written:");
            Candidates(target, report.Unknown);
        }

        if (report.Refused.Count > 0)
        {
            Line(target, "in the drawer, but not for this place:");
            foreach (var refused in report.Refused)
            {
                Line(target, $"  {refused.Verdict.Lot}, {PartWords.Describe(refused.Values)}: {FitWords.Weightiest(refused.Verdict)}");
            }
        }

        Line(target, "what to look for:");
        foreach (var need in report.Need)
        {
            Line(target, $"  {need.Aspect}: {need.Words}{FitWords.Cited(need.Source)}");
        }

        Line(target, FitWords.Unsourced);
    }

    private static void Candidates(TextWriter target, IReadOnlyList<FitCandidate> candidates)
    {
        foreach (var candidate in candidates)
        {
            Line(
                target,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"  {candidate.Verdict.Lot}, {candidate.Left} left: {PartWords.Describe(candidate.Values)}: "
                        + $"{FitWords.Describe(candidate.Verdict)}"
                )
            );
            foreach (var reason in candidate.Verdict.Reasons)
            {
                Line(target, $"    {FitWords.Describe(reason)}");
            }
        }
    }

    private static void Line(TextWriter target, string text) => target.WriteLine(Printable.Escape(text));
}
