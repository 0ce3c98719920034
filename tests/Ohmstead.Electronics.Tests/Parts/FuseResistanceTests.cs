using Ohmstead.Electronics.Parts;

namespace Ohmstead.Electronics.Tests.Parts;

public sealed class FuseResistanceTests
{
    // SV34. Schurter SMD-SPT: at most 250 mV at 1 A, so whole to 0.25 ohm; 0.18 ohm is whole, 5 MΩ is blown.
    [Theory]
    [InlineData("0.18", true, false)]
    [InlineData("0.25", true, false)]
    [InlineData("0.26", false, false)]
    [InlineData("5000000", false, true)]
    public void A_fuse_of_1_ampere_is_whole_to_a_quarter_of_an_ohm(string ohms, bool isWhole, bool isBlown)
    {
        Assert.Equal(isWhole, Exact.Of(ohms) <= FuseResistance.Whole(1m).Value.Value);
        Assert.Equal(isBlown, Exact.Of(ohms) > FuseResistance.Blown(1m).Value.Value);
    }

    // The same sheet: 140 mV at 3.15 A, 100 mV at 6.3 A.
    [Theory]
    [InlineData("3.15", 0.04444)]
    [InlineData("6.3", 0.01587)]
    [InlineData("4", 0.025)]
    public void The_resistance_of_a_whole_fuse_is_its_largest_drop_by_its_current(string amperes, double ohms) =>
        Assert.Equal(ohms, (double)FuseResistance.Whole(Exact.Of(amperes)).Value.Value, 1e-4);

    // Eaton GMA data sheet: at most 4.7 V at 63 mA, which is 74.6 Ω; under that rating no sheet is at hand.
    [Fact]
    public void A_small_fuse_is_held_against_the_largest_drop_that_a_sheet_has()
    {
        Assert.Equal(74.6, (double)FuseResistance.Whole(0.063m).Value.Value, 0.01);
        Assert.Equal(
            "rated current is 0.05 A, the voltage drop of one under 63 mA is in no source at hand",
            FuseResistance.Whole(0.05m).Refusal
        );
    }

    [Fact]
    public void A_fuse_of_no_current_is_refused() => Assert.Equal("rated current is 0, expected above 0", FuseResistance.Blown(0m).Refusal);
}
