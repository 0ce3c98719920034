using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>The leakage that an electrolytic may have.</summary>
internal static class LeakageLimitRule
{
    private const decimal MicroPerUnit = 1_000_000m;

    private static readonly ReckonInput Capacitance = SharedInputs.Capacitance.Within(1e-8m, 0.5m);
    private static readonly ReckonInput Rated = SharedInputs.RatedVoltage.Within(1m, SurgeVoltage.HighestRatedVolts);

    internal static ReckonRule Rule { get; } =
        new(
            "leakage-limit",
            "the largest leakage current by each rule of data sheets that holds for the rated voltage",
            [Capacitance, Rated],
            "capacitance=100uF rated-voltage=25V",
            given =>
                Answers.Any([
                    .. LeakageRules.All.Select(rule =>
                        rule.LimitMicroAmperes(given[Capacitance], given[Rated])
                            .Then(limit =>
                                Answers.Figure(
                                    $"{rule.Name}",
                                    limit.Value / MicroPerUnit,
                                    Dimension.Current,
                                    limit.Arithmetic,
                                    limit.Source
                                ) with
                                {
                                    Remarks = limit.Remarks,
                                }
                            )
                    ),
                ])
        )
        {
            Formula = "a share of C (in µF) x U (in V), in µA, with a floor or a constant",
            Validity =
                "at rated voltage and 20 degrees, read at the minute named; a part stored for long is formed again first; the rules "
                + "differ by ten at high voltage, the part's own data sheet comes first",
        };
}
