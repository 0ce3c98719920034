using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Verdicts;

/// <summary>Weighs what several values say, of a reading and of a proof alike.</summary>
public static class Outcomes
{
    /// <summary>What all values and a functional test say together: outside if any is, else undecided if any is, else the best that was
    /// proved.</summary>
    /// <param name="verdicts">The verdicts on the values.</param>
    /// <param name="test">The result of a functional test, pass or fail, or null when there was none.</param>
    public static VerdictOutcome Together(ImmutableArray<Verdict> verdicts, Written<TestResult>? test)
    {
        var together = test is null ? VerdictOutcome.NoLimit : From(test.Value);
        for (var at = 0; at < verdicts.Length; at++)
        {
            if (Weight(verdicts[at].Outcome) > Weight(together))
            {
                together = verdicts[at].Outcome;
            }
        }

        return together;
    }

    // The order of the enumeration is not the order of weight: what does not decide outweighs what is inside, and outside outweighs all.
    private static int Weight(VerdictOutcome outcome) =>
        outcome switch
        {
            VerdictOutcome.NoLimit => 0,
            VerdictOutcome.ProvesNothing => 1,
            VerdictOutcome.Inside => 2,
            VerdictOutcome.Undecided => 3,
            VerdictOutcome.Outside => 4,
        };

    /// <summary>What a functional test says.</summary>
    public static VerdictOutcome From(TestResult test) =>
        test switch
        {
            TestResult.Pass => VerdictOutcome.Inside,
            TestResult.Fail => VerdictOutcome.Outside,
        };

    /// <summary>Whether any of the verdicts says so.</summary>
    internal static bool IsAmong(ImmutableArray<Verdict> verdicts, VerdictOutcome outcome)
    {
        for (var at = 0; at < verdicts.Length; at++)
        {
            if (verdicts[at].Outcome == outcome)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a later verdict takes the place of an earlier one: one that proves nothing does not undo one that proved something,
    /// and one too close to call does not answer one that failed.</summary>
    public static bool Outweighs(VerdictOutcome later, VerdictOutcome earlier) =>
        later switch
        {
            VerdictOutcome.ProvesNothing or VerdictOutcome.NoLimit => false,
            VerdictOutcome.Undecided => earlier != VerdictOutcome.Outside,
            _ => true,
        };
}
