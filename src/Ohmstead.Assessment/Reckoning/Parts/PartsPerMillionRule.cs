using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Parts;

/// <summary>How far a frequency is off.</summary>
internal static class PartsPerMillionRule
{
    // A tenth: beyond it nothing is told of a crystal.
    private const decimal MostPartsPerMillion = 100_000m;

    private static readonly ReckonInput Measured = ReckonInput.Create("measured", Dimension.Frequency, "f, as measured").Within(1m, 1e11m);
    private static readonly ReckonInput Nominal = ReckonInput.Create("nominal", Dimension.Frequency, "f0, as marked").Within(1m, 1e11m);

    internal static ReckonRule Rule { get; } =
        new(
            "ppm",
            "how far a crystal or clock is off in parts per million, and in seconds a day",
            [Measured, Nominal],
            "measured=3.5796MHz nominal=3.57954545MHz",
            given =>
                PartsPerMillion.Compute(given[Measured], given[Nominal]).Is(out var ppm, out var reason)
                    ? Math.Abs(ppm.Value) > MostPartsPerMillion
                        ? Outcome<Reckoned>.Refused(
                            $"{given.Text(Measured)} is another frequency than {given.Text(Nominal)} and no deviation of it: an "
                                + "overtone, a divider, a slip of the prefix"
                        )
                        : Answers.All([
                            Outcome<ReckonedLine>.From(Answers.Figure("deviation", ppm.Value, "ppm", ppm.Arithmetic, ppm.Source)),
                            Outcome<ReckonedLine>.From(
                                Answers.Figure(
                                    "a clock gains",
                                    PartsPerMillion.SecondsADay(ppm.Value),
                                    "s a day",
                                    $"{Answers.Text(ppm.Value, "ppm")} x 0.0864 s",
                                    Answers.Practice("86 400 seconds a day")
                                )
                            ),
                            .. CrystalLimit.All.Select(limit =>
                                Answers.Said(
                                    $"as {limit.Use}",
                                    limit.Holds(ppm.Value) ? "inside" : "outside",
                                    $"limit ±{Answers.Text(limit.PartsPerMillion, "ppm")}",
                                    CrystalLimit.Source
                                )
                            ),
                        ])
                    : Outcome<Reckoned>.Refused(reason)
        )
        {
            Formula = "(f - f0) / f0 x 10^6",
            Validity = "read at the crystal's load capacitance",
        };
}
