using System.Collections.Immutable;
using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>Holds what was read at a test point against its limits: a reading on the way and a proof alike.</summary>
public static class PointJudge
{
    /// <summary>One verdict for each value.</summary>
    /// <param name="values">The values read.</param>
    /// <param name="point">The point, or null when neither the board nor its design has it: then no limit is known.</param>
    /// <param name="meter">What is known of the meter beside a value.</param>
    /// <param name="rule">How a value near its limit is judged.</param>
    public static ImmutableArray<Verdict> Decide(
        IEnumerable<ReadValue> values,
        TestPoint? point,
        Func<ReadValue, MeterReach> meter,
        DecisionRule rule
    )
    {
        var verdicts = ImmutableArray.CreateBuilder<Verdict>(2);
        foreach (var value in values)
        {
            if (!IsHowRippleWasRead(value, point))
            {
                verdicts.Add(
                    Judge.Decide(value, point is null ? [] : PointLimits.For(point, value.Measured), Circuit.Out, meter(value), rule, null)
                );
            }
        }

        return verdicts.DrainToImmutable();
    }

    // The frequency beside a voltage is that of its ripple: it says what the ripple means and has no limit of its own.
    private static bool IsHowRippleWasRead(ReadValue value, TestPoint? point) =>
        value.Measured == Measured.Frequency && point is { Measures: PointMeasure.Voltage };
}
