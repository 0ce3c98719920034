namespace Ohmstead.Electronics.Statistics;

/// <summary>
/// The share bad by age when each item was inspected once: a bad one failed at an unknown earlier age, a good one has not yet. The
/// monotone estimate by pooling adjacent violators.
/// </summary>
/// <remarks>A product-limit curve over ages at inspection would be wrong for such data.</remarks>
public static class CurrentStatus
{
    /// <summary>Where the method comes from.</summary>
    public static Source Source { get; } = Source.FromMemory("Ayer et al., Ann. Math. Stat. 26 (1955) 641", "pool adjacent violators");

    /// <summary>The estimate at each age, ages rising and each once; the share never falls.</summary>
    public static Outcome<IReadOnlyList<ShareBad>> Estimate(IReadOnlyList<Inspection> inspections) =>
        Domain
            .Require(
                Domain.That(inspections.Count > 0, "nothing was inspected"),
                inspections
                    .Select(i =>
                        Domain.NotNegative("age", i.Age)
                        ?? Domain.That(
                            i.Looked >= 1 && i.Bad >= 0 && i.Bad <= i.Looked,
                            $"{Figures.Text(i.Bad)} bad of {Figures.Text(i.Looked)} cannot be"
                        )
                    )
                    .FirstOrDefault(f => f is not null)
            )
            .Compute<IReadOnlyList<ShareBad>>(() =>
                [
                    .. Pool([
                        .. inspections
                            .GroupBy(i => i.Age)
                            .OrderBy(g => g.Key)
                            .Select(g => new Inspection(g.Key, g.Sum(i => i.Bad), g.Sum(i => i.Looked))),
                    ]),
                ]
            );

    private static IEnumerable<ShareBad> Pool(IReadOnlyList<Inspection> rows)
    {
        Stack<(long Bad, long Looked, int Rows)> blocks = new();
        foreach (Inspection row in rows)
        {
            (long bad, long looked, int count) = (row.Bad, row.Looked, 1);
            while (blocks.TryPeek(out var last) && last.Bad * looked >= bad * last.Looked)
            {
                blocks.Pop();
                (bad, looked, count) = (bad + last.Bad, looked + last.Looked, count + last.Rows);
            }

            blocks.Push((bad, looked, count));
        }

        int index = 0;
        foreach ((long bad, long looked, int count) in blocks.Reverse())
        {
            for (int i = 0; i < count; i++, index++)
            {
                yield return new ShareBad(rows[index].Age, (double)bad / looked, rows[index].Bad, rows[index].Looked);
            }
        }
    }
}

/// <summary>Items of one age inspected once.</summary>
/// <param name="Age">Their age.</param>
/// <param name="Bad">How many were bad.</param>
/// <param name="Looked">How many were looked at.</param>
public sealed record Inspection(double Age, int Bad, int Looked);

/// <summary>The estimated share bad at an age.</summary>
/// <param name="Age">The age.</param>
/// <param name="Share">The monotone estimate.</param>
/// <param name="Bad">How many were bad at this very age.</param>
/// <param name="Looked">How many were looked at, at this very age.</param>
public sealed record ShareBad(double Age, double Share, int Bad, int Looked);
