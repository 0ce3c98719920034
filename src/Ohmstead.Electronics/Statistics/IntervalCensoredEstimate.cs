namespace Ohmstead.Electronics.Statistics;

/// <summary>
/// The share failed by age from items known only to have failed between two looks: Turnbull's self-consistent estimate. It is the
/// product-limit curve when all failures are exact, and the monotone estimate when each item was looked at once.
/// </summary>
/// <remarks>The mass inside an interval is known, where in the interval it lies is not.</remarks>
/// <param name="Masses">The intervals that carry probability, rising; their probabilities add to one.</param>
/// <param name="Rounds">How many rounds the iteration took.</param>
public sealed record IntervalCensoredEstimate(IReadOnlyList<FailureMass> Masses, int Rounds)
{
    private const int MostRounds = 100_000;

    // Masses that end at zero get there slowly: one that is still this much in motion changes no figure anybody reads.
    private const double Settled = 1e-9;

    // Where all masses that an item may belong to have gone to zero.
    private const double Least = double.Epsilon * 1e10;

    /// <summary>Where the method comes from.</summary>
    public static Source Source { get; } = Source.FromMemory("Turnbull, J. R. Stat. Soc. B 38 (1976) 290", null);

    /// <summary>The share failed by an age; within an interval that carries probability, what is certain: the share at its start.</summary>
    public double ShareFailedBy(double age) => Math.Clamp(Masses.Where(m => m.By <= age).Sum(m => m.Probability), 0, 1);

    /// <summary>The estimate, or a refusal for impossible observations or when the iteration does not settle.</summary>
    public static Outcome<IntervalCensoredEstimate> Compute(IReadOnlyList<LifeObservation> observations) =>
        OfCounted(LikeItems.Group(observations));

    /// <summary>The estimate from items that are counted already: those of which the same is known move together.</summary>
    public static Outcome<IntervalCensoredEstimate> OfCounted(IReadOnlyList<LikeItems> items) =>
        LifeObservation
            .Check(items)
            .Flatten(items, static groups =>
            {
                (Bound Left, Bound Right)[] ranges = [.. groups.Select(g => Range(g.Known))];
                (Bound Left, Bound Right)[] innermost = [.. Innermost(ranges)];
                // Ages may be exact to the day; those between the same masses move together.
                Cover[] covers =
                [
                    .. ranges
                        .Zip(groups, (r, g) => Cover.For(r, innermost, g.Count))
                        .GroupBy(c => (c.First, c.End))
                        .Select(c => new Cover(c.Key.First, c.Key.End, c.Sum(one => one.Count))),
                ];
                int count = groups.Sum(g => g.Count);
                double[] masses = new double[innermost.Length];
                double[] sums = new double[masses.Length + 1];
                double[] weights = new double[masses.Length + 1];
                Array.Fill(masses, 1.0 / masses.Length);
                for (int round = 1; round <= MostRounds; round++)
                {
                    if (Improve(masses, covers, count, sums, weights) < Settled)
                    {
                        return Outcome<IntervalCensoredEstimate>.From(
                            new IntervalCensoredEstimate(
                                [.. innermost.Select((b, j) => new FailureMass(b.Left.Age, b.Right.Age, masses[j]))],
                                round
                            )
                        );
                    }
                }

                return Outcome<IntervalCensoredEstimate>.Refused("the estimate does not settle");
            });

    // One step of expectation and maximisation: every item shares itself out over the masses it may belong to. Returns the largest change.
    // There may be a thousand steps, so they work in the same two arrays.
    private static double Improve(double[] masses, Cover[] covers, int items, double[] sums, double[] weights)
    {
        double sum = 0;
        for (int j = 0; j < masses.Length; j++)
        {
            sum += masses[j];
            sums[j + 1] = sum;
        }

        Array.Clear(weights);
        foreach (Cover cover in covers)
        {
            double among = sums[cover.End] - sums[cover.First];
            double share = cover.Count / (among > Least ? among : Least);
            weights[cover.First] += share;
            weights[cover.End] -= share;
        }

        double largest = 0,
            weight = 0;
        for (int j = 0; j < masses.Length; j++)
        {
            weight += weights[j];
            double mass = masses[j];
            double next = mass * (weight > 0 ? weight : 0) / items;
            double change = Math.Abs(next - mass);
            largest = change > largest ? change : largest;
            masses[j] = next;
        }

        return largest;
    }

    private static (Bound Left, Bound Right) Range(LifeObservation o) =>
        (new Bound(o.After, o.IsExact ? Side.Before : Side.After), new Bound(o.By ?? double.PositiveInfinity, Side.At));

    // Only a left end directly followed by a right end can carry probability.
    private static IEnumerable<(Bound Left, Bound Right)> Innermost((Bound Left, Bound Right)[] ranges)
    {
        List<(Bound Bound, bool IsLeft)> ends =
        [
            .. ranges.Select(r => (r.Left, true)).Concat(ranges.Select(r => (r.Right, false))).Distinct().Order(),
        ];
        for (int i = 0; i + 1 < ends.Count; i++)
        {
            if (ends[i].IsLeft && !ends[i + 1].IsLeft)
            {
                yield return (ends[i].Bound, ends[i + 1].Bound);
            }
        }
    }

    // The masses that some items may belong to, from the first to the one before the end.
    private readonly record struct Cover(int First, int End, double Count)
    {
        internal static Cover For((Bound Left, Bound Right) range, (Bound Left, Bound Right)[] innermost, int count)
        {
            int first = 0;
            while (innermost[first].Left.CompareTo(range.Left) < 0)
            {
                first++;
            }

            int last = innermost.Length - 1;
            while (innermost[last].Right.CompareTo(range.Right) > 0)
            {
                last--;
            }

            return new Cover(first, last + 1, count);
        }
    }

    private enum Side
    {
        Before,
        At,
        After,
    }

    // An age with the side of it that is meant: an exact failure begins just before its age, an open interval just after.
    private readonly record struct Bound(double Age, Side Side) : IComparable<Bound>
    {
        public int CompareTo(Bound other) => Age != other.Age ? Age.CompareTo(other.Age) : Side.CompareTo(other.Side);
    }
}

/// <summary>Some probability of failing within a range of ages.</summary>
/// <param name="After">The range starts after this age; equal to <paramref name="By"/> for an exact failure.</param>
/// <param name="By">The range ends at this age; infinite for what outlives all looks.</param>
/// <param name="Probability">The probability.</param>
public sealed record FailureMass(double After, double By, double Probability);
