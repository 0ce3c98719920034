using System.Globalization;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Commands;

/// <summary>Tells verdicts in full, for whatever they are about.</summary>
internal sealed class WhyVerdicts(Action<string> line)
{
    /// <summary>Tells each verdict of one reading.</summary>
    public void Tell(IReadOnlyList<Verdict> verdicts)
    {
        foreach (var verdict in verdicts)
        {
            line($"  {verdict.Why}");
            if (verdict.Limit is not { } limit)
            {
                continue;
            }

            line($"    limit: {VerdictWords.Range(limit.Interval)}, {VerdictWords.Of(limit.Kind)} from {limit.Origin}");
            line($"    arithmetic: {limit.Arithmetic}");
            line($"    source: {limit.Source}");
            if (verdict.Deviation is { } deviation)
            {
                line($"    {VerdictWords.Percent(deviation)} from nominal {QuantityText.Format(limit.Nominal!.Value)}");
            }

            if (verdict.Margin is { } margin)
            {
                line(margin < 0 ? $"    beyond the limit by {VerdictWords.Percent(-margin)[1..]} of it" : $"    room to the limit: {(margin == 0 ? "none, exactly on it" : VerdictWords.Percent(margin)[1..] + " of it")}");
            }

            if (verdict.Probability is { } probability)
            {
                line($"    inside with probability {probability.ToString("0.0000", CultureInfo.InvariantCulture)} (JCGM 106:2012, clause 7, from memory)");
            }

            foreach (var remark in verdict.Remarks)
            {
                line($"    {remark}");
            }

            foreach (var (other, inside) in verdict.Others)
            {
                line($"    by the {VerdictWords.Of(other.Kind)} {VerdictWords.Range(other.Interval)} ({other.Origin}): {(inside ? "inside" : "outside")}");
            }
        }
    }
}
