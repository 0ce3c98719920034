using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>What is left of a ceramic's capacitance.</summary>
internal static class AgeingRule
{
    private const double SecondsPerHour = 3600;

    private static readonly ReckonInput Ceramic = ReckonInput.Word(
        "ceramic",
        "its temperature code",
        [.. CeramicAgeing.Rates.Select(rate => rate.Ceramic)]
    );
    private static readonly ReckonInput Time = ReckonInput
        .Create("time", Dimension.Duration, "t, since it was last hot (soldering counts)")
        .Within(SharedInputs.Hour, 1_000_000m * SharedInputs.Hour);

    internal static ReckonRule Rule { get; } =
        new(
            "ageing",
            "the share of its one-hour capacitance that a class 2 ceramic has left",
            [Ceramic, Time],
            "ceramic=X7R time=30years",
            given =>
                CeramicAgeing.Rates.First(rate => rate.Ceramic == given.Text(Ceramic)) is var rate
                    ? Answers.All(
                        Answers
                            .Line("share left", CeramicAgeing.ShareLeft((double)rate.Usual, Hours(given)), ShownAs.Percent)
                            .Remarking(
                                $"makers' rates for {rate.Ceramic} run from {Answers.Text(rate.Low, ShownAs.Percent)} to "
                                    + $"{Answers.Text(rate.High, ShownAs.Percent)} a decade of hours"
                            ),
                        Answers.Line(
                            "share left, multiplicative form",
                            CeramicAgeing.ShareLeftMultiplicative((double)rate.Usual, Hours(given)),
                            ShownAs.Percent
                        )
                    )
                    : default
        )
        {
            Formula = "1 - k log10(t / 1 h); or (1 - k)^log10(t / 1 h)",
            Validity =
                "one hour or more; heat above the Curie point starts the clock again, wait 24 to 48 hours before you judge; class 1 "
                + "does not age",
        };

    private static double Hours(GivenInputs given) => given.Double(Time) / SecondsPerHour;
}
