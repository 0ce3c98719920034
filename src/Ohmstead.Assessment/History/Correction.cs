using System.Collections.Immutable;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>What a reading or a proof says, as far as a correction asks.</summary>
/// <param name="Name">The place, in a message.</param>
/// <param name="About">What it was taken of.</param>
/// <param name="Quantities">What was read.</param>
/// <param name="HasResult">True where it tells the result of a test.</param>
/// <param name="How">When in the part's life and where.</param>
/// <param name="Corrects">The day of what it corrects.</param>
/// <param name="Because">Why.</param>
internal sealed record CorrectedEntry(
    string Name,
    (string? Part, string? Point, string? Lot, string? Piece) About,
    ImmutableArray<Measured> Quantities,
    bool HasResult,
    (string State, Circuit? Circuit) How,
    Written<DateOnly>? Corrects,
    Written<string>? Because
);

/// <summary>The entry that is corrected, or why none is.</summary>
/// <param name="Visit">Its visit, in order of time.</param>
/// <param name="At">Its place in the list.</param>
/// <param name="Why">Why none is; null where one is.</param>
/// <param name="NextStep">What to do then.</param>
internal readonly record struct Meant(int Visit, int At, string? Why, string NextStep);

/// <summary>Looks for what a correction corrects: one entry about the same, written before it, of which it leaves nothing out.</summary>
/// <typeparam name="T">A reading or a proof.</typeparam>
/// <param name="entry">The correction.</param>
/// <param name="said">What it says.</param>
/// <param name="of">What an entry says.</param>
internal readonly struct Correction<T>(T entry, CorrectedEntry said, Func<T, CorrectedEntry> of)
    where T : class
{
    internal Meant Find(ImmutableArray<BenchVisit> visits, List<T>[] entries, int order)
    {
        if (said.Corrects is not { } day)
        {
            return None("because stands beside no correction", "write corrects with the day of the wrong entry, or take because out");
        }

        if (!said.Because.SaySomething())
        {
            return None($"nobody wrote why the entry of {day.Text} is wrong", "write because, with the reason");
        }

        if (day.Value > visits[order].Date.Value)
        {
            return None($"it corrects what was entered on {day.Text}, later than itself", "mend one of the two dates");
        }

        var found = new List<(int Visit, int At)>();
        for (var visit = 0; visit < order; visit++)
        {
            for (var at = 0; visits[visit].Date.Value == day.Value && at < entries[visit].Count; at++)
            {
                if (!ReferenceEquals(entries[visit][at], entry) && of(entries[visit][at]).About == said.About)
                {
                    found.Add((visit, at));
                }
            }
        }

        if (found.Count == 0)
        {
            return None($"nothing was entered about {said.Name} on {day.Text} that it could correct", "mend the day, or take corrects out");
        }

        // Of several, the one that was taken in the same way.
        var (like, self) = (of, said);
        var same = found.Count == 1 ? found : found.FindAll(one => like(entries[one.Visit][one.At]).How == self.How);
        if (same is not [var only])
        {
            return None(
                $"{found.Count} entries of {day.Text} about {said.Name} could be meant",
                "say state and circuit as the wrong entry does; else enter a new reading"
            );
        }

        var old = of(entries[only.Visit][only.At]);
        var left = old.Quantities.Except(said.Quantities).Select(static one => (Measured?)one).FirstOrDefault();
        return left is { } out_ ? None($"it leaves out {VerdictWords.Describe(out_)}, which the entry of {day.Text} tells", Whole)
            : old.HasResult && !said.HasResult ? None($"it leaves out the result that the entry of {day.Text} tells", Whole)
            : new(only.Visit, only.At, null, string.Empty);
    }

    private const string Whole = "write all that was read then, also what was right";

    private static Meant None(string why, string nextStep) => new(-1, -1, why, nextStep);
}
