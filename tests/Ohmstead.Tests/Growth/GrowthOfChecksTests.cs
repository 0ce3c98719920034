namespace Ohmstead.Tests.Growth;

/// <summary>What twice as large a record costs to check.</summary>
public sealed class GrowthOfChecksTests
{
    [Theory]
    [MemberData(nameof(GrowthOfCost.Names), MemberType = typeof(GrowthOfCost))]
    public void Twice_as_large_a_record_costs_twice_as_much_to_check(string name) =>
        GrowthOfCost.Holds(GrowthOfCost.Names, name, usual: 4, GrowthOfCost.Check, GrowthOfCost.Most, GrowthOfCost.Pooled);
}
