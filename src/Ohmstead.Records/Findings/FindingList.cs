using System.Collections.Immutable;

namespace Ohmstead.Records.Findings;

/// <summary>
/// Collects findings. Of one check in one file so many are told one by one as a person can go through; what is beyond that is counted, and
/// the last one that is told says how many. A file with a hundred thousand mistakes of one kind has one mistake, and takes no more room
/// than one with a thousand.
/// </summary>
/// <remarks>An instance is used by one thread at a time.</remarks>
public sealed class FindingList
{
    /// <summary>How many findings of one check in one file are told one by one.</summary>
    public const int MostOfOneCheck = 1_000;

    private readonly List<Finding> told = [];
    private readonly Dictionary<(string Check, string Path), Tally> tallies = [];

    /// <summary>The finding that was added last, told or counted; null when there is none, or when it was taken back.</summary>
    public Finding? Last { get; private set; }

    /// <summary>How many are told.</summary>
    public int Count => told.Count;

    /// <summary>Those that are told, as they were added.</summary>
    public IReadOnlyList<Finding> Told => told;

    /// <summary>Adds a finding.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="most">How many of its check are told in its file.</param>
    public void Add(Finding finding, int most = MostOfOneCheck)
    {
        Last = finding;
        if (CountsIfFull(finding.Check, finding.Place.Path, most))
        {
            return;
        }

        var key = (finding.Check, finding.Place.Path);
        tallies[key] = new(tallies.GetValueOrDefault(key).Told + 1, 0, told.Count);
        told.Add(finding);
    }

    /// <summary>Adds findings.</summary>
    public void AddRange(IEnumerable<Finding> findings)
    {
        foreach (var finding in findings)
        {
            Add(finding);
        }
    }

    /// <summary>Whether enough of a check were told in a file; then this one is counted, and its words need not be made.</summary>
    /// <param name="check">The check.</param>
    /// <param name="path">The file.</param>
    /// <param name="most">How many of the check are told in the file.</param>
    public bool CountsIfFull(string check, string path, int most = MostOfOneCheck)
    {
        if (!tallies.TryGetValue((check, path), out var tally) || tally.Told < most)
        {
            return false;
        }

        tallies[(check, path)] = tally with { More = tally.More + 1 };
        return true;
    }

    /// <summary>Takes back the finding that was added last, as if it had not been.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public void TakeBackLast()
    {
        var last = Last ?? throw new InvalidOperationException("Nothing was added.");
        var key = (last.Check, last.Place.Path);
        var tally = tallies[key];
        if (tally.More > 0)
        {
            tallies[key] = tally with { More = tally.More - 1 };
        }
        else
        {
            told.RemoveAt(tally.Last);
            var before = told.FindLastIndex(one => one.Check == last.Check && one.Place.Path == last.Place.Path);
            tallies[key] = tally with { Told = tally.Told - 1, Last = before };
        }

        Last = null;
    }

    /// <summary>Forgets all.</summary>
    public void Clear()
    {
        told.Clear();
        tallies.Clear();
        Last = null;
    }

    /// <summary>The findings; the last one of each check and file says how many more there are.</summary>
    public ImmutableArray<Finding> ToImmutable()
    {
        if (told.Count == 0)
        {
            return [];
        }

        var all = ImmutableArray.CreateBuilder<Finding>(told.Count);
        all.AddRange(told);
        foreach (var tally in tallies.Values)
        {
            if (tally.More > 0)
            {
                all[tally.Last] = all[tally.Last].And(tally.More);
            }
        }

        return all.MoveToImmutable();
    }

    private readonly record struct Tally(int Told, int More, int Last);
}
