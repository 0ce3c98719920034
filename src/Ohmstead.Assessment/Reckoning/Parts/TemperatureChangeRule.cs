using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Parts;

/// <summary>What temperature does to a resistance.</summary>
internal static class TemperatureChangeRule
{
    private const decimal Million = 1_000_000m;

    private static readonly ReckonInput Coefficient = ReckonInput
        .Create("coefficient", Dimension.Ratio, "its temperature coefficient for each kelvin")
        .Within(-0.02m, 0.02m);
    private static readonly ReckonInput Rise = ReckonInput.Kelvin("rise", "how much warmer it gets").Within(-300m, 300m);

    internal static ReckonRule Rule { get; } =
        new(
            "temperature-change",
            "how much a resistance changes with temperature",
            [SharedInputs.Resistance, Coefficient, Rise],
            "resistance=100k coefficient=200ppm rise=40K",
            given =>
                Answers.All(
                    Answers.Line(
                        "change",
                        PartsPerMillion.TemperatureChangeOhms(given[SharedInputs.Resistance], given[Coefficient] * Million, given[Rise]),
                        Dimension.Resistance
                    )
                )
        )
        {
            Formula = "dR = R x coefficient x dT",
            Validity = "straight lines: no thermistor",
        };
}
