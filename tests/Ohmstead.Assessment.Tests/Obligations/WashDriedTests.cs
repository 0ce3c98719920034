using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>
/// What was washed dries before power. Where no time is written, three days at room temperature are usual: common practice. Days are all a
/// record knows.
/// The run is on 2026-11-25.
/// </summary>
public sealed class WashDriedTests
{
    private const string Wash = "{ at: board, did: washed, with: deionised water }";

    [Fact]
    public void A_board_proved_after_it_was_dry_was_dry() =>
        Board("2026-03-14", Wash, "2026-03-17")
            .Met(
                "board",
                "washed on 2026-03-14, to dry for 72 h, the usual time at room temperature",
                "lamp proved: pass",
                "2026-03-17",
                "{ point: lamp, result: pass }"
            );

    // The method's own time counts where none is written: 72 h from the 14th end on the 17th. A day at the bench has twelve hours.
    [Theory]
    [InlineData(Wash, "2026-03-16", true)]
    [InlineData(Wash, "2026-03-17", false)]
    [InlineData("{ at: board, did: washed, with: deionised water, dry: 24 h }", "2026-03-14", true)]
    [InlineData("{ at: board, did: washed, with: deionised water, dry: 24 h }", "2026-03-15", false)]
    [InlineData("{ at: board, did: washed, with: deionised water, dry: 12 h }", "2026-03-14", false)]
    [InlineData("{ at: board, did: washed, with: deionised water, dry: 13 h }", "2026-03-14", true)]
    [InlineData("{ at: board, did: washed, with: deionised water, dry: 13 h }", "2026-03-15", false)]
    [InlineData("{ at: board, did: washed, with: deionised water, dry: 48 h }", "2026-03-15", true)]
    [InlineData("{ at: board, did: washed, with: deionised water, dry: 48 h }", "2026-03-16", false)]
    [InlineData("{ at: J3, did: cleaned, with: distilled water }", "2026-03-16", true)]
    [InlineData("{ at: J3, did: cleaned, with: distilled water }", "2026-03-17", false)]
    [InlineData("{ at: J3, did: cleaned, with: isopropyl alcohol }", "2026-03-15", false)]
    public void The_last_wet_day_is_too_early_and_the_next_is_not(string wash, string proved, bool isOpen) =>
        Assert.Equal(isOpen, Board("2026-03-14", wash, proved).IsOpen(wash.Contains("J3", StringComparison.Ordinal) ? "J3" : "board"));

    [Fact]
    public void Power_on_a_wet_board_is_told() =>
        Board("2026-03-14", Wash, "2026-03-15")
            .Open(
                "board",
                BoardState.ProofDue,
                "power was applied on 2026-03-15, but the wash of 2026-03-14 must dry for 72 h, the usual time at room temperature",
                "let it dry, look for what the wet did, and prove it again"
            );

    [Fact]
    public void A_proof_once_it_was_dry_answers_the_early_one() =>
        Board("2026-03-14", Wash, "2026-03-15", "2026-03-20")
            .Met("board", "washed on 2026-03-14, …", "lamp proved: pass", "2026-03-20", "{ point: lamp, result: pass }");

    [Fact]
    public void A_board_that_dries_today_gets_no_power_today() =>
        Board("2026-11-24", Wash)
            .Open("board", BoardState.ProofDue, "the wash of 2026-11-24 dries until 2026-11-27", "no power before 2026-11-27");

    [Theory]
    [InlineData("2026-11-22", false)]
    [InlineData("2026-11-23", true)]
    public void It_is_dry_on_the_third_day(string washed, bool isOpen) => Assert.Equal(isOpen, Board(washed, Wash).IsOpen("board"));

    [Fact]
    public void A_wash_that_dried_before_any_power_holds_nothing_back() =>
        Board("2026-03-14", Wash).DoesNotApply("board", "washed on 2026-03-14, and dry before any power");

    // Nothing that was washed is dry within the hour: such a time is not believed. Common practice.
    [Theory]
    [InlineData("1 h", "2026-03-15", false)]
    [InlineData("59 min", "2026-03-15", true)]
    public void A_drying_time_under_an_hour_is_not_believed(string dry, string proved, bool isOpen) =>
        Assert.Equal(
            isOpen,
            Board("2026-03-14", $"{{ at: board, did: washed, with: deionised water, dry: {dry} }}", proved).IsOpen("board")
        );

    [Theory]
    [InlineData("{ at: J3, did: cleaned, with: fibreglass pen }")]
    [InlineData("{ at: J3, did: cleaned }")]
    public void What_was_cleaned_without_anything_wet_need_not_dry(string work) =>
        Board("2026-03-14", work, "2026-03-14").AsksNothing("J3");

    private static ObligedBoard Board(string washed, string wash, params string[] proved) =>
        new(
            "wash-dried",
            $"points:\n  - {{ point: lamp, measures: result }}\nbench:\n  - date: {washed}\n    work:\n      - {wash}"
                + string.Concat(
                    proved.Select(day =>
                        day == washed
                            ? "\n    proof:\n      - { point: lamp, result: pass }"
                            : $"\n  - date: {day}\n    proof:\n      - {{ point: lamp, result: pass }}"
                    )
                )
        );
}
