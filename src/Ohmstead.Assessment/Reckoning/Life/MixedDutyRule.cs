using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Life;

/// <summary>Life under several temperatures.</summary>
internal static class MixedDutyRule
{
    private static readonly ReckonInput Phases = ReckonInput.List("phases", "hours at each temperature of a day or year: 8h@45C");

    internal static ReckonRule Rule { get; } =
        new(
            "mixed-duty",
            "the life of an electrolytic that runs at several temperatures in turn, and the one temperature that equals them",
            [SharedInputs.RatedLife, SharedInputs.RatedTemperature, Phases],
            "rated-life=1000h rated-temperature=105C phases=8h@45C,8h@55C,8h@65C",
            Work
        )
        {
            Formula = "1/L = sum(share of time / life at its temperature); T = T0 - 10 log2(L / L0)",
            Validity = "an estimate, not a promise; the ten-kelvin rule at each temperature",
        };

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        if (
            !Read(given.List(Phases)).Is(out var phases, out var reason)
            || !TenKelvinRule
                .MixedDuty(given.Hours(SharedInputs.RatedLife), given.Double(SharedInputs.RatedTemperature), phases)
                .Is(out var life, out reason)
        )
        {
            return Outcome<Reckoned>.Refused(reason);
        }

        var rated = given.Double(SharedInputs.RatedTemperature);
        return Answers.All(
            Outcome<ReckonedLine>.From(LifeLines.Line("life under the mix", life)),
            Answers.Line(
                "temperature that equals the mix",
                TenKelvinRule.EquivalentCelsius(given.Hours(SharedInputs.RatedLife), rated, life.ComputedHours),
                Dimension.Temperature,
                $"{given.Text(SharedInputs.RatedTemperature)} - 10 log2({Answers.Text((decimal)life.ComputedHours, "h")} / "
                    + $"{given.Text(SharedInputs.RatedLife)})",
                TenKelvinRule.Source
            ),
            Answers.Line(
                "hours of the mix as hours at the rated temperature",
                TenKelvinRule.EquivalentHours(phases, rated),
                "h",
                string.Join(
                    " + ",
                    phases.Select(phase =>
                        $"{Answers.Text((decimal)phase.Hours, "h")} x 2^(({Answers.Text((decimal)phase.Celsius, ShownAs.Plain)} - "
                        + $"{Answers.Text((decimal)rated, ShownAs.Plain)}) / 10)"
                    )
                ),
                TenKelvinRule.Source
            )
        );
    }

    private static Outcome<IReadOnlyList<DutyPhase>> Read(IReadOnlyList<string> entries)
    {
        var phases = new List<DutyPhase>(entries.Count);
        foreach (var entry in entries)
        {
            var at = entry.IndexOf('@', StringComparison.Ordinal);
            if (
                at >= 0
                && Answers.Parsed(entry[(at + 1)..], Dimension.Temperature).Is(out var outside, out _)
                && outside.Value is < 0m or > 150m
            )
            {
                return Outcome<IReadOnlyList<DutyPhase>>.Refused(
                    $"'{entry}' is outside what the rule is meant for, expected 0 °C to 150 °C"
                );
            }

            if (
                at < 0
                || !Answers.Parsed(entry[..at], Dimension.Duration).Is(out var time, out _)
                || !Answers.Parsed(entry[(at + 1)..], Dimension.Temperature).Is(out var celsius, out _)
            )
            {
                return Outcome<IReadOnlyList<DutyPhase>>.Refused($"'{entry}' is no time at a temperature, expected such as 8h@45C");
            }

            phases.Add(new DutyPhase((double)(time.Value / 3600m), (double)celsius.Value));
        }

        return Outcome<IReadOnlyList<DutyPhase>>.From(phases);
    }
}
