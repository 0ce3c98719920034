using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Assessment.Tests.Fit;

/// <summary>Whether a lot fits a place, as records say both. The rules are common practice except where a row names a standard.</summary>
public sealed class FitJudgeTests
{
    [Theory]
    [InlineData(
        "kind: paper, role: coupling, capacitance: 100 nF, rated_voltage: 400 V",
        "kind: polypropylene film, capacitance: 100 nF, rated_voltage: 630 V",
        ReasonWeight.For,
        "film is the usual replacement of paper"
    )]
    [InlineData(
        "kind: polyester film, role: coupling, capacitance: 100 nF, rated_voltage: 100 V",
        "kind: aluminium electrolytic, capacitance: 100 nF, rated_voltage: 100 V",
        ReasonWeight.Against,
        "never an electrolytic for a dry dielectric"
    )]
    [InlineData(
        "kind: bipolar electrolytic, role: coupling, capacitance: 10 µF, rated_voltage: 50 V",
        "kind: aluminium electrolytic, capacitance: 10 µF, rated_voltage: 50 V",
        ReasonWeight.Against,
        "polar where the voltage changes its sign"
    )]
    [InlineData(
        "kind: bipolar electrolytic, role: coupling, capacitance: 10 µF, rated_voltage: 50 V",
        "kind: bipolar electrolytic, capacitance: 10 µF, rated_voltage: 50 V",
        ReasonWeight.For,
        "bipolar for bipolar"
    )]
    [InlineData(
        "kind: tantalum, role: decoupling, capacitance: 10 µF, rated_voltage: 16 V, working_voltage: 12 V",
        "kind: tantalum, capacitance: 10 µF, rated_voltage: 20 V",
        ReasonWeight.Against,
        "a tantalum wants 24 V on a 12 V rail"
    )]
    [InlineData(
        "kind: aluminium electrolytic, role: decoupling, capacitance: 100 µF, rated_voltage: 25 V",
        "kind: aluminium electrolytic, capacitance: 220 µF, rated_voltage: 25 V",
        ReasonWeight.For,
        "decoupling stands three times the value"
    )]
    [InlineData(
        "kind: aluminium electrolytic, role: timing, capacitance: 100 µF, tolerance: ±20 %, rated_voltage: 25 V",
        "kind: aluminium electrolytic, capacitance: 220 µF, rated_voltage: 25 V",
        ReasonWeight.Against,
        "a timing capacitor does not"
    )]
    [InlineData(
        "kind: aluminium electrolytic, role: timing, capacitance: 100 µF, low: 90 µF, high: 250 µF, rated_voltage: 25 V",
        "kind: aluminium electrolytic, capacitance: 220 µF, rated_voltage: 25 V",
        ReasonWeight.For,
        "unless the circuit is known to"
    )]
    [InlineData(
        "kind: suppression capacitor, role: mains suppression, capacitance: 2.2 nF, rated_voltage: 250 V, safety_class: Y2",
        "kind: suppression capacitor, capacitance: 3.3 nF, rated_voltage: 300 V, safety_class: Y2",
        ReasonWeight.Against,
        "a class Y value is never raised: IEC 60384-14, from memory"
    )]
    public void A_capacitor_is_judged_by_its_role_in_the_place(string place, string lot, ReasonWeight expected, string why) =>
        Assert.True(expected == Judge(place, lot).Outcome, why);

    [Theory]
    [InlineData(
        "kind: carbon composition resistor, resistance: 4.7 kΩ, tolerance: ±5 %, power: 0.5 W",
        "kind: metal film resistor, resistance: 4.7 kΩ, tolerance: ±1 %, power: 0.6 W",
        ReasonWeight.For
    )]
    [InlineData(
        "kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: ±5 %, power: 0.5 W",
        "kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: ±5 %, power: 0.25 W",
        ReasonWeight.Against
    )]
    [InlineData(
        "kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: ±5 %",
        "kind: carbon film resistor, resistance: 5.6 kΩ, tolerance: ±5 %",
        ReasonWeight.Against
    )]
    [InlineData(
        "kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: ±5 %",
        "kind: metal film resistor, resistance: 4.75 kΩ, tolerance: ±1 %, power: 0.5 W",
        ReasonWeight.For
    )]
    [InlineData(
        "kind: metal film resistor, resistance: 4.7 kΩ, tolerance: ±1 %",
        "kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: ±5 %",
        ReasonWeight.Doubt
    )]
    [InlineData(
        "kind: metal film resistor, role: feedback, resistance: 47 Ω",
        "kind: wire-wound resistor, resistance: 47 Ω",
        ReasonWeight.Doubt
    )]
    [InlineData(
        "kind: metal film resistor, resistance: 1 MΩ, working_voltage: 400 V",
        "kind: metal film resistor, resistance: 1 MΩ, rated_voltage: 350 V",
        ReasonWeight.Against
    )]
    [InlineData("kind: potentiometer, resistance: 10 kΩ", "kind: metal film resistor, resistance: 10 kΩ", ReasonWeight.Against)]
    public void A_resistor_is_judged_by_value_tolerance_power_and_voltage(string place, string lot, ReasonWeight expected) =>
        Assert.Equal(expected, Judge(place, lot).Outcome);

    [Theory]
    [InlineData("kind: fuse, current: 250 mA", "kind: fuse, current: 1 A", ReasonWeight.Against)]
    [InlineData("kind: valve, type: VK81", "kind: valve, type: VK81", ReasonWeight.For)]
    [InlineData("kind: valve, type: VK81", "kind: valve, type: VK82", ReasonWeight.Doubt)]
    [InlineData("kind: selenium rectifier, type: MS-80", "kind: bridge rectifier, type: MS-80", ReasonWeight.Doubt)]
    [InlineData("kind: crystal, frequency: 4.096 MHz", "kind: crystal, frequency: 4.194304 MHz", ReasonWeight.Against)]
    [InlineData(
        "kind: inductor, inductance: 10 mH, tolerance: ±10 %, current: 60 mA",
        "kind: inductor, inductance: 10 mH, current: 40 mA",
        ReasonWeight.Against
    )]
    [InlineData("kind: diode, type: WX-D4", "kind: fuse, current: 1 A", ReasonWeight.Against)]
    public void Other_parts_are_judged_by_type_and_rating(string place, string lot, ReasonWeight expected) =>
        Assert.Equal(expected, Judge(place, lot).Outcome);

    [Fact]
    public void What_is_not_written_is_missing_and_not_held_against_a_part()
    {
        var verdict = Judge(
            "kind: aluminium electrolytic, role: decoupling, capacitance: 100 µF, rated_voltage: 25 V, temperature: 85 °C, lead_pitch: "
                + "5 mm, form: radial",
            "kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V"
        );
        Assert.Equal(["temperature", "form"], verdict.Reasons.Where(reason => reason.IsMissing).Select(reason => reason.Aspect));
        Assert.Equal(ReasonWeight.Doubt, verdict.Outcome);
    }

    [Fact]
    public void Reasons_against_come_first_and_what_can_hurt_before_what_can_be_bent()
    {
        FitReason[] reasons =
        [
            .. Judge(
                "kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 250 V, safety_class: X2, form: radial",
                "kind: polypropylene film, capacitance: 100 nF, rated_voltage: 200 V, form: axial"
            ).Reasons,
        ];
        Assert.Equal(["safety", "voltage"], reasons.Where(reason => reason.Weight == ReasonWeight.Against).Select(reason => reason.Aspect));
        Assert.True(reasons.Select(reason => reason.Weight).SequenceEqual(reasons.Select(reason => reason.Weight).OrderDescending()));
    }

    // A board with valves and no other rectifier: its reservoir stands after a valve, which may feed no more than it did.
    [Fact]
    public void A_reservoir_on_a_board_of_valves_is_not_raised()
    {
        const string lot =
            "lots:\n  - { lot: L-1, kind: aluminium electrolytic, capacitance: 68 µF, tolerance: ±20 %, rated_voltage: 450 V, received: "
            + "2026-01, quantity: 3 }";
        var board = Worked.Board(
            "parts:\n  - { ref: C1, kind: aluminium electrolytic, role: reservoir, capacitance: 47 µF, tolerance: ±20 %, rated_voltage: "
                + "450 V }\n  - { ref: V1, kind: valve, type: VK80 }",
            lot
        );
        var place = FitPlace.From(board, board.Place("C1")!);
        Assert.Equal(CapacitorRole.ValveReservoir, place.Capacitor!.Role);
        Assert.Contains("the list has valves and no other rectifier: judged as after a valve rectifier", place.Assumptions);
    }

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
