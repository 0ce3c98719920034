namespace Ohmstead.Tests.Growth;

/// <summary>What twice as large a record costs to explain.</summary>
public sealed class GrowthOfExplanationsTests
{
    [Theory]
    [MemberData(nameof(GrowthOfCost.SomeNames), MemberType = typeof(GrowthOfCost))]
    public void Twice_as_large_a_record_costs_twice_as_much_to_explain(string name) =>
        GrowthOfCost.Holds(GrowthOfCost.SomeNames, name, usual: 4, GrowthOfCost.Why, GrowthOfCost.MostOfPages, GrowthOfCost.Pooled);
}
