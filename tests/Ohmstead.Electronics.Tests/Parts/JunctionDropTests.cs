using Ohmstead.Electronics.Parts;

namespace Ohmstead.Electronics.Tests.Parts;

public sealed class JunctionDropTests
{
    // Diode test of meters: silicon 0.5 to 0.8 V, Schottky 0.1 to 0.45 V (testmultimeter.com 2021-11), germanium 0.15 to 0.4 V.
    [Theory]
    [InlineData("silicon", "0.5", "0.8")]
    [InlineData("germanium", "0.15", "0.4")]
    [InlineData("Schottky", "0.1", "0.45")]
    public void A_healthy_junction_drops_what_its_material_drops(string material, string low, string high)
    {
        JunctionDrop junction = JunctionDrop.All.Single(known => known.Material == material);
        Assert.Equal((Exact.Of(low), Exact.Of(high)), (junction.LowVolts, junction.HighVolts));
    }

    // SV30. Measured: 1N5402 (3 A) 0.528 V, 1N5820 (3 A Schottky) 0.123 V; inside with or without the current.
    [Theory]
    [InlineData("silicon", "0.528")]
    [InlineData("Schottky", "0.123")]
    public void Real_rectifiers_are_inside(string material, string volts)
    {
        JunctionDrop junction = JunctionDrop.All.Single(known => known.Material == material);
        Assert.InRange(
            Exact.Of(volts),
            junction.LowFor(null) + JunctionDrop.VoltsOfUnknownCurrent,
            junction.HighVolts - JunctionDrop.VoltsOfUnknownCurrent
        );
        Assert.True(junction.LowFor(3m) < junction.LowFor(2.9m));
    }

    // SV29. 6.2 V: no suffix of 1N47xx 10 % from 5.58 to 6.82 V, A 5 % from 5.89 to 6.51 V (data sheets); A of 1N52xx 10 %, from memory.
    [Theory]
    [InlineData("1N4735", "5.58", "6.82")]
    [InlineData("1N4735A", "5.89", "6.51")]
    [InlineData("1N5234A", "5.58", "6.82")]
    [InlineData("1N4735C", "6.076", "6.324")]
    [InlineData("1N4735D", "6.138", "6.262")]
    public void The_family_of_a_zener_diode_says_what_its_letter_means(string type, string low, string high)
    {
        ZenerType zener = ZenerType.Parse(type)!;
        decimal share = ZenerTolerance.For(zener.Series, zener.Suffix).Value.Value;
        Assert.Equal((Exact.Of(low), Exact.Of(high)), (6.2m * (1m - share), 6.2m * (1m + share)));
    }
}
