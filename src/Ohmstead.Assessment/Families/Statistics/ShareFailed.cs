using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Families.Statistics;

/// <summary>The share of a family that was found failed, with how far it may be off. Never made of fewer than five parts.</summary>
/// <param name="Failed">How many were outside at their first look.</param>
/// <param name="Measured">How many were looked at.</param>
/// <param name="Low">The lower end of the interval, as a fraction.</param>
/// <param name="High">The upper end.</param>
/// <param name="Arithmetic">How the interval was reached.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record ShareFailed(int Failed, int Measured, double Low, double High, LazyText Arithmetic, Source Source)
{
    /// <summary>Below this many parts a share would look like knowledge. Common practice.</summary>
    public const int FewestMeasured = 5;

    /// <summary>The confidence of the interval.</summary>
    public const double Confidence = 0.95;

    /// <summary>The share itself, as a fraction.</summary>
    public double Share => (double)Failed / Measured;

    /// <summary>True when none failed: then only an upper limit can be told, and it is one-sided.</summary>
    public bool IsUpperLimit => Failed == 0;

    /// <summary>The share with its interval, or null for too few parts.</summary>
    public static ShareFailed? Compute(int failed, int measured)
    {
        if (measured < FewestMeasured || failed < 0 || failed > measured)
        {
            return null;
        }

        if (failed == 0)
        {
            var most = RuleOfThree.UpperLimit(measured, Confidence);
            return most.Is(out var worked, out _) ? new(0, measured, 0, worked.Value, worked.Arithmetic, worked.Source) : null;
        }

        return ProportionInterval.Wilson(failed, measured, Confidence).Is(out var interval, out _)
            ? new(failed, measured, interval.Low, interval.High, new(() => Wilson(failed, measured, interval)), ProportionInterval.Source)
            : null;
    }

    private static string Wilson(int failed, int measured, ConfidenceInterval interval) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"(p + z²/2n ± z sqrt(p (1 - p)/n + z²/4n²)) / (1 + z²/n) with p = {failed}/{measured}, n = {measured}, z = 1.960: "
                + $"{interval.Low:0.0000} and {interval.High:0.0000}"
        );
}
