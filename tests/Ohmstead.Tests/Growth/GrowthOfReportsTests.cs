namespace Ohmstead.Tests.Growth;

/// <summary>What twice as large a record costs to report.</summary>
public sealed class GrowthOfReportsTests
{
    [Theory]
    [MemberData(nameof(GrowthOfCost.SomeNames), MemberType = typeof(GrowthOfCost))]
    public void Twice_as_large_a_record_costs_twice_as_much_to_report(string name) =>
        GrowthOfCost.Holds(GrowthOfCost.SomeNames, name, usual: 1, GrowthOfCost.Report, GrowthOfCost.MostOfPages, GrowthOfCost.PooledPages);
}
