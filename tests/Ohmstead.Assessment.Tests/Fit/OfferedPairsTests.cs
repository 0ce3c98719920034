using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Assessment.Tests.Fit;

/// <summary>Pairs of place and lot as they lie in a workshop: what must never be offered, what nobody can say, and what must stay offered.
/// Common practice except where a row names a source.</summary>
public sealed class OfferedPairsTests
{
    [Theory]
    [InlineData(
        "kind: regulator, rated_voltage: 5 V",
        "kind: regulator, rated_voltage: 12 V, current: 1 A",
        "a regulator of 12 V kills what 5 V feed"
    )]
    [InlineData(
        "kind: regulator, rated_voltage: 12 V",
        "kind: regulator, rated_voltage: -12 V",
        "a negative regulator is none of plus 12 V"
    )]
    [InlineData(
        "kind: zener diode, rated_voltage: 5.1 V, power: 0.4 W",
        "kind: zener diode, rated_voltage: 12 V, power: 0.4 W",
        "a reference of another voltage"
    )]
    [InlineData("kind: zener diode, type: WX-C9V1", "kind: zener diode, type: WX-C12", "the type tells the voltage")]
    [InlineData("kind: relay, rated_voltage: 12 V", "kind: relay, rated_voltage: 24 V", "its coil does not pull in")]
    [InlineData("kind: relay, rated_voltage: 24 V", "kind: relay, rated_voltage: 12 V", "its coil burns")]
    [InlineData("kind: lamp, rated_voltage: 6.3 V", "kind: lamp, rated_voltage: 24 V", "it does not light")]
    [InlineData("kind: motor, rated_voltage: 12 V", "kind: motor, rated_voltage: 24 V", "it does not turn")]
    [InlineData(
        "kind: cell, material: nickel-cadmium, cells: 3, rated_voltage: 3.6 V",
        "kind: cell, material: lithium, cells: 1, rated_voltage: 3.6 V",
        "SV26: the charge of three cells is 4.35 V; lithium bursts"
    )]
    [InlineData("kind: cell, material: nickel-cadmium, cells: 3", "kind: cell, material: nickel-cadmium, cells: 4", "four cells for three")]
    [InlineData(
        "kind: cell, material: lithium, cells: 1, rated_voltage: 3 V",
        "kind: cell, material: nickel-metal hydride, cells: 3, rated_voltage: 3.6 V",
        "SV27: nothing charges it there, and 3.6 V are not 3"
    )]
    [InlineData(
        "kind: cell, material: silver oxide, cells: 1",
        "kind: cell, material: alkaline, cells: 1",
        "1.55 V flat against 1.5 V sloping: not one electrically"
    )]
    [InlineData(
        "kind: suppression capacitor, role: filter, capacitance: 100 nF, rated_voltage: 250 V",
        "kind: polyester film, capacitance: 100 nF, rated_voltage: 400 V",
        "a suppression capacitor means mains whatever its role says"
    )]
    [InlineData(
        "kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 250 V",
        "kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 310 V, safety_class: X2",
        "no class is written for the place: establish it first"
    )]
    [InlineData(
        "kind: suppression capacitor, role: mains suppression, capacitance: 100 nF, safety_class: X2",
        "kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 125 V, safety_class: Y4",
        "Y4 is for places under 150 V: IEC 60384-14"
    )]
    [InlineData(
        "kind: suppression capacitor, role: mains suppression, capacitance: 100 nF, safety_class: X2",
        "kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 310 V, safety_class: X2",
        "the mains voltage of the place is not written"
    )]
    [InlineData(
        "kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 250 V, safety_class: X2",
        "kind: suppression capacitor, capacitance: 100 nF, safety_class: X2",
        "the rating of the lot is not written"
    )]
    [InlineData(
        "kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 250 V, safety_class: X2",
        "kind: suppression capacitor, rated_voltage: 310 V, safety_class: X2",
        "the value of the lot is not written"
    )]
    [InlineData(
        "kind: suppression capacitor, capacitance: 2.2 nF, rated_voltage: 250 V, safety_class: Y2",
        "kind: suppression capacitor, capacitance: 2.2 nF, rated_voltage: 400 V, safety_class: X1",
        "an X never stands for a Y"
    )]
    [InlineData(
        "kind: polyester film, role: coupling, capacitance: 100 nF, rated_voltage: 250 V, safety_class: X2",
        "kind: polyester film, capacitance: 100 nF, rated_voltage: 400 V",
        "a place with a class takes no part without one"
    )]
    [InlineData(
        "kind: metal film resistor, role: mains suppression, resistance: 1 MΩ, power: 0.5 W, working_voltage: 350 V",
        "kind: metal film resistor, resistance: 1 MΩ, power: 0.5 W",
        "a bleeder on the mains whose voltage is not written"
    )]
    [InlineData(
        "kind: fuse, current: 1 A, speed: T, breaking: L",
        "kind: fuse, current: 1 A, speed: F, breaking: L",
        "a quick one blows at switch-on"
    )]
    [InlineData(
        "kind: fuse, current: 1 A, speed: F, breaking: L",
        "kind: fuse, current: 1 A, speed: T, breaking: L",
        "a slow one protects less"
    )]
    [InlineData(
        "kind: fuse, current: 1 A, speed: T, breaking: H, rated_voltage: 250 V",
        "kind: fuse, current: 1 A, speed: T, breaking: L, rated_voltage: 250 V",
        "35 A where 1500 A may flow: SV33"
    )]
    [InlineData(
        "kind: fuse, current: 1 A, rated_voltage: 250 V",
        "kind: fuse, current: 1 A, rated_voltage: 125 V",
        "125 V on 230 V of mains"
    )]
    [InlineData("kind: fuse, current: 1 A, size: 5 x 20 mm", "kind: fuse, current: 1 A, size: 6.3 x 32 mm", "it does not go in")]
    [InlineData("kind: fuse, current: 1 A", "kind: fuse", "a fuse whose current nobody wrote")]
    [InlineData("kind: fuse", "kind: fuse, current: 10 A", "a place whose current nobody wrote")]
    public void What_can_hurt_is_never_offered(string place, string lot, string why)
    {
        var verdict = Judge(place, lot);
        Assert.True(verdict.Outcome == ReasonWeight.Against, $"{why}: {FitWords.Weightiest(verdict)}");
        Assert.Equal("does not fit", FitWords.Describe(verdict));
    }

    [Theory]
    [InlineData(
        "kind: aluminium electrolytic, role: decoupling, capacitance: 100 µF, rated_voltage: 25 V",
        "kind: aluminium electrolytic, capacitance: 100 µF"
    )]
    [InlineData("kind: polyester film, role: coupling, capacitance: 100 nF", "kind: polyester film, capacitance: 100 nF")]
    [InlineData(
        "kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: ±5 %",
        "kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: ±5 %"
    )]
    [InlineData(
        "kind: metal film resistor, resistance: 1 MΩ, power: 0.5 W, working_voltage: 350 V",
        "kind: metal film resistor, resistance: 1 MΩ, power: 0.5 W"
    )]
    [InlineData("kind: diode, rated_voltage: 400 V, current: 1 A, type: WX-D4", "kind: diode, type: WX-D7")]
    [InlineData("kind: diode, rated_voltage: 400 V, current: 1 A", "kind: diode")]
    [InlineData("kind: inductor, inductance: 10 mH, tolerance: ±10 %", "kind: inductor, inductance: 10 mH")]
    [InlineData("kind: cell, material: nickel-cadmium, cells: 3", "kind: cell, cells: 3")]
    [InlineData("kind: lamp, rated_voltage: 6.3 V", "kind: lamp")]
    [InlineData("kind: regulator, rated_voltage: 5 V", "kind: regulator")]
    [InlineData("kind: crystal, frequency: 4.096 MHz", "kind: crystal")]
    [InlineData(
        "kind: fuse, current: 250 mA, speed: T, breaking: L, rated_voltage: 250 V, size: 5 x 20 mm",
        "kind: fuse, current: 250 mA, breaking: L, rated_voltage: 250 V, size: 5 x 20 mm"
    )]
    [InlineData("kind: fuse, current: 250 mA", "kind: fuse, current: 250 mA")]
    public void A_lot_whose_rating_is_not_written_never_stands_under_fits(string place, string lot)
    {
        var verdict = Judge(place, lot);
        Assert.Equal(ReasonWeight.Doubt, verdict.Outcome);
        Assert.True(verdict.IsUnknown);
        Assert.DoesNotContain("fits", FitWords.Describe(verdict), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("kind: regulator, rated_voltage: 5 V, type: WX-R5", "kind: regulator, rated_voltage: 5 V, type: WX-R5")]
    [InlineData("kind: regulator, rated_voltage: 5 V, type: WX-R5", "kind: regulator, type: WX-R5")]
    [InlineData("kind: zener diode, type: WX-C9V1", "kind: zener diode, rated_voltage: 9.1 V, type: WX-C9V1")]
    [InlineData("kind: cell, material: nickel-metal hydride, cells: 3", "kind: cell, material: nickel-metal hydride, cells: 3, type: NP36")]
    [InlineData("kind: cell, material: lithium, cells: 1, rated_voltage: 3 V", "kind: cell, material: lithium, rated_voltage: 3 V")]
    [InlineData("kind: relay, type: M2P, resistance: 550 Ω, tolerance: ±10 %", "kind: relay, type: M2P, resistance: 560 Ω")]
    [InlineData(
        "kind: lamp, rated_voltage: 6.3 V, current: 0.3 A, type: LX-6",
        "kind: lamp, rated_voltage: 6.3 V, current: 0.3 A, type: LX-6"
    )]
    [InlineData(
        "kind: suppression capacitor, role: mains suppression, capacitance: 100 nF, rated_voltage: 250 V, safety_class: X2",
        "kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 310 V, safety_class: X2"
    )]
    [InlineData(
        "kind: suppression capacitor, role: filter, capacitance: 100 nF, rated_voltage: 250 V, safety_class: X2",
        "kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 310 V, safety_class: X2"
    )]
    [InlineData(
        "kind: suppression capacitor, capacitance: 10 nF, rated_voltage: 250 V, safety_class: X2",
        "kind: suppression capacitor, capacitance: 10 nF, rated_voltage: 250 V, safety_class: Y2"
    )]
    [InlineData(
        "kind: suppression capacitor, capacitance: 2.2 nF, safety_class: Y2",
        "kind: suppression capacitor, capacitance: 2.2 nF, rated_voltage: 300 V, safety_class: Y2"
    )]
    [InlineData(
        "kind: ceramic class 2, capacitance: 2.2 nF, rated_voltage: 250 V, safety_class: Y2",
        "kind: ceramic class 2, capacitance: 2.2 nF, rated_voltage: 400 V, safety_class: Y1"
    )]
    [InlineData(
        "kind: fuse, current: 250 mA, speed: T, breaking: L, rated_voltage: 250 V, size: 5 x 20 mm",
        "kind: fuse, current: 250 mA, speed: T, breaking: L, rated_voltage: 250 V, size: 5 x 20 mm"
    )]
    [InlineData(
        "kind: fuse, current: 250 mA, speed: F, breaking: L, rated_voltage: 250 V, size: 5 x 20 mm",
        "kind: fuse, current: 250 mA, speed: F, breaking: H, rated_voltage: 250 V, size: 5 x 20 mm"
    )]
    [InlineData(
        "kind: aluminium electrolytic, role: reservoir, capacitance: 470 µF, rated_voltage: 25 V, temperature: 85 °C",
        "kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 35 V, temperature: 105 °C"
    )]
    [InlineData(
        "kind: paper, role: coupling, capacitance: 100 nF, rated_voltage: 400 V",
        "kind: polypropylene film, capacitance: 100 nF, rated_voltage: 630 V"
    )]
    [InlineData(
        "kind: carbon composition resistor, resistance: 220 kΩ, tolerance: ±10 %, power: 0.5 W",
        "kind: metal film resistor, resistance: 220 kΩ, tolerance: ±2 %, power: 2 W, rated_voltage: 500 V"
    )]
    [InlineData(
        "kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: ±5 %",
        "kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: ±5 %, power: 0.5 W"
    )]
    [InlineData("kind: diode, rated_voltage: 400 V, current: 1 A, type: WX-D4", "kind: diode, type: WX-D4")]
    [InlineData("kind: valve, type: VK81", "kind: valve, type: VK81")]
    [InlineData("kind: transformer, type: MT-3", "kind: transformer, type: MT-3")]
    [InlineData("kind: crystal, frequency: 4.096 MHz", "kind: crystal, frequency: 4.096 MHz")]
    [InlineData("kind: inductor, inductance: 10 mH, tolerance: ±10 %, current: 60 mA", "kind: inductor, inductance: 10 mH, current: 60 mA")]
    public void What_is_sound_stays_offered(string place, string lot)
    {
        var verdict = Judge(place, lot);
        Assert.True(FitWords.Describe(verdict) is "fits" or "fits, with care", FitWords.Weightiest(verdict));
    }

    // A replacement of the usual sort at the same voltage, which asks for a look at the charger.
    [Theory]
    [InlineData(
        "kind: cell, material: nickel-cadmium, cells: 3",
        "kind: cell, material: nickel-metal hydride, cells: 3, rated_voltage: 3.6 V"
    )]
    [InlineData(
        "kind: fuse, current: 1 A, speed: T, breaking: L, rated_voltage: 250 V, size: 5 x 20 mm",
        "kind: fuse, current: 1 A, speed: T, breaking: H, rated_voltage: 250 V, size: 5 x 20 mm"
    )]
    public void What_wants_a_look_may_fit(string place, string lot) => Assert.Equal("may fit", FitWords.Describe(Judge(place, lot)));

    private static FitVerdict Judge(string place, string lot)
    {
        var collection = new SmallCollection([
            new(
                "markdown",
                "boards/SP-0001.md",
                0,
                $"---\nboard: SP-0001\ntitle: Tide-gauge logger\nparts:\n  - {{ ref: X1, {place} }}\n---\n"
            ),
            new("yaml", "stock.yaml", 0, $"lots:\n  - {{ lot: L-1, {lot} }}\n"),
        ]);
        Assert.Empty(collection.ReadingFindings.Select(finding => $"{finding.Place}: {finding.Message}"));
        var board = Assert.Single(collection.Boards);
        return FitJudge.Judge(FitPlace.From(board, board.Place("X1")!), new LotOffer("L-1", collection.Workshop.Lots["L-1"].Values, []));
    }
}
