namespace Ohmstead.Electronics.Life;

/// <summary>Life doubles for every ten kelvin less, L = L0 2^((T0 - T)/10), and its use for mixed duty.</summary>
/// <remarks>
/// T0 and T must be of the same kind: ambient with rated ripple, or core with core. The rule fits at 70 to 90 degrees, departs below 60
/// and above 105, and makers do not stand behind it below 40. No credit is taken for lower voltage or ripple.
/// </remarks>
public static class TenKelvinRule
{
    /// <summary>The model's name.</summary>
    public const string Model = "ten-kelvin rule";

    /// <summary>Where it comes from.</summary>
    public static Source Source { get; } =
        Source.Published("Rubycon, life of aluminium electrolytic capacitors, technical note", "5-1; technote 4 for its range");

    /// <summary>The life at a temperature.</summary>
    /// <param name="ratedHours">The data sheet's hours at the rated temperature.</param>
    /// <param name="ratedCelsius">The rated temperature.</param>
    /// <param name="celsius">The temperature of use.</param>
    public static Outcome<LifeEstimate> Hours(double ratedHours, double ratedCelsius, double celsius) =>
        Checked(ratedHours, ratedCelsius, celsius)
            .Compute(() =>
            {
                double hours = ratedHours * Factor(ratedCelsius, celsius);
                var working = new LazyText(() =>
                    $"{Figures.Text(ratedHours)} h x 2^(({Figures.Text(ratedCelsius)} - {Figures.Text(celsius)}) / 10) = "
                    + $"{Figures.Text(hours, 7)} h"
                );
                return new LifeEstimate(hours, Model, working, Source) { Remarks = [.. Remarks(ratedCelsius, celsius)] };
            });

    /// <summary>The temperature at which a life follows from the rated one, T0 - 10 log2(L / L0), in degrees Celsius.</summary>
    public static Outcome<double> EquivalentCelsius(double ratedHours, double ratedCelsius, double hours) =>
        Domain
            .Require(
                Domain.Positive("rated life", ratedHours),
                Domain.Positive("life", hours),
                Domain.Finite("rated temperature", ratedCelsius)
            )
            .Compute(() => ratedCelsius - (10 * Math.Log2(hours / ratedHours)));

    /// <summary>The life under a daily or yearly mix of temperatures, 1/L = sum(f_i / L_i), f_i the share of time at each.</summary>
    public static Outcome<LifeEstimate> MixedDuty(double ratedHours, double ratedCelsius, IReadOnlyList<DutyPhase> phases)
    {
        double total = phases.Sum(p => p.Hours);
        return Domain
            .Require(
                Faults(phases),
                Domain.Positive("rated life", ratedHours),
                Domain.Within("rated temperature", ratedCelsius, 40, 150),
                Domain.Positive("time over all phases", total)
            )
            .Compute(() =>
            {
                double hours = 1 / phases.Sum(p => p.Hours / total / (ratedHours * Factor(ratedCelsius, p.Celsius)));
                var working = new LazyText(() =>
                {
                    string terms = string.Join(
                        " + ",
                        phases.Select(p =>
                            $"{Figures.Text(p.Hours / total, 4)} / {Figures.Text(ratedHours * Factor(ratedCelsius, p.Celsius))} h"
                        )
                    );
                    return $"1 / ({terms}) = {Figures.Text(hours)} h";
                });
                return new LifeEstimate(hours, Model, working, Source)
                {
                    Remarks = [.. phases.SelectMany(p => Remarks(ratedCelsius, p.Celsius)).Distinct(StringComparer.Ordinal)],
                };
            });
    }

    /// <summary>Hours at other temperatures as hours at a reference one, sum h_i 2^((T_i - T_ref)/10).</summary>
    public static Outcome<double> EquivalentHours(IReadOnlyList<DutyPhase> phases, double referenceCelsius) =>
        Domain
            .Require(Faults(phases), Domain.Finite("reference temperature", referenceCelsius))
            .Compute(() => phases.Sum(p => p.Hours * Factor(p.Celsius, referenceCelsius)));

    internal static double Factor(double hotter, double cooler) => Math.Pow(2, (hotter - cooler) / 10);

    internal static IEnumerable<string> Remarks(double ratedCelsius, double celsius)
    {
        if (celsius > ratedCelsius)
        {
            yield return $"{Figures.Text(celsius)} degrees is above the rated {Figures.Text(ratedCelsius)}: outside what the part is "
                + "made for";
        }

        if (celsius < 40)
        {
            yield return $"{Figures.Text(celsius)} degrees is below 40, where makers do not stand behind the rule";
        }
        else if (celsius is < 60 or > 105)
        {
            yield return $"{Figures.Text(celsius)} degrees is outside 60 to 105, where the rule departs from measured lives";
        }
    }

    internal static string? Faults(IReadOnlyList<DutyPhase> phases) =>
        phases
            .Select(p => Domain.NotNegative("hours of a phase", p.Hours) ?? Domain.Within("temperature of a phase", p.Celsius, -60, 200))
            .FirstOrDefault(f => f is not null);

    private static Domain Checked(double ratedHours, double ratedCelsius, double celsius) =>
        Domain.Require(
            Domain.Positive("rated life", ratedHours),
            Domain.Within("rated temperature", ratedCelsius, 20, 150),
            Domain.Within("temperature", celsius, -60, 200)
        );
}

/// <summary>Some hours at a temperature.</summary>
/// <param name="Hours">How long.</param>
/// <param name="Celsius">At how many degrees Celsius.</param>
public sealed record DutyPhase(double Hours, double Celsius);
