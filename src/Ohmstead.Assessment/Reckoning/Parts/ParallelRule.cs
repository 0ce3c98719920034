using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Parts;

/// <summary>Resistances side by side.</summary>
internal static class ParallelRule
{
    private static readonly ReckonInput Second = ReckonInput
        .Create("beside", Dimension.Resistance, "R2, what lies in parallel")
        .Within(1e-6m, 1e15m)
        .Optional();
    private static readonly ReckonInput Read = ReckonInput
        .Create("read", Dimension.Resistance, "what was read in circuit")
        .Within(1e-6m, 1e15m)
        .Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "parallel",
            "what two resistances in parallel read, or what must lie beside a part that reads low in circuit",
            [SharedInputs.Resistance, Second, Read],
            "resistance=100k beside=47k",
            given =>
                given.Has(Second) || given.Has(Read)
                    ? Answers.All([
                        .. given.Has(Second)
                            ?
                            [
                                Answers.Line(
                                    "together",
                                    ParallelPath.Ohms(given[SharedInputs.Resistance], given[Second]),
                                    Dimension.Resistance
                                ),
                            ]
                            : Array.Empty<Outcome<ReckonedLine>>(),
                        .. given.Has(Read)
                            ?
                            [
                                Answers.Line(
                                    "what lies beside it",
                                    ParallelPath.RestOhms(given[SharedInputs.Resistance], given[Read]),
                                    Dimension.Resistance
                                ),
                            ]
                            : Array.Empty<Outcome<ReckonedLine>>(),
                    ])
                    : Outcome<Reckoned>.Refused("parallel needs beside or read")
        )
        {
            Formula = "R1 R2 / (R1 + R2); 1 / (1/read - 1/R)",
            Validity = "no junction conducts at the meter's voltage",
        };
}
