using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>From the series picture of a meter to the parallel one and back.</summary>
internal static class SeriesParallelRule
{
    private static readonly ReckonInput Series = ReckonInput
        .Create("series", Dimension.Capacitance, "Cs, the reading in the series picture")
        .Within(1e-14m, 1m)
        .Optional();
    private static readonly ReckonInput Parallel = ReckonInput
        .Create("parallel", Dimension.Capacitance, "Cp, the reading in the parallel picture")
        .Within(1e-14m, 1m)
        .Optional();
    private static readonly ReckonInput Esr = SharedInputs.Esr.Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "series-parallel",
            "what a meter set to the other picture shows, series for parallel or parallel for series",
            [SharedInputs.TanDelta, Series, Parallel, Esr],
            "series=100uF tan-delta=0.5",
            Work
        )
        {
            Formula = "Cp = Cs / (1 + D²); Cs = Cp (1 + D²); Rp = ESR (1 + 1/D²)",
            Validity = "one of series, parallel and esr is needed; all at one frequency. The pictures differ by a hundredth at D = 0.1",
        };

    private static Source Handbook => new("Agilent Impedance Measurement Handbook", "pages 1-11 and 1-12", SourceBasis.Published);

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        var (d, text) = (given[SharedInputs.TanDelta], given.Text(SharedInputs.TanDelta));
        var lines = new List<Outcome<ReckonedLine>>(3);
        if (given.Has(Series))
        {
            lines.Add(
                Answers.Line(
                    "parallel capacitance",
                    LossFactor.ParallelFarads(given[Series], d),
                    Dimension.Capacitance,
                    $"{given.Text(Series)} / (1 + {text}²)",
                    Handbook
                )
            );
        }

        if (given.Has(Parallel))
        {
            lines.Add(
                Answers.Line(
                    "series capacitance",
                    LossFactor.SeriesFarads(given[Parallel], d),
                    Dimension.Capacitance,
                    $"{given.Text(Parallel)} x (1 + {text}²)",
                    Handbook
                )
            );
        }

        if (given.Has(Esr))
        {
            lines.Add(
                Answers.Line(
                    "parallel resistance",
                    LossFactor.ParallelOhms(given[Esr], d),
                    Dimension.Resistance,
                    $"{given.Text(Esr)} x (1 + 1 / {text}²)",
                    Handbook
                )
            );
        }

        return lines.Count > 0
            ? Answers.All(lines)
            : Outcome<Reckoned>.Refused("series-parallel needs series or parallel or esr beside tan-delta");
    }
}
