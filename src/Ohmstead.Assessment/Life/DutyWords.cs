using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;

namespace Ohmstead.Assessment.Life;

/// <summary>How a board runs, in words: told of every part whose life is estimated, and written once for all parts of the board.</summary>
/// <param name="duty">How it runs.</param>
internal sealed class DutyWords(BoardDuty duty)
{
    private const double TenKelvin = 10;

    /// <summary>How it runs.</summary>
    internal BoardDuty Duty => duty;

    /// <summary>The hours and the air, and how they are taken.</summary>
    internal LazyText Taken { get; } =
        new(() =>
            string.Create(
                CultureInfo.InvariantCulture,
                $"{duty.HoursPerYear} h a year in air of {Air(duty)} ({duty.Origin}), taken {LifeModels.SpreadKelvin} K warmer for the "
                    + $"earliest date and cooler for the latest (common practice)"
            )
        );

    /// <summary>What the ten-kelvin rule means in that air by the law of Arrhenius, or null where the air is not always equally
    /// warm.</summary>
    internal LazyText? Doubling { get; } =
        duty.Phases is [{ Celsius: var air }] && Arrhenius.EnergyForDoubling(air, air + TenKelvin).Is(out var energy, out _)
            ? new(() =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"twice the life for ten kelvin less means {energy:0.00} eV between {air} and {air + TenKelvin} °C by the law of "
                        + $"Arrhenius; a law with one fixed energy would promise another life"
                )
            )
            : null;

    private static string Air(BoardDuty duty) =>
        duty.Phases is [var only]
            ? string.Create(CultureInfo.InvariantCulture, $"{only.Celsius} °C")
            : string.Join(
                ", ",
                duty.Phases.Select(phase => string.Create(CultureInfo.InvariantCulture, $"{phase.Celsius} °C for {phase.Hours} h"))
            );
}
