using CsCheck;
using Ohmstead.Electronics.Parts;

namespace Ohmstead.Electronics.Tests.Parts;

public sealed class InCircuitRuleTests
{
    // 100 kohm || 47 kohm = 31.9728 kohm; drifted to 130 kohm 34.52 kohm; by hand calculator.
    [Theory]
    [Trait("CheckValue", "CV36")]
    [InlineData("100000", 31.9728)]
    [InlineData("130000", 34.52)]
    public void A_parallel_path_hides_a_drifted_resistor(string ohms, double kilohms) =>
        Assert.Equal(kilohms, (double)ParallelPath.Ohms(Exact.Of(ohms), 47_000m).Value.Value / 1000, kilohms < 32 ? 1e-4 : 5e-3);

    // True ESR of 3.0 ohm beside a capacitor of 0.2 ohm reads 0.1875 ohm.
    [Fact]
    public void A_good_neighbour_hides_a_bad_esr() => Assert.Equal(0.1875m, ParallelPath.Ohms(3.0m, 0.2m).Value.Value, 6);

    [Theory]
    [InlineData(InCircuitQuantity.Resistance, "5400", "4465", "4935", InCircuitFinding.ProvedBad)]
    [InlineData(InCircuitQuantity.Resistance, "31973", "90000", "110000", InCircuitFinding.NoEvidence)]
    [InlineData(InCircuitQuantity.Resistance, "4700", "4465", "4935", InCircuitFinding.Consistent)]
    [InlineData(InCircuitQuantity.Resistance, "4935", "4465", "4935", InCircuitFinding.Consistent)]
    [InlineData(InCircuitQuantity.Capacitance, "300", "376", "564", InCircuitFinding.Suspect)]
    [InlineData(InCircuitQuantity.Capacitance, "470", "376", "564", InCircuitFinding.Consistent)]
    [InlineData(InCircuitQuantity.Capacitance, "900", "376", "564", InCircuitFinding.NoEvidence)]
    [InlineData(InCircuitQuantity.Esr, "3", "0", "0.45", InCircuitFinding.NoEvidence)]
    [InlineData(InCircuitQuantity.LossFactor, "0.3", "0", "0.1", InCircuitFinding.NoEvidence)]
    [InlineData(InCircuitQuantity.Inductance, "12", "8", "11", InCircuitFinding.NoEvidence)]
    [InlineData(InCircuitQuantity.Esr, "0.1", "0", "0.45", InCircuitFinding.Consistent)]
    [InlineData(InCircuitQuantity.RailVoltage, "5.3", "4.75", "5.25", InCircuitFinding.ProvedBad)]
    [InlineData(InCircuitQuantity.RailVoltage, "5.0", "4.75", "5.25", InCircuitFinding.Proved)]
    [InlineData(InCircuitQuantity.Leakage, "5", "0", "25", InCircuitFinding.NoEvidence)]
    public void Each_quantity_proves_something_on_one_side_only(
        InCircuitQuantity quantity,
        string reading,
        string lower,
        string upper,
        InCircuitFinding expected
    ) => Assert.Equal(expected, InCircuitRule.For(quantity).Judge(Exact.Of(reading), Exact.Of(lower), Exact.Of(upper)).Value);

    [Fact]
    public void Every_quantity_has_a_rule() =>
        Assert.All(Enum.GetValues<InCircuitQuantity>(), q => Assert.Equal(q, InCircuitRule.For(q).Quantity));

    [Fact]
    public void A_parallel_path_never_raises_a_resistance() =>
        Gen.Select(Gen.Int[1, 10_000_000], Gen.Int[1, 10_000_000])
            .Sample((part, rest) => ParallelPath.Ohms(part, rest).Value.Value <= Math.Min(part, rest));

    [Fact]
    public void The_rest_of_the_circuit_follows_from_a_reading()
    {
        Assert.Equal(47_000, (double)ParallelPath.RestOhms(100_000m, 31_972.789m).Value.Value, 1.0);
        Assert.Equal(
            "the reading 5 kΩ is not below the part's 4.7 kΩ: nothing lies in parallel",
            ParallelPath.RestOhms(4_700m, 5_000m).Refusal
        );
    }
}
