namespace Ohmstead.Electronics.Life;

/// <summary>The Arrhenius law beside the ten-kelvin rule: a fixed activation energy and the rule must disagree, so the model is always
/// named.</summary>
public static class Arrhenius
{
    /// <summary>Boltzmann's constant in electronvolt per kelvin (exact in the SI, here to ten figures).</summary>
    public const double BoltzmannElectronVolt = 8.617333262e-5;

    private const double ZeroCelsius = 273.15;

    /// <summary>How much faster it goes at the hotter of two temperatures, exp((Ea/k)(1/T1 - 1/T2)).</summary>
    public static Outcome<double> Acceleration(double electronVolts, double coolerCelsius, double hotterCelsius) =>
        Domain
            .Require(
                Domain.NotNegative("activation energy", electronVolts),
                Domain.Within("cooler temperature", coolerCelsius, -200, 1000),
                Domain.Within("hotter temperature", hotterCelsius, -200, 1000)
            )
            .Compute(() =>
                Math.Exp(
                    electronVolts / BoltzmannElectronVolt * ((1 / (coolerCelsius + ZeroCelsius)) - (1 / (hotterCelsius + ZeroCelsius)))
                )
            );

    /// <summary>The activation energy that doubles the rate between two temperatures, in electronvolt; it depends on where they
    /// lie.</summary>
    public static Outcome<double> EnergyForDoubling(double coolerCelsius, double hotterCelsius) =>
        Domain
            .Require(
                Domain.Within("cooler temperature", coolerCelsius, -200, 1000),
                Domain.Within("hotter temperature", hotterCelsius, -200, 1000),
                Domain.That(hotterCelsius > coolerCelsius, "the hotter temperature is not above the cooler one")
            )
            .Compute(() =>
                BoltzmannElectronVolt * Math.Log(2) / ((1 / (coolerCelsius + ZeroCelsius)) - (1 / (hotterCelsius + ZeroCelsius)))
            );
}
