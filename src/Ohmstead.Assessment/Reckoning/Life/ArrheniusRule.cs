using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Life;

/// <summary>The Arrhenius law beside the ten-kelvin rule.</summary>
internal static class ArrheniusRule
{
    private static readonly ReckonInput Energy = ReckonInput
        .Create("energy", Dimension.Number, "Ea, the activation energy in electronvolt")
        .Within(0m, 3m)
        .Optional();
    private static readonly ReckonInput Cooler = ReckonInput
        .Create("cooler", Dimension.Temperature, "T1, the cooler temperature")
        .Within(-80m, 300m);
    private static readonly ReckonInput Hotter = ReckonInput
        .Create("hotter", Dimension.Temperature, "T2, the hotter temperature")
        .Within(-80m, 300m);

    internal static ReckonRule Rule { get; } =
        new(
            "arrhenius",
            "how much faster ageing goes at the hotter of two temperatures, and the energy that doubles it between them",
            [Cooler, Hotter, Energy],
            "cooler=75C hotter=85C energy=0.94",
            given =>
                Answers.All([
                    .. given.Has(Energy)
                        ?
                        [
                            Answers.Line(
                                "acceleration",
                                Arrhenius.Acceleration(given.Double(Energy), given.Double(Cooler), given.Double(Hotter)),
                                ShownAs.Plain,
                                $"exp({given.Text(Energy)} eV / k x (1 / T1 - 1 / T2)), T in kelvin",
                                Law
                            ),
                        ]
                        : Array.Empty<Outcome<ReckonedLine>>(),
                    Answers.Line(
                        "energy that doubles the rate",
                        Arrhenius.EnergyForDoubling(given.Double(Cooler), given.Double(Hotter)),
                        "eV",
                        "k ln 2 / (1 / T1 - 1 / T2), T in kelvin",
                        Law
                    ),
                ])
        )
        {
            Formula = "exp((Ea / k)(1 / T1 - 1 / T2)), k = 8.617333262e-5 eV/K",
            Validity = "a fixed energy and the ten-kelvin rule must disagree away from one temperature: name the model",
        };

    private static Source Law => Answers.Practice("Arrhenius law");
}
