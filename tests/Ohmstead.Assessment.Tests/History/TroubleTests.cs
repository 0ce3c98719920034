using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Tests.History;

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
    [InlineData("Q2", "collector pad lifted, joint cracked", nameof(Trouble.Track))]
    [InlineData("Q2", "a leg off its pad", nameof(Trouble.Track))]
    [InlineData("Q2", "joint cracked", nameof(Trouble.Joint))]
    [InlineData("track from G1 to D2", "copper eaten through", nameof(Trouble.Joint))]
    [InlineData("J3", "cold joint", nameof(Trouble.Joint))]
    [InlineData("U3", "track broken beside pin 4", nameof(Trouble.Track))]
    [InlineData("J3", "flux residue", nameof(Trouble.Dirt))]
    [InlineData("J3", "verdigris on the contacts", nameof(Trouble.Dirt))]
    [InlineData("board", "thick dust", nameof(Trouble.Dirt))]
    [InlineData("RV1", "the wiper is rough", nameof(Trouble.Contact))]
    [InlineData("RV1", "crackles over its first third", nameof(Trouble.Contact))]
    [InlineData("U3", "poor contact in its socket", nameof(Trouble.Contact))]
    [InlineData("U3", "its socket is cracked", nameof(Trouble.Other))]
    [InlineData("socket of U3", "cracked, contact 4 sprung", nameof(Trouble.Other))]
    [InlineData("S1", "stiff", nameof(Trouble.Contact))]
    [InlineData("Q2", "noisy", nameof(Trouble.Other))]
    [InlineData("board", "hums", nameof(Trouble.Other))]
    [InlineData("board", "THE CHASSIS IS LIVE", nameof(Trouble.LiveMetal))]
    public void A_finding_speaks_of(string at, string what, string trouble) =>
        Assert.Equal(Enum.Parse<Trouble>(trouble), Of(at, what, "major"));

    // Metal that a hand can touch and a voltage beside it are live metal, where somebody wrote that it can hurt; a rail on the front panel
    // is none.
    [Theory]
    [InlineData("230 V between chassis and earth", "safety", nameof(Trouble.LiveMetal))]
    [InlineData("110V AC on the case", "safety", nameof(Trouble.LiveMetal))]
    [InlineData("5 V lamp of the panel is dim", "major", nameof(Trouble.Other))]
    public void Volts_on_metal_that_can_hurt_are_live_metal(string what, string severity, string trouble) =>
        Assert.Equal(Enum.Parse<Trouble>(trouble), Of("chassis", what, severity));

    // A part that is spent is told by where it was seen: what is burnt at no part is a mark on the board.
    [Fact]
    public void What_is_burnt_where_no_part_sits_is_no_part() =>
        Assert.Equal(Trouble.Other, Of("board", "burnt beside the heatsink", "major"));

    // What is never little counts for what it is, and what the words deny was not seen.
    [Theory]
    [InlineData("C1", "leaking at its foot", "minor", ObservedSeverity.Major)]
    [InlineData("C1", "leaking at its foot", "note", ObservedSeverity.Major)]
    [InlineData("C1", "top bulged", "minor", ObservedSeverity.Major)]
    [InlineData("C1", "vented", "minor", ObservedSeverity.Major)]
    [InlineData("C1", "electrolyte under the can", "minor", ObservedSeverity.Major)]
    [InlineData("R1", "burnt in the middle", "minor", ObservedSeverity.Major)]
    [InlineData("BT1", "white crust at one end", "minor", ObservedSeverity.Major)]
    [InlineData("J3", "white crust at one end", "minor", ObservedSeverity.Minor)]
    [InlineData("J3", "crust of the cell on its legs", "note", ObservedSeverity.Major)]
    [InlineData("J3", "no crust of the cell on its legs", "note", ObservedSeverity.Note)]
    [InlineData("C5", "a little crazed", "minor", ObservedSeverity.Safety)]
    [InlineData("C5", "crazed", "major", ObservedSeverity.Safety)]
    [InlineData("C5", "body cracked", "note", ObservedSeverity.Safety)]
    [InlineData("C9", "X2 crazed", "minor", ObservedSeverity.Safety)]
    [InlineData("chassis", "the chassis is live", "minor", ObservedSeverity.Safety)]
    [InlineData("chassis", "a tingle from the case", "major", ObservedSeverity.Safety)]
    [InlineData("mains lead", "frayed at the plug", "minor", ObservedSeverity.Safety)]
    [InlineData("T1", "mains wire bare to the copper", "major", ObservedSeverity.Safety)]
    [InlineData("F1", "bridged", "note", ObservedSeverity.Safety)]
    [InlineData("F7", "foil around it", "minor", ObservedSeverity.Safety)]
    [InlineData("R1", "bridged by dust", "minor", ObservedSeverity.Minor)]
    [InlineData("chassis", "earth wire off", "minor", ObservedSeverity.Safety)]
    [InlineData("earth tag", "loose", "minor", ObservedSeverity.Safety)]
    [InlineData("earth tag", "not loose", "minor", ObservedSeverity.Minor)]
    [InlineData("T1", "smokes after a minute", "minor", ObservedSeverity.Major)]
    [InlineData("T1", "no smoke, no sparks", "note", ObservedSeverity.Note)]
    [InlineData("T1", "a pop, and then nothing", "note", ObservedSeverity.Major)]
    [InlineData("T1", "too hot to touch after an hour", "minor", ObservedSeverity.Major)]
    [InlineData("T1", "trips the breaker", "note", ObservedSeverity.Major)]
    [InlineData("supply", "blew the fuse at switch-on", "minor", ObservedSeverity.Major)]
    [InlineData("S1", "arc marks across it", "minor", ObservedSeverity.Major)]
    [InlineData("T1", "insulation of the tails is brittle", "minor", ObservedSeverity.Major)]
    [InlineData("C1", "hisses at 400 V", "minor", ObservedSeverity.Major)]
    [InlineData("C1", "seeping at the seam", "minor", ObservedSeverity.Major)]
    [InlineData("C1", "lid blown off", "note", ObservedSeverity.Major)]
    [InlineData("C1", "smells of fish", "note", ObservedSeverity.Major)]
    [InlineData("C1", "hot after ten minutes", "minor", ObservedSeverity.Major)]
    [InlineData("R1", "hot, as a dropper is", "note", ObservedSeverity.Note)]
    [InlineData("C1", "cold to the hand, never hot", "note", ObservedSeverity.Note)]
    [InlineData("C1", "fitted backwards", "minor", ObservedSeverity.Major)]
    [InlineData("C1", "print reversed, part the right way round", "note", ObservedSeverity.Note)]
    [InlineData("U3", "solder bridge between legs 3 and 4", "minor", ObservedSeverity.Major)]
    [InlineData("F1", "replaced with wire", "note", ObservedSeverity.Safety)]
    [InlineData("F1", "a nail in the clips", "minor", ObservedSeverity.Safety)]
    [InlineData("holder", "fuse shorted out", "minor", ObservedSeverity.Safety)]
    [InlineData("mains lead", "cut off short", "minor", ObservedSeverity.Safety)]
    [InlineData("mains tags", "cover missing", "minor", ObservedSeverity.Safety)]
    [InlineData("cord", "bare at the strain relief", "minor", ObservedSeverity.Safety)]
    [InlineData("dial cord", "perished", "minor", ObservedSeverity.Minor)]
    [InlineData("C5", "solid case, no crazing", "note", ObservedSeverity.Note)]
    [InlineData("C1", "dusty, not leaking", "minor", ObservedSeverity.Minor)]
    [InlineData("C1", "no sign that it ever leaked", "note", ObservedSeverity.Note)]
    [InlineData("chassis", "the chassis isn't live", "note", ObservedSeverity.Note)]
    [InlineData("C1", "leakage a little high", "minor", ObservedSeverity.Minor)]
    [InlineData("C5", "joint cracked at one leg", "minor", ObservedSeverity.Minor)]
    [InlineData("R1", "body darkened", "minor", ObservedSeverity.Minor)]
    [InlineData("R1", "paint crazed", "minor", ObservedSeverity.Minor)]
    [InlineData("U3", "no dust, burnt on top", "minor", ObservedSeverity.Major)]
    public void What_is_never_little_counts_for_what_it_is(string at, string what, string written, ObservedSeverity weight) =>
        Assert.Equal(weight, Found(at, what, written).Weight);

    private static Trouble Of(string at, string what, string severity) => Found(at, what, severity).Trouble;

    private static AnsweredFinding Found(string at, string what, string severity) =>
        Assert.Single(
            Worked
                .Board(
                    $"""
                    parts:
                      - {"{ ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF }"}
                      - {"{ ref: C5, kind: suppression capacitor, capacitance: 100 nF, safety_class: X2 }"}
                      - {"{ ref: BT1, kind: cell, material: nickel-cadmium }"}
                      - {"{ ref: Q2, kind: transistor }"}
                      - {"{ ref: R1, kind: carbon composition resistor, resistance: 100 kΩ }"}
                      - {"{ ref: F1, kind: fuse, current: 1 A }"}
                      - {"{ ref: U3, kind: integrated circuit }"}
                      - {"{ ref: S1, kind: switch }"}
                      - {"{ ref: RV1, kind: potentiometer, resistance: 10 kΩ }"}
                    bench:
                      - date: 2026-03-14
                        found:
                          - {"{"} at: {at}, what: "{what}", severity: {severity} {"}"}
                    """
                )
                .Findings
        );
}
