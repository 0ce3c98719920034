using Ohmstead.Electronics.Parts;

namespace Ohmstead.Electronics.Tests.Parts;

public sealed class MainsInsulationTests
{
    // SV24. UK practice: class I 1 MΩ, class II 2 MΩ, reinforced 7 MΩ at 500 V d.c.; a winding of 5 MΩ is in by the first two and out by
    // the last.
    [Theory]
    [InlineData("0.9", false, false, false)]
    [InlineData("1.1", true, false, false)]
    [InlineData("1.5", true, false, false)]
    [InlineData("2.0", true, true, false)]
    [InlineData("5", true, true, false)]
    [InlineData("7", true, true, true)]
    public void What_is_enough_depends_on_what_is_asked(string megohms, bool classOne, bool classTwo, bool reinforced)
    {
        decimal ohms = 1_000_000m * Exact.Of(megohms);
        Assert.Equal(
            (classOne, classTwo, reinforced),
            (MainsInsulation.ClassOne.Holds(ohms), MainsInsulation.ClassTwo.Holds(ohms), MainsInsulation.Reinforced.Holds(ohms))
        );
    }

    // SV25. Renata: 5.0 V with the diode shorted, 25 mA at the most: 80 ohm; 10 mA: 200 ohm.
    [Theory]
    [InlineData("0.025", "80")]
    [InlineData("0.010", "200")]
    public void A_resistor_keeps_a_lithium_cell_from_being_charged_by_a_failed_diode(string amperes, string ohms) =>
        Assert.Equal(Exact.Of(ohms), LithiumBackup.LeastOhms(5.0m, 3.0m, Exact.Of(amperes)).Value.Value);
}
