using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;

namespace Ohmstead.Assessment.Reckoning.Supplies;

/// <summary>What keeps a choke-input supply down.</summary>
internal static class ChokeInputRule
{
    private static readonly ReckonInput Winding = ReckonInput
        .Create("winding", Dimension.Voltage, "the winding's voltage r.m.s., of one half")
        .Within(1m, 5000m)
        .Optional();
    private static readonly ReckonInput Inductance = SharedInputs.Inductance.Within(0.001m, 200m);
    private static readonly ReckonInput Mains = SharedInputs.Mains.Within(10m, 1000m);

    internal static ReckonRule Rule { get; } =
        new(
            "choke-input",
            "the largest load resistance, bleeder included, that keeps a choke-input supply from climbing",
            [Inductance, Mains, Winding],
            "inductance=10H mains=50Hz winding=300V",
            given =>
                Answers
                    .All([
                        Answers.Line(
                            "largest load resistance",
                            ChokeInput.LargestLoadOhms(given[Inductance], given[Mains]),
                            Dimension.Resistance
                        ),
                        .. given.Has(Winding)
                            ?
                            [
                                Output("output while the choke holds", given, ChokeInput.HeldShare),
                                Output("output without load", given, ChokeInput.UnloadedShare),
                            ]
                            : Array.Empty<Outcome<ReckonedLine>>(),
                    ])
                    .WithCautions("stored-energy")
        )
        {
            Formula = "R = 6 pi f L; output 0.90 Vrms held, 1.41 Vrms without load",
            Validity = "full wave",
        };

    private static Outcome<ReckonedLine> Output(string what, GivenInputs given, decimal share) =>
        Outcome<ReckonedLine>.From(
            Answers.Figure(
                what,
                given[Winding] * share,
                Dimension.Voltage,
                $"{ShownAs.Plain.Text(share)} x {given.Text(Winding)}",
                Answers.Practice("full-wave choke input")
            )
        );
}
