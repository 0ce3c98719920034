using Ohmstead.Electronics;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Assessment.Fit;

/// <summary>Verdicts on what fits, in words.</summary>
public static class FitWords
{
    /// <summary>What is said once below rules that name no source.</summary>
    public const string Unsourced =
        "where no source stands, the rule is common practice; the marks decide, not the part: measure before you fit";

    /// <summary>The verdict.</summary>
    public static string Describe(FitVerdict verdict) =>
        verdict.Outcome switch
        {
            ReasonWeight.For => "fits",
            ReasonWeight.Doubt => verdict.Doubts == 0 ? "fits, with care"
            : !verdict.Reasons.All(reason => reason.Weight == ReasonWeight.For || reason.IsMissing || FitVerdict.IsNotice(reason))
                ? "may fit"
            : verdict.IsUnknown ? "may fit, its ratings are not all written"
            : "fits as far as is written",
            _ => "does not fit",
        };

    /// <summary>Which way a reason speaks.</summary>
    public static string Describe(ReasonWeight weight) =>
        weight switch
        {
            ReasonWeight.For => "for",
            ReasonWeight.Doubt => "doubt",
            _ => "against",
        };

    /// <summary>A reason on one line, with its source.</summary>
    public static string Describe(FitReason reason) => $"{Describe(reason.Weight)}, {reason.Aspect}: {reason.Words}{Cited(reason.Source)}";

    /// <summary>The reason that weighs most.</summary>
    public static string Weightiest(FitVerdict verdict) =>
        verdict.Reasons.Count == 0
            ? "nothing is known"
            : $"{verdict.Reasons[0].Aspect}: {verdict.Reasons[0].Words}{Cited(verdict.Reasons[0].Source)}";

    /// <summary>A source in brackets, left out where it is common practice and nothing more.</summary>
    public static string Cited(Source source) => source == Source.CommonPractice ? string.Empty : $" [{source.Text}]";
}
