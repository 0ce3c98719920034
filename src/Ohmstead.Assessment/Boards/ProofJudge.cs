using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>Holds a proof entry against its test point.</summary>
public static class ProofJudge
{
    /// <summary>What the entry says.</summary>
    public static AssessedProof Decide(
        BenchVisit visit, int order, Proof proof, TestPoint? point, Func<ReadValue, ReadingUncertainty?> uncertainty, bool isGuarded)
    {
        var verdicts = proof.Values
            .Select(value => Judge.Decide(value.Measured, value.Value, point is null ? [] : LimitsOf(point, value.Measured), inCircuit: false, uncertainty(value), isGuarded))
            .ToArray();
        return new(visit, order, proof, point, verdicts, Overall(proof, verdicts));
    }

    private static VerdictOutcome Overall(Proof proof, Verdict[] verdicts)
    {
        if (proof.Result is { Value: "fail" } || verdicts.Any(verdict => verdict.Outcome == VerdictOutcome.Outside))
        {
            return VerdictOutcome.Outside;
        }

        return verdicts.Any(verdict => verdict.Outcome == VerdictOutcome.Undecided) ? VerdictOutcome.Undecided
            : proof.Result is { Value: "pass" } || verdicts.Any(verdict => verdict.Outcome == VerdictOutcome.Inside) ? VerdictOutcome.Inside
            : VerdictOutcome.NoLimit;
    }

    private static IReadOnlyList<Limit> LimitsOf(TestPoint point, Measured measured)
    {
        var origin = point.FromDesign is null ? "this board's record" : "the design";
        var source = point.Source?.Value ?? "the record of this board or design";
        if (measured == Measured.Ripple)
        {
            return point.RippleLimit is { } ripple
                ? [new Limit(LimitKind.Circuit, new Interval(null, ripple.Value), origin, $"ripple at most {ripple.Text}, as written", source)]
                : [];
        }

        if (measured == Measured.Hours)
        {
            return point.Hours is { } hours
                ? [new Limit(LimitKind.Circuit, new Interval(new Quantity(hours.Value, Dimension.Number), null), origin, $"at least {hours.Text} h, as written", source)]
                : [];
        }

        if (!IsWhatThePointMeasures(point, measured))
        {
            return [];
        }

        if (point.Low is not null || point.High is not null)
        {
            return [new Limit(LimitKind.Circuit, new Interval(point.Low?.Value, point.High?.Value), origin, $"{point.Low?.Text ?? "no lower limit"} … {point.High?.Text ?? "no upper limit"}, as written", source) { Nominal = point.Nominal?.Value }];
        }

        if (point.Nominal is { } nominal && point.Tolerance is { } tolerance)
        {
            var interval = tolerance.Value.Apply(nominal.Value);
            return [new Limit(LimitKind.Circuit, interval, origin, $"{nominal.Text} {tolerance.Text} allows {interval}", source) { Nominal = nominal.Value }];
        }

        return [];
    }

    private static bool IsWhatThePointMeasures(TestPoint point, Measured measured) => measured switch
    {
        Measured.Voltage => point.Measures == "voltage",
        Measured.Current => point.Measures == "current",
        Measured.Frequency => point.Measures == "frequency",
        Measured.Temperature => point.Measures == "temperature",
        _ => false,
    };
}
