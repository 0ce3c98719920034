using Ohmstead.Electronics;

namespace Ohmstead.Assessment.Limits;

/// <summary>Takes from a limit what the way of measuring takes from its readings. Two ways on top of each other take what both
/// take.</summary>
internal static class ReadingBounds
{
    /// <summary>A good part reads down to such a share of its lower limit, so that a reading below the limit does not decide until
    /// then.</summary>
    internal static Limit MayReadLess(this Limit limit, decimal shareOfLower, LazyText why) =>
        limit.Interval.Lower is not { } lower
            ? limit
            : limit with
            {
                ExplainedBelow = (
                    lower with
                    {
                        Value = (limit.ExplainedBelow?.DownTo.Value ?? lower.Value) * shareOfLower,
                    },
                    Both(limit.ExplainedBelow?.Why, why)
                ),
            };

    /// <summary>A bad part reads down to such a share of its upper limit, so that a reading inside does not prove the part good until it is
    /// below that.</summary>
    internal static Limit ProvedFromShare(this Limit limit, decimal shareOfUpper, LazyText why) =>
        limit.Interval.Upper is not { } upper
            ? limit
            : limit with
            {
                ProvedTo = (
                    upper with
                    {
                        Value = (limit.ProvedTo?.UpTo.Value ?? upper.Value) * shareOfUpper,
                    },
                    Both(limit.ProvedTo?.Why, why)
                ),
            };

    /// <summary>A bad part reads up to so many times its lower limit, so that a reading inside does not prove the part good until it is
    /// above that.</summary>
    internal static Limit ProvedFromTimes(this Limit limit, decimal timesLower, LazyText why) =>
        limit.Interval.Lower is not { } lower
            ? limit
            : limit with
            {
                ProvedFrom = (
                    lower with
                    {
                        Value = (limit.ProvedFrom?.From.Value ?? lower.Value) * timesLower,
                    },
                    Both(limit.ProvedFrom?.Why, why)
                ),
            };

    private static LazyText Both(LazyText? one, LazyText other) => one is null ? other : new(() => $"{one}; and {other}");
}
