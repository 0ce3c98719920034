using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>The insulation a dry capacitor must keep.</summary>
internal static class InsulationRule
{
    private static readonly ReckonInput Dielectric = ReckonInput.Word(
        "dielectric",
        "the dielectric, with spaces in quotes",
        [.. DielectricFigures.All.Select(known => known.Dielectric)]
    );

    private static readonly ReckonInput Capacitance = SharedInputs.Capacitance.Within(1e-13m, 0.001m);

    internal static ReckonRule Rule { get; } =
        new(
            "insulation",
            "the least insulation resistance of a film, paper, mica or ceramic capacitor, and its usual loss",
            [Dielectric, Capacitance],
            "dielectric=polyester capacitance=1uF",
            given =>
                DielectricFigures.All.First(known => known.Dielectric == given.Text(Dielectric)) is var figures
                    ? Answers.Any(
                        Answers
                            .Line("least insulation resistance", figures.LeastInsulationOhms(given[Capacitance]), Dimension.Resistance)
                            .Remarking(figures.Note),
                        figures.LossFor(given[Capacitance]) is { } loss
                            ? Outcome<ReckonedLine>.From(
                                Answers.Figure(
                                    $"largest dissipation factor at {Answers.Text(loss.Hertz, Dimension.Frequency)}",
                                    loss.Factor,
                                    ShownAs.Plain,
                                    loss.Arithmetic,
                                    figures.Source
                                )
                            )
                            : Outcome<ReckonedLine>.Refused("no dissipation factor is known for so small a value")
                    )
                    : default
        )
        {
            Formula = "R = (insulation product in s) / C, but not more than the figure in ohm for small values",
            Validity =
                "new parts at 20 degrees, after a minute at the test voltage (common practice); an old paper part is tested at its "
                + "working voltage",
        };
}
