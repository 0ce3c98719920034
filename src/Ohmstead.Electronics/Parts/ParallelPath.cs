using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Parts;

/// <summary>Resistances side by side.</summary>
public static class ParallelPath
{
    /// <summary>What two resistances in parallel read, R1 R2 / (R1 + R2), in ohm.</summary>
    public static Outcome<Worked<decimal>> Ohms(decimal firstOhms, decimal secondOhms) =>
        Domain
            .Require(Domain.Positive("first resistance", firstOhms), Domain.Positive("second resistance", secondOhms))
            .Compute(() =>
            {
                decimal ohms = 1m / ((1m / firstOhms) + (1m / secondOhms));
                return new Worked<decimal>(
                    ohms,
                    $"{Rounded.Ohms(firstOhms)} || {Rounded.Ohms(secondOhms)} = {Rounded.Ohms(ohms)}",
                    InCircuitRule.Source
                );
            });

    /// <summary>What lies in parallel when a part of a known value reads less, in ohm; refused when it does not read less.</summary>
    public static Outcome<Worked<decimal>> RestOhms(decimal partOhms, decimal readOhms) =>
        Domain
            .Require(
                Domain.Positive("reading", readOhms),
                Domain.Positive("part", partOhms),
                Domain.That(
                    readOhms < partOhms,
                    $"the reading {Rounded.Ohms(readOhms)} is not below the part's {Rounded.Ohms(partOhms)}: nothing lies in parallel"
                )
            )
            .Compute(() =>
            {
                decimal ohms = 1m / ((1m / readOhms) - (1m / partOhms));
                return new Worked<decimal>(
                    ohms,
                    $"1 / (1 / {Rounded.Ohms(readOhms)} - 1 / {Rounded.Ohms(partOhms)}) = {Rounded.Ohms(ohms)}",
                    InCircuitRule.Source
                );
            });
}
