using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Report.Tables;

/// <summary>The working of the uncertainty of a reading without what is the same for all: what came out, and the error that the instrument
/// may have.</summary>
/// <param name="Expanded">What came out: 1.75 Ω.</param>
/// <param name="Error">The error, its shares those of the reading: 0.1 % + 2 mΩ.</param>
internal readonly record struct UncertaintyWords(string Expanded, string Error)
{
    /// <summary>Takes the working of a verdict apart; null where it has none that is worked by the rule for all.</summary>
    public static UncertaintyWords? Of(Verdict verdict)
    {
        foreach (var remark in verdict.Remarks)
        {
            if (Of(remark.Text, verdict) is { } words)
            {
                return words;
            }
        }

        return null;
    }

    /// <summary>Takes a remark apart; null where it is no such working.</summary>
    public static UncertaintyWords? Of(string remark, Verdict verdict)
    {
        if (
            !remark.EndsWith(ReadingUncertainty.RuleCited, StringComparison.Ordinal)
            || !remark.StartsWith(ReadingUncertainty.Opening, StringComparison.Ordinal)
            || remark.IndexOf(ReadingUncertainty.Closing, StringComparison.Ordinal) is not (> 0 and var end)
        )
        {
            return null;
        }

        var expanded = remark[(end + ReadingUncertainty.Closing.Length)..^ReadingUncertainty.RuleCited.Length];
        var error = remark[ReadingUncertainty.Opening.Length..end];
        if (
            verdict.Exact is { } exact
            && $" of {QuantityText.Format(exact)}" is var share
            && error.IndexOf(share, StringComparison.Ordinal) is > 0 and var at
        )
        {
            error = error.Remove(at, share.Length);
        }

        return new(expanded, error);
    }
}
