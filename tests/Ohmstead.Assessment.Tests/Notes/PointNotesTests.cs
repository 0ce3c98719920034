using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Notes;

/// <summary>What follows for a supply from few figures.</summary>
public sealed class PointNotesTests
{
    private const string Supply = """
        parts:
          - { ref: C1, kind: aluminium electrolytic, capacitance: 4700 µF, tolerance: 20 %, rated_voltage: 16 V }
        points:
          - { point: raw, low: 8 V, high: 25 V, reservoir: C1, winding: 12 V }
          - { point: +5V, nominal: 5 V, rated_current: 2 A, input: raw }
          - { point: grid, nominal: 100 V, source_resistance: 470 kΩ }
        bench:
          - date: 2026-03-14
        """;

    // 3.2 V at 1 A and 100 Hz: 1 / (100 x 3.2) = 3125 µF, under 4700 - 20 % = 3760 µF. 1.9 V: 5263 µF proves nothing. By hand calculator.
    [Theory]
    [InlineData("3.2 V", "at most 3130 µF by its ripple, which proves it low")]
    [InlineData("1.9 V", "at most 5260 µF by its ripple, which proves nothing")]
    public void Ripple_beside_a_current_bounds_the_reservoir_from_above(string ripple, string says) =>
        Assert.Contains(
            says,
            OfProof($"point: raw, voltage: 14 V, ripple: {ripple}, current: 1 A, frequency: 100 Hz"),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("point: raw, voltage: 14 V, ripple: 3.2 V, current: 1 A")]
    [InlineData("point: raw, voltage: 14 V, ripple: 3.2 V, frequency: 100 Hz")]
    public void Without_the_current_or_the_frequency_of_the_ripple_nothing_is_said(string proof) => Assert.Empty(OfProof(proof));

    // 12.6 - 2.0 / 2 - 7.5 = 4.1 V; 8.0 - 2.4 / 2 - 7.5 = -0.7 V. Least input of a 5 V regulator 7.5 V: Texas Instruments LM340, SNOSBT0L.
    [Theory]
    [InlineData("12.6 V", "2.0 V", "the regulator has 4.10 V of headroom")]
    [InlineData("12.6 V", "2.0 V", "its output is in range")]
    [InlineData("8.0 V", "2.4 V", "lacks headroom by -700 mV")]
    public void The_headroom_of_a_regulator_is_counted_from_the_bottom_of_the_ripple(string input, string ripple, string says) =>
        Assert.Contains(
            says,
            OfProof("point: +5V, voltage: 5.01 V", $"point: raw, voltage: {input}, ripple: {ripple}"),
            StringComparison.Ordinal
        );

    // 4.6 V out of 12.6 V in: enough input for 5 V, so the regulator or its load is at fault. 4.6 V out of 6.5 V in: under the least of 7.5
    // V.
    [Theory]
    [InlineData("4.6 V", "12.6 V", "overload, or a faulty regulator")]
    [InlineData("4.6 V", "6.5 V", "no fault of the regulator is shown")]
    [InlineData("5.4 V", "12.6 V", "too high")]
    public void What_an_output_says_of_its_regulator_depends_on_the_input(string output, string input, string says) =>
        Assert.Contains(says, OfProof($"point: +5V, voltage: {output}", $"point: raw, voltage: {input}"), StringComparison.Ordinal);

    // 47 µF on a 5Y3, which may feed 20 µF: valve data books, from memory.
    [Fact]
    public void A_first_capacitor_too_large_for_its_rectifier_valve_is_told()
    {
        var board = Worked.Board(
            "parts:\n  - { ref: V1, kind: valve, type: 5Y3 }\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 47 µF, "
                + "rated_voltage: 450 V }\npoints:\n  - { point: raw, low: 200 V, reservoir: C1 }"
        );
        Assert.Contains(
            "47 µF on a 5Y3, which may feed 20 µF",
            Assert.Single(PointNotes.OfDesign(board, Assert.Single(board.Points))).Line,
            StringComparison.Ordinal
        );
    }

    // 20 kohm/V on 50 V is 1 Mohm: 1 / 1.47 = 0.680 of the voltage, so 68 V shown are 100 V.
    [Fact]
    public void A_moving_coil_meter_pulls_a_high_resistance_point_down()
    {
        var board = Worked.Board(
            Supply + "\n    readings:\n      - { point: grid, voltage: 68 V, method: 20 kΩ/V meter on its 50 V range }"
        );
        Assert.Contains(
            "68 % of the voltage that is there without it, 99.96 V",
            Assert.Single(PointNotes.Compute(board, Assert.Single(board.Readings))).Line,
            StringComparison.Ordinal
        );
    }

    // A fifth of 2 A is 0.4 A: 12.5 ohm and 2 W, a part of 5 W. Common practice.
    [Fact]
    public void A_rail_with_a_rated_current_is_given_a_load_to_test_with() =>
        Assert.Contains("5 V / 0.4 A = 12.5 Ω, 2 W, a part of 5 W", OfDesign("+5V"), StringComparison.Ordinal);

    // 1.414 x 12 x 1.2 x 1.1 = 22.4 V, above the 16 V of the can.
    [Fact]
    public void A_reservoir_that_the_peak_without_load_is_above_is_told() =>
        Assert.Contains("22.4 V, C1 is rated 16 V, which is less", OfDesign("raw"), StringComparison.Ordinal);

    private static string OfProof(params string[] proofs)
    {
        var board = Worked.Board(Supply + "\n    proof:" + string.Concat(proofs.Select(proof => $"\n      - {{ {proof} }}")));
        return string.Concat(PointNotes.Compute(board, board.Proofs[0]).Select(note => note.Line));
    }

    private static string OfDesign(string point)
    {
        var board = Worked.Board(Supply);
        return Assert.Single(PointNotes.OfDesign(board, board.Points.Single(known => known.Name.Value == point))).Line;
    }
}
