using Ohmstead.Electronics.Parts;

namespace Ohmstead.Electronics.Tests.Parts;

public sealed class JunctionDropTests
{
    // 0.55 to 0.75 V for silicon, 0.15 to 0.4 V for germanium and Schottky at 1 mA: common practice.
    [Theory]
    [InlineData("silicon", "0.55", "0.75")]
    [InlineData("germanium", "0.15", "0.4")]
    [InlineData("Schottky", "0.15", "0.4")]
    public void A_healthy_junction_drops_what_its_material_drops(string material, string low, string high)
    {
        JunctionDrop junction = JunctionDrop.Find(material)!;
        Assert.Equal((Exact.Of(low), Exact.Of(high)), (junction.LowVolts, junction.HighVolts));
    }

    [Fact]
    public void A_material_that_is_no_junction_has_no_drop() => Assert.Null(JunctionDrop.Find("lithium"));
}
