using System.Collections.Immutable;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>How far a point is proved: what was recorded there after the last work, and what its limits ask.</summary>
/// <param name="Point">The point.</param>
/// <param name="Last">The last proof there, or null when there was none.</param>
/// <param name="Since">The proofs there after the last work, oldest first.</param>
internal sealed record ProofOfPoint(TestPoint Point, AssessedProof? Last, ImmutableArray<AssessedProof> Since)
{
    private static readonly ImmutableArray<Measured> OfVoltage = [Measured.Voltage, Measured.Ripple];
    private static readonly ImmutableArray<Measured> OfCurrent = [Measured.Current];
    private static readonly ImmutableArray<Measured> OfFrequency = [Measured.Frequency];
    private static readonly ImmutableArray<Measured> OfTemperature = [Measured.Temperature];
    private static readonly ImmutableArray<Measured> OfSoak = [Measured.Hours];

    /// <summary>The name of the point.</summary>
    internal string Name => Point.Name.Value;

    /// <summary>The last proof that fails, unless a later one of the same quantity passes; null when none does.</summary>
    internal AssessedProof? Failed =>
        LastWith(VerdictOutcome.Outside) is { } failed ? failed
        : Since[^1].Outcome == VerdictOutcome.Outside || Tested is { Proof.Result.Value: TestResult.Fail } ? Tested ?? Since[^1]
        : null;

    /// <summary>The verdict too close to call that stands, or null.</summary>
    internal Verdict? Undecided
    {
        get
        {
            foreach (var measured in Asked)
            {
                if (Standing(measured) is { Verdict.Outcome: VerdictOutcome.Undecided or VerdictOutcome.ProvesNothing } standing)
                {
                    return standing.Verdict;
                }
            }

            return null;
        }
    }

    /// <summary>What the proof leaves out although the limits of the point ask it, in words; null when nothing is.</summary>
    internal string? Missing
    {
        get
        {
            if (Point.Measures == PointMeasure.Result)
            {
                return Tested is null ? $"{Name} has no value and no result" : null;
            }

            var isAsked = false;
            foreach (var measured in Asked)
            {
                // The usual ripple of a rail is no demand of the design: what is written is asked for.
                if (measured == Measured.Ripple ? Point.RippleLimit is null : PointLimits.For(Point, measured).Length == 0)
                {
                    continue;
                }

                isAsked = true;
                if (Standing(measured) is null)
                {
                    return $"{VerdictWords.Describe(measured)} of {Name} was not proved after the last work"
                        + (Tested is null ? string.Empty : ": a pass proves a test of function, not a value");
                }
            }

            return isAsked || (Point.Measures == PointMeasure.Hours && Standing(Measured.Hours) is not null) ? null
                : Point.Measures == PointMeasure.Hours && Tested is not null ? null
                : $"{Name} has no limit, so nothing that was read there proves it; write nominal and tolerance, or low and high, or "
                    + "measures: result";
        }
    }

    /// <summary>The last proof with a result of a test, or null.</summary>
    private AssessedProof? Tested => Since.LastOrDefault(proof => proof.Proof.Result is not null);

    private ImmutableArray<Measured> Asked =>
        Point.Measures switch
        {
            PointMeasure.Voltage => OfVoltage,
            PointMeasure.Current => OfCurrent,
            PointMeasure.Frequency => OfFrequency,
            PointMeasure.Temperature => OfTemperature,
            PointMeasure.Hours => OfSoak,
            PointMeasure.Result => [],
        };

    /// <summary>The last proof at a point that fails and that no later one there answers, whenever work was done; null when none
    /// does.</summary>
    /// <param name="board">The board.</param>
    /// <param name="name">The point.</param>
    /// <param name="point">The point, or null when neither the board nor its design has it.</param>
    internal static AssessedProof? FailedAt(BoardHistory board, string name, TestPoint? point)
    {
        ImmutableArray<AssessedProof> all = [.. board.ProofsAt(name)];
        return point is null
            ? all[^1].Outcome == VerdictOutcome.Outside
                ? all[^1]
                : null
            : new ProofOfPoint(point, all[^1], all).Failed;
    }

    /// <summary>What was recorded at a point.</summary>
    internal static ProofOfPoint For(BoardHistory board, TestPoint point)
    {
        AssessedProof? last = null;
        var since = ImmutableArray.CreateBuilder<AssessedProof>();
        foreach (var proof in board.ProofsAt(point.Name.Value))
        {
            last = proof;
            if (proof.At > board.LastWorkAt)
            {
                since.Add(proof);
            }
        }

        return new(point, last, since.DrainToImmutable());
    }

    private AssessedProof? LastWith(VerdictOutcome outcome)
    {
        var standing = new Dictionary<Measured, Verdict?>();
        foreach (var proof in Since.Reverse())
        {
            foreach (var verdict in proof.Verdicts)
            {
                if (verdict.Outcome != outcome)
                {
                    continue;
                }

                if (!standing.TryGetValue(verdict.Measured, out var stands))
                {
                    standing[verdict.Measured] = stands = Standing(verdict.Measured)?.Verdict;
                }

                if (stands == verdict)
                {
                    return proof;
                }
            }
        }

        return null;
    }

    // What a later proof says of the same quantity takes the place of what an earlier one said, as with readings.
    private (AssessedProof Proof, Verdict Verdict)? Standing(Measured measured)
    {
        (AssessedProof Proof, Verdict Verdict)? standing = null;
        foreach (var proof in Since)
        {
            foreach (var verdict in proof.Verdicts)
            {
                if (
                    verdict.Measured == measured
                    && (standing is not { } earlier || Outcomes.Outweighs(verdict.Outcome, earlier.Verdict.Outcome))
                )
                {
                    standing = (proof, verdict);
                }
            }
        }

        return standing;
    }
}
