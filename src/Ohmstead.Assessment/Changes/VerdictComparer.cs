using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Changes;

/// <summary>Compares what the readings and proofs of a board say.</summary>
internal static class VerdictComparer
{
    /// <summary>Adds each verdict and each limit that differs, of entries that stand in both records.</summary>
    public static void AddTo(ImmutableArray<Change>.Builder changes, JudgedBoard was, JudgedBoard now, Func<Spot, Spot?> earlier)
    {
        var readings = was.Readings.ToLookup(reading => reading.Reading.Spot);
        foreach (var reading in now.Readings)
        {
            if (earlier(reading.Reading.Spot) is { } spot && readings[spot].FirstOrDefault() is { } before)
            {
                var of = (reading.Reading.Part ?? reading.Reading.Point ?? reading.Reading.Lot)?.Value ?? "board";
                Add(changes, of, reading.Visit.Date.Text, (before.Verdicts, reading.Verdicts));
            }
        }

        var proofs = was.Proofs.ToLookup(proof => proof.Proof.Spot);
        foreach (var proof in now.Proofs)
        {
            if (earlier(proof.Proof.Spot) is { } spot && proofs[spot].FirstOrDefault() is { } before)
            {
                Add(changes, proof.Proof.Point.Value, proof.Visit.Date.Text, (before.Verdicts, proof.Verdicts));
            }
        }
    }

    private static void Add(
        ImmutableArray<Change>.Builder changes,
        string of,
        string day,
        (ImmutableArray<Verdict> Was, ImmutableArray<Verdict> Now) verdicts
    )
    {
        foreach (var now in verdicts.Now)
        {
            if (Find(verdicts.Was, now.Measured) is not { } was)
            {
                continue;
            }

            var isLimitSame = IsSame(was.Limit, now.Limit);
            if (was.Outcome == now.Outcome && isLimitSame)
            {
                continue;
            }

            var about = About(of, now, day);
            if (was.Outcome != now.Outcome)
            {
                changes.Add(
                    new(ChangeKind.Verdict, about, VerdictWords.Describe(was.Outcome), VerdictWords.Describe(now.Outcome)) { Place = of }
                );
            }

            if (!isLimitSame)
            {
                changes.Add(new(ChangeKind.Limit, about, Told(was), Told(now)) { Place = of });
            }
        }
    }

    private static Verdict? Find(ImmutableArray<Verdict> verdicts, Measured measured)
    {
        foreach (var verdict in verdicts)
        {
            if (verdict.Measured == measured)
            {
                return verdict;
            }
        }

        return null;
    }

    private static bool IsSame(Limit? one, Limit? other) =>
        one is null || other is null
            ? ReferenceEquals(one, other)
            : one.Kind == other.Kind && one.ProvedInside == other.ProvedInside && one.MayBeInside == other.MayBeInside;

    /// <summary>A figure with what it is and its day.</summary>
    internal static string About(string of, Verdict verdict, string day) =>
        $"{of} {VerdictWords.Describe(verdict.Measured)} {verdict.Reading.Text} of {day}";

    /// <summary>The limit that a figure is held against, in words; null for none.</summary>
    internal static string? Told(Verdict verdict) =>
        verdict.Limit is { } limit ? $"{limit.InWords} ({VerdictWords.Describe(limit.Kind)})" : null;
}
