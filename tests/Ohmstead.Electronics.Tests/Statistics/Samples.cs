using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Electronics.Tests.Statistics;

/// <summary>Published data sets, from memory; a negative age means last seen good.</summary>
internal static class Samples
{
    // Miller, Survival Analysis, 1981: acute myelogenous leukaemia, maintained and not maintained (weeks).
    internal static readonly FollowedItem[] Maintained = Followed(9, 13, -13, 18, 23, -28, 31, 34, -45, 48, -161);
    internal static readonly FollowedItem[] NotMaintained = Followed(5, 5, 8, 8, 12, -16, 23, 27, 30, 33, 43, 45);

    // Freireich et al., Blood 21 (1963) 699: remission under 6-mercaptopurine and placebo (weeks).
    internal static readonly FollowedItem[] Mercaptopurine = Followed(
        6,
        6,
        6,
        -6,
        7,
        -9,
        10,
        -10,
        -11,
        13,
        16,
        -17,
        -19,
        -20,
        22,
        23,
        -25,
        -32,
        -32,
        -34,
        -35
    );

    internal static readonly FollowedItem[] Placebo = Followed(1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23);

    // NIST/SEMATECH e-Handbook 8.4.1: 20 units tested to 500 h, 10 failures.
    internal static readonly LifeObservation[] TwentyUnits = Observed(
        54,
        187,
        216,
        240,
        244,
        335,
        361,
        373,
        375,
        386,
        -500,
        -500,
        -500,
        -500,
        -500,
        -500,
        -500,
        -500,
        -500,
        -500
    );

    // Lieblein and Zelen 1956: 23 ball bearings (millions of revolutions).
    internal static readonly LifeObservation[] Bearings = Observed(
        17.88,
        28.92,
        33.00,
        41.52,
        42.12,
        45.60,
        48.40,
        51.84,
        51.96,
        54.12,
        55.56,
        67.80,
        68.64,
        68.64,
        68.88,
        84.12,
        93.12,
        98.64,
        105.12,
        105.84,
        127.92,
        128.04,
        173.40
    );

    internal static FollowedItem[] Followed(params double[] ages) => [.. ages.Select(a => new FollowedItem(Math.Abs(a), a > 0))];

    internal static LifeObservation[] Observed(params double[] ages) =>
        [.. ages.Select(a => a > 0 ? LifeObservation.FailedAt(a) : LifeObservation.GoodAt(-a))];

    internal static LifeObservation[] Observed(IEnumerable<FollowedItem> items) =>
        [.. items.Select(i => i.Failed ? LifeObservation.FailedAt(i.Until) : LifeObservation.GoodAt(i.Until))];
}
