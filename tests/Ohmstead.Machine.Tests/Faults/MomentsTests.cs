namespace Ohmstead.Machine.Tests.Faults;

/// <summary>Which moments are tried in a part of a whole run.</summary>
public sealed class MomentsTests
{
    [Theory]
    [InlineData(7, 1)]
    [InlineData(7, 3)]
    [InlineData(2, 4)]
    [InlineData(0, 2)]
    public void The_parts_of_a_whole_run_try_each_moment_once(int count, int parts) =>
        Assert.Equal(
            Enumerable.Range(1, count),
            Enumerable.Range(1, parts).SelectMany(part => Moments.Share(count, $"{part}/{parts}")).Order()
        );
}
