using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>The dissipation factor that a wet aluminium electrolytic may have.</summary>
internal static class TanDeltaLimitRule
{
    private static readonly ReckonInput Capacitance = SharedInputs.Capacitance.Within(1e-8m, 0.1m);

    internal static ReckonRule Rule { get; } =
        new(
            "tan-delta-limit",
            "the largest dissipation factor and ESR of a new wet aluminium electrolytic, by each series of data sheets known",
            [Capacitance, SharedInputs.RatedVoltage],
            "capacitance=2200uF rated-voltage=16V",
            given =>
                Answers.Any([
                    .. LossFactorSeries.All.SelectMany(series => Lines(series, given[SharedInputs.RatedVoltage], given[Capacitance])),
                ])
        )
        {
            Formula = "the column of the rated voltage, and 0.02 for every 1000 µF above 1000 µF; ESR = D / (2 pi f C)",
            Validity = "new parts at 20 to 27 degrees; a worn part may usually reach twice that; the part's own data sheet comes first",
        };

    private static IEnumerable<Outcome<ReckonedLine>> Lines(LossFactorSeries series, decimal volts, decimal farads)
    {
        if (!series.Limit(volts, farads).Is(out var limit, out var reason))
        {
            yield return Outcome<ReckonedLine>.Refused(reason);
            yield break;
        }

        yield return Outcome<ReckonedLine>.From(
            Answers.Figure($"dissipation factor, {series.Name}", limit.CompletedSteps, ShownAs.Plain, limit.Arithmetic, limit.Source) with
            {
                Remarks = limit.ReadingsDiffer
                    ?
                    [
                        $"the words of the rule can be read up to {Answers.Text(limit.RoundedUp, ShownAs.Plain)}: a part between them "
                            + "is undecided",
                    ]
                    : [],
            }
        );
        yield return Answers.Line(
            $"ESR at {Answers.Text(series.Hertz, Dimension.Frequency)}",
            LossFactor.EsrLimit(limit.CompletedSteps, limit.Hertz, farads),
            Dimension.Resistance
        );
    }
}
