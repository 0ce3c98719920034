using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Assessment.Verdicts;

/// <summary>The rules by which a reading near its limit is judged, by the plain names that a collection may choose from.</summary>
public static class DecisionRules
{
    /// <summary>The rule of a name of the vocabulary; the full guard band when none is chosen.</summary>
    public static DecisionRule Of(string? name) => name switch
    {
        "simple" => DecisionRule.Simple,
        "guarded to five per cent" => DecisionRule.GuardedFivePercent,
        "three sigma" => DecisionRule.ThreeSigma,
        "six sigma" => DecisionRule.SixSigma,
        "uncritical" => DecisionRule.Uncritical,
        _ => DecisionRule.Guarded,
    };

    /// <summary>The rule as a person reads it, with its source.</summary>
    public static string Words(DecisionRule rule) => $"{rule.Name}, {rule.Meaning} ({rule.Source.Text})";
}
