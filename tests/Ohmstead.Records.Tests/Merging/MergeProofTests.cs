using Ohmstead.Records.Merging;
using static Ohmstead.Records.Tests.Merging.Merges;

namespace Ohmstead.Records.Tests.Merging;

/// <summary>What would make a reading another's, lose an entry or bring a finding that neither side had, never passes.</summary>
public sealed class MergeProofTests
{
    private const string LastOfVisits = "      - { part: C1, did: removed, kept: bag 1 }";
    private const string OfRk =
        "  - date: 2026-11-20\n    by: RK\n    instrument: bridge-1\n    readings:\n      - { part: R1, resistance: 10 kΩ }\n";
    private const string OfMt =
        "  - date: 2026-11-21\n    by: MT\n    instrument: bridge-2\n    readings:\n      - { part: R2, resistance: 22 kΩ }\n";
    private static readonly string Both = Board.Behind(LastOfVisits, OfRk + OfMt);

    [Fact]
    public void What_both_entered_passes() => Assert.True(Proof().Holds((Both, null)));

    [Theory]
    [InlineData("2026-11-21", "2026-11-22")]
    [InlineData("by: MT", "by: TS")]
    [InlineData("instrument: bridge-2", "instrument: bridge-1")]
    [InlineData("    instrument: bridge-2\n", "")]
    [InlineData("by: MT\n", "by: MT\n    temperature: 21 °C\n")]
    [InlineData("22 kΩ", "2.2 kΩ")]
    [InlineData(
        "      - { part: R2, resistance: 22 kΩ }\n",
        "      - { part: R2, resistance: 22 kΩ }\n      - { part: R9, resistance: 1 kΩ }\n"
    )]
    [InlineData(
        "      - { part: C4, circuit: out, frequency: 120 Hz, capacitance: 34.4 µF }\n",
        "      - { part: C4, circuit: out, frequency: 120 Hz, capacitance: 34.5 µF }\n"
    )]
    [InlineData("title: Tide-gauge logger", "titel: Tide-gauge logger")]
    [InlineData("  - date: 2026-11-21\n    by: MT\n    instrument: bridge-2\n    readings:\n", "")]
    public void What_neither_said_does_not_pass(string old, string put) => Assert.False(Proof().Holds((Both.With(old, put), null)));

    [Fact]
    public void What_is_lost_does_not_pass_but_what_one_took_out_may_be_gone()
    {
        Assert.False(Proof().Holds((Board.Behind(LastOfVisits, OfRk), null)));
        Assert.False(Proof().Holds((Board, null)));
        const string taken = "      - { part: C4, circuit: out, frequency: 120 Hz, capacitance: 34.4 µF }\n";
        Assert.False(Proof().Holds((Both.With(taken, ""), null)));
        Assert.True(Proof(Board.With(taken, "").Behind(LastOfVisits, OfRk)).Holds((Both.With(taken, ""), null)));
    }

    [Fact]
    public void What_is_left_to_a_person_may_stand_in_one_of_two_texts()
    {
        var (one, other) = (Board.Behind(LastOfVisits, OfRk), Board.Behind(LastOfVisits, OfMt));
        Assert.True(Proof().Holds((one, null), (other, null)));
    }

    private static MergeProof Proof(string? one = null) =>
        new(
            File("board"),
            ReadRecord.Of(File("board"), Board),
            ReadRecord.Of(File("board"), one ?? Board.Behind(LastOfVisits, OfRk))!,
            ReadRecord.Of(File("board"), Board.Behind(LastOfVisits, OfMt))!
        );
}
