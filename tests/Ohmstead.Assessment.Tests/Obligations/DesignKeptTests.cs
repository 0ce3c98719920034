using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>A board may not ask less than its design without a note that says why, and never of what people rely on not to be
/// hurt.</summary>
public sealed class DesignKeptTests
{
    private const string NextStep = "take it out, or say in its note why this board differs";
    private const string Part =
        "ref: C1, kind: aluminium electrolytic, role: reservoir, capacitance: 1000 µF, tolerance: 20 %, rated_voltage: 25 V, "
        + "working_voltage: 18 V, esr_limit: 0.5 Ω, high: 1500 µF";
    private const string Point = "point: +5V, nominal: 5 V, tolerance: 5 %, ripple_limit: 50 mV, reservoir: C1";
    private const string Y2 =
        "ref: C6, kind: suppression capacitor, role: mains suppression, capacitance: 2.2 nF, tolerance: 20 %, rated_voltage: 250 V, "
        + "safety_class: Y2";

    [Theory]
    [InlineData("rated_voltage: 25 V", "rated_voltage: 16 V", "rated voltage 16 V for 25 V")]
    [InlineData("tolerance: 20 %", "tolerance: 50 %", "tolerance 50 % for 20 %")]
    [InlineData("capacitance: 1000 µF", "capacitance: 470 µF", "capacitance 470 µF for 1000 µF")]
    [InlineData(", esr_limit: 0.5 Ω", "", "esr_limit not written for 0.5 Ω")]
    [InlineData("esr_limit: 0.5 Ω", "esr_limit: 5 Ω", "esr_limit 5 Ω for 0.5 Ω")]
    [InlineData("high: 1500 µF", "high: 1501 µF", "high 1501 µF for 1500 µF")]
    [InlineData("high: 1500 µF", "high: 1500 µF, low: 1 µF", "low 1 µF for none")]
    [InlineData("working_voltage: 18 V", "working_voltage: 5 V", "working voltage 5 V for 18 V")]
    [InlineData("aluminium electrolytic", "bipolar electrolytic", "bipolar electrolytic for aluminium electrolytic")]
    [InlineData("role: reservoir, ", "", "role not written for reservoir")]
    public void A_part_of_which_the_board_asks_less_is_told(string design, string board, string what) =>
        OfPart(Part.Replace(design, board, StringComparison.Ordinal))
            .Open("C1", BoardState.ProofDue, $"this board asks less of C1 than its design: {what}", NextStep);

    [Theory]
    [InlineData("rated_voltage: 25 V", "rated_voltage: 35 V")]
    [InlineData("tolerance: 20 %", "tolerance: 10 %")]
    [InlineData("esr_limit: 0.5 Ω", "esr_limit: 0.4 Ω")]
    [InlineData("high: 1500 µF", "high: 1499 µF")]
    [InlineData("working_voltage: 18 V", "working_voltage: 19 V")]
    [InlineData("ref: C1", "ref: C1")]
    public void A_part_of_which_it_asks_as_much_or_more_owes_nothing(string design, string board) =>
        OfPart(Part.Replace(design, board, StringComparison.Ordinal)).AsksNothing("C1");

    [Fact]
    public void A_note_says_why_it_differs() =>
        OfPart(Part.Replace("25 V", "16 V", StringComparison.Ordinal) + ", note: the early issue has the 9 V transformer")
            .Met(
                "C1",
                "this board asks less of C1 than its design: rated voltage 16 V for 25 V",
                "the early issue has the 9 V transformer",
                null,
                $"{{ {Part.Replace("25 V", "16 V", StringComparison.Ordinal)}, note: the early issue has the 9 V transformer }}"
            );

    [Theory]
    [InlineData("safety_class: Y2", "safety_class: X2", "safety class X2 for Y2")]
    [InlineData(", safety_class: Y2", "", "safety class not written for Y2")]
    [InlineData("rated_voltage: 250 V", "rated_voltage: 63 V", "rated voltage 63 V for 250 V")]
    [InlineData("suppression capacitor", "polyester film", "polyester film for suppression capacitor")]
    public void No_note_lowers_the_class_the_kind_or_the_rating_of_what_people_rely_on(string design, string board, string what) =>
        OfPart(Y2.Replace(design, board, StringComparison.Ordinal) + ", note: it was so when it came")
            .Open(
                "C6",
                BoardState.FaultStands,
                $"this board asks less of C6 than its design: {what}",
                "people rely on this part not to be hurt: ask what the design asks, or mend the design; defer to local codes and "
                    + "licensed practice"
            );

    // IEC 60384-14: Y1 stands where Y2 is asked.
    [Fact]
    public void A_higher_class_is_no_less() => OfPart(Y2.Replace("Y2", "Y1", StringComparison.Ordinal)).AsksNothing("C6");

    [Theory]
    [InlineData("tolerance: 5 %", "tolerance: 10 %", "tolerance 10 % for 5 %")]
    [InlineData("nominal: 5 V", "nominal: 4.5 V", "nominal 4.5 V for 5 V")]
    [InlineData("ripple_limit: 50 mV", "ripple_limit: 51 mV", "ripple_limit 51 mV for 50 mV")]
    [InlineData("ripple_limit: 50 mV, ", "", "ripple_limit not written for 50 mV")]
    [InlineData("reservoir: C1", "required: no, reservoir: C1", "it is not required")]
    [InlineData(", reservoir: C1", "", "reservoir not written for C1")]
    public void A_point_of_which_the_board_asks_less_is_told(string design, string board, string what) =>
        OfPoint(Point.Replace(design, board, StringComparison.Ordinal))
            .Open("+5V", BoardState.ProofDue, $"this board asks less of +5V than its design: {what}", NextStep);

    [Fact]
    public void A_point_measured_by_another_thing_asks_less() => Assert.True(OfPoint("point: +5V, measures: result").IsOpen("+5V"));

    [Fact]
    public void What_the_design_does_not_have_is_the_boards_own() => OfPart("ref: C99, kind: mica, capacitance: 100 pF").AsksNothing("C99");

    [Fact]
    public void A_board_without_a_design_keeps_none() =>
        new ObligedBoard("design-kept", $"parts:\n  - {{ {Part.Replace("25 V", "16 V", StringComparison.Ordinal)} }}").AsksNothing("C1");

    private static ObligedBoard OfPart(string own) =>
        new("design-kept", $"design: tide-logger\nparts:\n  - {{ {own} }}\nbench:\n  - date: 2026-03-14", design: Design);

    private static ObligedBoard OfPoint(string own) =>
        new("design-kept", $"design: tide-logger\npoints:\n  - {{ {own} }}\nbench:\n  - date: 2026-03-14", design: Design);

    private static string Design => $"parts:\n  - {{ {Part} }}\n  - {{ {Y2} }}\npoints:\n  - {{ {Point} }}";
}
