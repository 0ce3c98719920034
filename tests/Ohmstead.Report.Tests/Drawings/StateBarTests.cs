using Ohmstead.Report.Drawings;

namespace Ohmstead.Report.Tests.Drawings;

/// <summary>The bar of a collection: 720 units for all boards.</summary>
public sealed class StateBarTests
{
    [Fact]
    public void Each_state_is_as_long_as_its_share() => Assert.Equal([180m, 540m], StateBar.Lengths([5, 15]));

    // 720 x 2 / 10,000 would be 0.144; 6 of 6 + 719.856 are 5.95.
    [Fact]
    public void Two_of_ten_thousand_are_still_seen()
    {
        var lengths = StateBar.Lengths([2, 9_998]);
        Assert.InRange(lengths[0], 5.9m, 6m);
        Assert.InRange(lengths.Sum(), 719.5m, 720.5m);
    }
}
