using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Boards;

/// <summary>Limits told before anything is measured are those that judge the reading afterwards.</summary>
public sealed class ToMeasureTests
{
    [Theory]
    [InlineData(
        "kind: aluminium electrolytic, capacitance: 2200 µF, tolerance: 20 %, rated_voltage: 25 V",
        "capacitance 1760 µF … 2640 µF"
    )]
    [InlineData("kind: metal film resistor, resistance: 4.7 kΩ, tolerance: 5 %", "resistance 4.465 kΩ … 4.935 kΩ")]
    [InlineData("kind: connector, type: edge", "")]
    public void A_part_asks_for_what_its_kind_is_judged_by(string part, string first)
    {
        var place = Of(part).Places[0];

        var expected = ToMeasure.At(place);

        Assert.Equal(
            first,
            expected.Count == 0
                ? string.Empty
                : $"{VerdictWords.Describe(expected[0].Measured)} {VerdictWords.Range(expected[0].Limit!.Interval)}"
        );
    }

    [Fact]
    public void A_rail_asks_for_its_voltage_and_its_ripple()
    {
        var expected = ToMeasure.At(Of("kind: connector, type: edge").Points[0]);

        Assert.Equal(
            ["voltage 4.75 V … 5.25 V", "ripple at most 50 mV"],
            expected.Select(one => $"{VerdictWords.Describe(one.Measured)} {VerdictWords.Range(one.Limit!.Interval)}")
        );
    }

    private static JudgedBoard Of(string part) =>
        Worked.Board(
            $$"""
            parts:
              - { ref: X1, {{part}} }
            points:
              - { point: +5V, nominal: 5 V, tolerance: 5 %, ripple_limit: 50 mV }
            """
        );
}
