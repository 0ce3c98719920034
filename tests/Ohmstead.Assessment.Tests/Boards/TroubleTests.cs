using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Boards;

/// <summary>The words of the bench say what sort of trouble a finding speaks of, and so what closes it. Common practice.</summary>
public sealed class TroubleTests
{
    [Theory]
    [InlineData("chassis", "the chassis is live", nameof(Trouble.LiveMetal))]
    [InlineData("chassis", "a tingle from the case", nameof(Trouble.LiveMetal))]
    [InlineData("T1", "shock from the front panel", nameof(Trouble.LiveMetal))]
    [InlineData("chassis", "voltage on the metalwork, earth wire off", nameof(Trouble.LiveMetal))]
    [InlineData("chassis", "olive green corrosion on the case", nameof(Trouble.Dirt))]
    [InlineData("C5", "the case is crazed", nameof(Trouble.SpentPart))]
    [InlineData("C1", "the can bulges", nameof(Trouble.SpentPart))]
    [InlineData("C1", "vented at the top", nameof(Trouble.SpentPart))]
    [InlineData("C1", "it has leaked", nameof(Trouble.SpentPart))]
    [InlineData("R1", "burnt in the middle", nameof(Trouble.SpentPart))]
    [InlineData("F1", "blown", nameof(Trouble.SpentPart))]
    [InlineData("C1", "leakage high", nameof(Trouble.Other))]
    [InlineData("C5", "body cracked", nameof(Trouble.SpentPart))]
    [InlineData("C5", "split along its side", nameof(Trouble.SpentPart))]
    [InlineData("C1", "it leaks, and its leakage is high", nameof(Trouble.SpentPart))]
    [InlineData("C1", "leakage of electrolyte at the base", nameof(Trouble.SpentPart))]
    [InlineData("C1", "electrolyte under the can", nameof(Trouble.SpentPart))]
    [InlineData("J3", "electrolyte on the contacts", nameof(Trouble.Dirt))]
    [InlineData("BT1", "memory cell has leaked, blue-green crust", nameof(Trouble.SpentPart))]
    [InlineData("BT1", "white crust at one end", nameof(Trouble.SpentPart))]
    [InlineData("BT1", "reads low", nameof(Trouble.Other))]
    [InlineData("J3", "white crust at one end", nameof(Trouble.Dirt))]
    [InlineData("Q2", "collector pad lifted, joint cracked", nameof(Trouble.Joint))]
    [InlineData("Q2", "a leg off its pad", nameof(Trouble.Joint))]
    [InlineData("J3", "cold joint", nameof(Trouble.Joint))]
    [InlineData("U3", "track broken beside pin 4", nameof(Trouble.Joint))]
    [InlineData("J3", "flux residue", nameof(Trouble.Dirt))]
    [InlineData("J3", "verdigris on the contacts", nameof(Trouble.Dirt))]
    [InlineData("board", "thick dust", nameof(Trouble.Dirt))]
    [InlineData("RV1", "the wiper is rough", nameof(Trouble.Other))]
    [InlineData("RV1", "crackles over its first third", nameof(Trouble.Other))]
    [InlineData("board", "hums", nameof(Trouble.Other))]
    [InlineData("board", "THE CHASSIS IS LIVE", nameof(Trouble.LiveMetal))]
    public void A_finding_speaks_of(string at, string what, string trouble) => Assert.Equal(Enum.Parse<Trouble>(trouble), Of(at, what, "major"));

    // Metal that a hand can touch and a voltage beside it are live metal, where somebody wrote that it can hurt; a rail on the front panel is none.
    [Theory]
    [InlineData("230 V between chassis and earth", "safety", nameof(Trouble.LiveMetal))]
    [InlineData("110V AC on the case", "safety", nameof(Trouble.LiveMetal))]
    [InlineData("5 V lamp of the panel is dim", "major", nameof(Trouble.Other))]
    public void Volts_on_metal_that_can_hurt_are_live_metal(string what, string severity, string trouble) => Assert.Equal(Enum.Parse<Trouble>(trouble), Of("chassis", what, severity));

    // A part that is spent is told by where it was seen: what is burnt at no part is a mark on the board.
    [Fact]
    public void What_is_burnt_where_no_part_sits_is_no_part() => Assert.Equal(Trouble.Other, Of("board", "burnt beside the heatsink", "major"));

    private static Trouble Of(string at, string what, string severity) => Assert.Single(Worked.Board(
        $"""
        parts:
          - {"{ ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF }"}
          - {"{ ref: C5, kind: suppression capacitor, capacitance: 100 nF, safety_class: X2 }"}
          - {"{ ref: BT1, kind: cell, material: nickel-cadmium }"}
          - {"{ ref: Q2, kind: transistor }"}
          - {"{ ref: R1, kind: carbon composition resistor, resistance: 100 kΩ }"}
          - {"{ ref: F1, kind: fuse, current: 1 A }"}
          - {"{ ref: U3, kind: integrated circuit }"}
          - {"{ ref: RV1, kind: potentiometer, resistance: 10 kΩ }"}
        bench:
          - date: 2026-03-14
            found:
              - {"{"} at: {at}, what: "{what}", severity: {severity} {"}"}
        """).Findings).Trouble;
}
