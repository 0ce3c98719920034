using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Life;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Life;

/// <summary>How hot it is inside a can.</summary>
internal static class CoreTemperatureRule
{
    private const double MillimetresPerMetre = 1000;

    private static readonly ReckonInput Ambient = ReckonInput
        .Create("ambient", Dimension.Temperature, "Ta, around the can")
        .Within(-55m, 150m);
    private static readonly ReckonInput Case = ReckonInput.Create("case", Dimension.Temperature, "Tc, on the can").Within(-55m, 150m);
    private static readonly ReckonInput Diameter = ReckonInput
        .Create("diameter", Dimension.Length, "the can's diameter, to 35 mm")
        .Within(0.001m, 0.035m);

    internal static ReckonRule Rule { get; } =
        new(
            "core-temperature",
            "the temperature inside a can, from the one on it and the one around it",
            [Ambient, Case, Diameter],
            "ambient=40C case=50C diameter=18mm",
            given =>
                Answers.All(
                    Answers.Line(
                        "core",
                        RippleHeating.CoreCelsius(given.Double(Ambient), given.Double(Case), given.Double(Diameter) * MillimetresPerMetre),
                        Dimension.Temperature
                    )
                )
        )
        {
            Formula = "T = Ta + alpha (Tc - Ta), alpha 1.0 to 8 mm, 1.1 to 12.5, 1.2 to 18, 1.3 to 22, 1.4 to 25, 1.5 to 30, 1.6 to 35",
        };
}
