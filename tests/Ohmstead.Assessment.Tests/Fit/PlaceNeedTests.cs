using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Fit;

/// <summary>What to look for, in words. Values by hand; the rules are common practice.</summary>
public sealed class PlaceNeedTests
{
    [Theory]
    [InlineData(
        "kind: aluminium electrolytic, role: reservoir, capacitance: 470 µF, rated_voltage: 25 V",
        "value",
        "470 µF … 705 µF (1 to 1.5 x 470 µF, for a reservoir; 0.9 to 2 x with care)"
    )]
    [InlineData(
        "kind: aluminium electrolytic, role: decoupling, capacitance: 8 µF, tolerance: -20/+50 %, rated_voltage: 350 V",
        "value",
        "8 µF is no preferred value: take 10 µF (+25 %) or 8.2 µF (+2.5 %)"
    )]
    [InlineData(
        "kind: aluminium electrolytic, role: decoupling, capacitance: 100 µF, rated_voltage: 64 V",
        "voltage",
        "64 V or more, the mark of the original; of today's ratings 80 V"
    )]
    [InlineData(
        "kind: aluminium electrolytic, role: decoupling, capacitance: 100 µF, rated_voltage: 25 V, working_voltage: 24 V",
        "voltage",
        "26.4 V or more, 1.1 x the 24 V in its place; of today's ratings 35 V"
    )]
    [InlineData(
        "kind: tantalum, role: decoupling, capacitance: 10 µF, rated_voltage: 16 V, working_voltage: 12 V",
        "voltage",
        "24 V or more, 2 x the 12 V in its place"
    )]
    [InlineData(
        "kind: aluminium electrolytic, role: decoupling, capacitance: 100 µF",
        "voltage",
        "not known: neither rated_voltage nor working_voltage is written"
    )]
    [InlineData(
        "kind: aluminium electrolytic, role: decoupling, capacitance: 100 µF, form: radial, lead_pitch: 5 mm",
        "pitch",
        "holes 5 mm apart: cans of 10 or 12.5 mm"
    )]
    [InlineData(
        "kind: tantalum, role: decoupling, capacitance: 22 µF, esr_low: 50 mΩ, esr_limit: 1 Ω",
        "ESR",
        "50 mΩ or more, so that a regulator stays stable; 1 Ω at most"
    )]
    [InlineData(
        "kind: paper, role: coupling, capacitance: 100 nF, rated_voltage: 400 V",
        "kind",
        "polypropylene film, polyester film, polystyrene film, ceramic class 1 or mica; with care ceramic class 2"
    )]
    [InlineData(
        "kind: aluminium electrolytic, role: reservoir, capacitance: 2200 µF, rated_voltage: 25 V",
        "kind",
        "aluminium electrolytic; with care polymer electrolytic"
    )]
    [InlineData(
        "kind: carbon film resistor, resistance: 5 kΩ, tolerance: ±10 %, power: 0.5 W",
        "value",
        "5 kΩ: nearest preferred value 5.1 kΩ (E24)"
    )]
    [InlineData("kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: ±5 %, power: 0.5 W", "power", "500 mW or more")]
    [InlineData("kind: fuse, current: 250 mA", "current", "250 mA, neither less nor more")]
    [InlineData("kind: fuse, current: 250 mA, speed: T", "speed", "T, no other")]
    [InlineData("kind: fuse, current: 250 mA, breaking: L", "breaking capacity", "L or higher")]
    [InlineData("kind: lamp, rated_voltage: 6.3 V", "voltage", "6.3 V, neither less nor more")]
    [InlineData("kind: regulator, rated_voltage: 5 V", "voltage", "5 V, neither less nor more")]
    public void A_need_is_told_so_that_one_can_be_bought(string part, string aspect, string expected)
    {
        var board = Worked.Board($"parts:\n  - {{ ref: X1, {part} }}");
        Assert.Contains(
            expected,
            PlaceNeed.Describe(FitPlace.From(board, board.Place("X1")!)).Where(line => line.Aspect == aspect).Select(line => line.Words)
        );
    }

    [Fact]
    public void A_place_on_the_mains_defers_to_local_codes()
    {
        var board = Worked.Board(
            "parts:\n  - { ref: C1, kind: suppression capacitor, role: mains suppression, capacitance: 100 nF, rated_voltage: 250 V, "
                + "safety_class: X2 }"
        );
        Assert.Contains(PlaceNeed.Describe(FitPlace.From(board, board.Place("C1")!)), line =>
            line.Aspect == "safety" && line.Words.Contains("defer to local codes", StringComparison.Ordinal)
        );
    }
}
