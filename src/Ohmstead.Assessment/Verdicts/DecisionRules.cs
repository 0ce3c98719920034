using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Assessment.Verdicts;

/// <summary>The rules by which a reading near its limit is judged, in words.</summary>
public static class DecisionRules
{
    /// <summary>The rule as a person reads it, with its source.</summary>
    public static string Words(DecisionRule rule) => $"{rule.Name}, {rule.Meaning} ({rule.Source.Text})";
}
