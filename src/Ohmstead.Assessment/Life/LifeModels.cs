using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;

namespace Ohmstead.Assessment.Life;

/// <summary>The shortest and the longest life that the models give which a record has the data for.</summary>
/// <remarks>
/// The ten-kelvin rule always applies; it takes no credit for lower ripple or voltage. Makers' forms that do are asked where the record has
/// the data, and can only lengthen the longer estimate, or shorten both where the ripple is above its rating. The air is taken as known to
/// 5 K and the rise at rated ripple as 5 K: common practice, makers state 3.5 to 10 K.
/// </remarks>
internal static class LifeModels
{
    /// <summary>How well the temperature of the air is known, in kelvin either way.</summary>
    internal const double SpreadKelvin = 5;

    /// <summary>The rise of the core at rated ripple, in kelvin.</summary>
    internal const double RatedRiseKelvin = 5;

    /// <summary>The two estimates, or why there are none.</summary>
    /// <param name="ratedHours">The rated life.</param>
    /// <param name="ratedCelsius">The temperature it holds at.</param>
    /// <param name="phases">The temperatures of use.</param>
    /// <param name="rippleShare">Ripple current over its rating, or null when it is not known.</param>
    /// <param name="voltageShare">Working over rated voltage, or null when it is not known.</param>
    internal static Outcome<(LifeEstimate Shortest, LifeEstimate Longest)> Estimate(
        double ratedHours,
        double ratedCelsius,
        IReadOnlyList<DutyPhase> phases,
        double? rippleShare,
        double? voltageShare
    )
    {
        var part = new Stress(ratedHours, ratedCelsius, rippleShare, voltageShare is > 0 and <= 1 ? voltageShare : null);
        if (
            !At(part, phases, SpreadKelvin).Is(out var hot, out var reason) || !At(part, phases, -SpreadKelvin).Is(out var cool, out reason)
        )
        {
            return Outcome<(LifeEstimate, LifeEstimate)>.Refused(reason);
        }

        return Outcome<(LifeEstimate, LifeEstimate)>.From(
            (hot.MinBy(life => life.ComputedHours)!, cool.MaxBy(life => life.ComputedHours)!)
        );
    }

    private static Outcome<List<LifeEstimate>> At(Stress part, IReadOnlyList<DutyPhase> phases, double warmer)
    {
        var bare =
            phases.Count == 1
                ? TenKelvinRule.Hours(part.RatedHours, part.RatedCelsius, phases[0].Celsius + warmer)
                : TenKelvinRule.MixedDuty(
                    part.RatedHours,
                    part.RatedCelsius,
                    [.. phases.Select(phase => phase with { Celsius = phase.Celsius + warmer })]
                );
        if (!bare.Is(out var rule, out var reason))
        {
            return Outcome<List<LifeEstimate>>.Refused(reason);
        }

        // Makers' forms are for one temperature; a mix of several has the rule alone.
        if (phases.Count != 1)
        {
            return Outcome<List<LifeEstimate>>.From([rule]);
        }

        var celsius = phases[0].Celsius + warmer;
        var estimates = new List<LifeEstimate>(3);
        if (part.RippleShare is not > 1)
        {
            estimates.Add(rule);
        }

        if (part.RippleShare is { } ripple)
        {
            if (
                !MakersLifeForms
                    .RippleForm(part.RatedHours, part.RatedCelsius, celsius, RatedRiseKelvin, ripple)
                    .Is(out var warmed, out reason)
            )
            {
                return Outcome<List<LifeEstimate>>.Refused(reason);
            }

            estimates.Add(warmed);
            Add(
                estimates,
                part.VoltageShare is { } share
                    ? MakersLifeForms.ThreeFactorForm(part.RatedHours, part.RatedCelsius, celsius, RatedRiseKelvin, ripple, share)
                    : default
            );
        }
        else
        {
            Add(
                estimates,
                part.VoltageShare is { } share
                    ? MakersLifeForms.LinearVoltageForm(part.RatedHours, part.RatedCelsius, celsius, share)
                    : default
            );
        }

        return Outcome<List<LifeEstimate>>.From(estimates);
    }

    private static void Add(List<LifeEstimate> estimates, Outcome<LifeEstimate> form)
    {
        if (form.Is(out var life, out _))
        {
            estimates.Add(life);
        }
    }

    private readonly record struct Stress(double RatedHours, double RatedCelsius, double? RippleShare, double? VoltageShare);
}
