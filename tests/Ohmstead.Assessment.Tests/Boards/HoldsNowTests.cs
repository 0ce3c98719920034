using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Boards;

/// <summary>What is outside now, apart from what was outside before a part was replaced.</summary>
public sealed class HoldsNowTests
{
    private const string Parts =
        "parts:\n  - { ref: R1, kind: carbon film resistor, resistance: 47 kΩ, tolerance: ±5 % }\n"
        + "  - { ref: R2, kind: carbon film resistor, resistance: 47 kΩ, tolerance: ±5 % }\n"
        + "bench:\n";

    [Fact]
    public void A_resistor_that_reads_far_off_is_outside_now_and_the_other_was_never_read()
    {
        var now = Of("  - date: 2026-03-14\n    readings:\n      - { part: R1, circuit: out, resistance: 60 kΩ }");
        Assert.Equal(["R1"], now.Outside);
        Assert.Equal(["R2"], now.NeverRead);
        Assert.Equal(0, now.OutsideBefore);
        Assert.Equal("outside now: R1", now.Told);
        Assert.Null(now.ToldBefore);
    }

    [Fact]
    public void Once_it_is_replaced_and_the_new_one_reads_right_nothing_is_outside_now()
    {
        var now = Of(
            "  - date: 2026-03-14\n    readings:\n      - { part: R1, circuit: out, resistance: 60 kΩ }\n"
                + "    work:\n      - { part: R1, did: replaced, new_part: { kind: metal film resistor, resistance: 47 kΩ } }\n"
                + "  - date: 2026-03-15\n    readings:\n      - { part: R1, state: as left, circuit: out, resistance: 47 kΩ }"
        );
        Assert.Empty(now.Outside);
        Assert.Equal((1, 1), (now.Inside, now.OutsideBefore));
        Assert.Equal("nothing that sits in it now reads outside its limits", now.Told);
        Assert.Equal("1 earlier reading was outside: its part was replaced or read again since", now.ToldBefore);
    }

    [Fact]
    public void What_is_kept_by_a_decision_is_told_as_kept()
    {
        var now = Of(
            "  - date: 2026-03-14\n    readings:\n      - { part: R1, circuit: out, resistance: 60 kΩ }\n"
                + "    decided:\n      - { part: R1, decision: keep, because: the stage works as it is }"
        );
        Assert.Equal((0, "R1"), (now.Outside.Length, Assert.Single(now.Kept)));
        Assert.Equal("outside and kept by a decision: R1; nothing else is outside now", now.Told);
    }

    private static HoldsNow Of(string bench) => HoldsNow.Of(new ObligedBoard("reading-answered", Parts + bench).Board);
}
