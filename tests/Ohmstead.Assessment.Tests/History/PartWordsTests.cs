using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.History;

/// <summary>A part in words says what it takes to buy the right one.</summary>
public sealed class PartWordsTests
{
    // The order on the cap of a cartridge: speed, current, what it can break, then the voltage (IEC 60127-1, from memory).
    [Theory]
    [InlineData(
        "kind: fuse, rated_voltage: 250 V, current: 1.6 A, speed: T, breaking: L, size: 5 x 20 mm, standard: IEC 60127",
        "fuse T 1.6 A L IEC 60127 250 V 5 x 20 mm"
    )]
    [InlineData("kind: fuse, rated_voltage: 250 V, current: 1.6 A, speed: F, breaking: H", "fuse F 1.6 A H 250 V")]
    [InlineData("kind: carbon film resistor, resistance: 47 kΩ, tolerance: ±5 %, power: 2 W", "carbon film resistor 47 kΩ ±5 % 2 W")]
    [InlineData(
        "kind: suppression capacitor, capacitance: 100 nF, tolerance: ±20 %, rated_voltage: 310 V, temperature: 110 °C, safety_class: X2",
        "suppression capacitor 100 nF ±20 % 310 V 110 °C class X2"
    )]
    [InlineData("kind: cell, material: nickel-metal hydride, type: NP36", "cell nickel-metal hydride NP36")]
    [InlineData("kind: valve, type: VK81", "valve VK81")]
    public void A_part_is_told_as_it_is_ordered(string keys, string told)
    {
        var small = new SmallCollection([new CaseBlock("yaml", "stock.yaml", 0, $"lots:\n  - {{ lot: L-031, {keys} }}\n")]);
        Assert.Equal(told, PartWords.Describe(small.Workshop.Lots["L-031"].Values));
    }
}
