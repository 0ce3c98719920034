using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Parts;

/// <summary>Small relative deviations: crystals, clocks and temperature coefficients.</summary>
public static class PartsPerMillion
{
    private const decimal SecondsPerDayAndMillion = 0.0864m;

    /// <summary>How far a frequency is off, (f - f0)/f0 x 10^6.</summary>
    public static Outcome<Worked<decimal>> Compute(decimal measuredHertz, decimal nominalHertz) =>
        Domain
            .Require(Domain.Positive("measured frequency", measuredHertz), Domain.Positive("nominal frequency", nominalHertz))
            .Compute(() =>
            {
                decimal ppm = (measuredHertz - nominalHertz) / nominalHertz * 1_000_000m;
                string working =
                    $"({Figures.Text(measuredHertz, 10)} - {Figures.Text(nominalHertz, 10)}) / {Figures.Text(nominalHertz, 10)} x 10^6 "
                    + $"= {Figures.Text(ppm, 4)} ppm";
                return new Worked<decimal>(ppm, working, Source.Practice("relative deviation"));
            });

    /// <summary>How many seconds a day a clock gains (or, below zero, loses) for a deviation.</summary>
    public static decimal SecondsADay(decimal partsPerMillion) => partsPerMillion * SecondsPerDayAndMillion;

    /// <summary>The change of a resistance with temperature, R x ppm/K x kelvin, in ohm.</summary>
    public static Outcome<Worked<decimal>> TemperatureChangeOhms(decimal ohms, decimal partsPerMillionPerKelvin, decimal kelvin) =>
        Domain
            .Require(Domain.Positive("resistance", ohms))
            .Compute(() =>
            {
                decimal change = ohms * partsPerMillionPerKelvin * kelvin / 1_000_000m;
                string working =
                    $"{Rounded.Ohms(ohms)} x {Figures.Text(partsPerMillionPerKelvin)} ppm/K x {Figures.Text(kelvin)} K = "
                    + $"{Rounded.Ohms(change)}";
                return new Worked<decimal>(change, working, Source.Practice("definition of a temperature coefficient"));
            });

    /// <summary>How far the baud rate of a divided clock is off, as a fraction; two ends together must stay within about 2 %.</summary>
    public static Outcome<Worked<decimal>> BaudError(decimal clockHertz, decimal divisor, decimal oversampling, decimal baud) =>
        Domain
            .Require(
                Domain.Positive("clock", clockHertz),
                Domain.Positive("divisor", divisor),
                Domain.Positive("oversampling", oversampling),
                Domain.Positive("baud rate", baud)
            )
            .Compute(() =>
            {
                decimal real = clockHertz / divisor / oversampling;
                decimal error = (real - baud) / baud;
                string working =
                    $"{Figures.Text(clockHertz, 8)} / {Figures.Text(divisor)} / {Figures.Text(oversampling)} = {Figures.Text(real)} "
                    + $"against {Figures.Text(baud)}: {Figures.Percent(decimal.Round(error, 6))}";
                return new Worked<decimal>(error, working, Source.CommonPractice);
            });
}
