using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>How much more a warm electrolytic leaks.</summary>
internal static class WarmLeakageRule
{
    private static readonly ReckonInput Temperature = ReckonInput
        .Create("temperature", Dimension.Temperature, "the temperature it was read at, 20 to 85 degrees")
        .Within(20m, 85m);
    private static readonly ReckonInput Leakage = ReckonInput
        .Create("leakage", Dimension.Current, "what was read")
        .Within(0m, 1m)
        .Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "warm-leakage",
            "how much more a wet aluminium electrolytic leaks when it is warm, and what it would leak at 20 degrees",
            [Temperature, Leakage],
            "temperature=40C leakage=43uA",
            given =>
                Answers.All([
                    Answers.Line(
                        "at least so many times as at 20 degrees",
                        LeakageTemperature.LeastFactor(given[Temperature]),
                        ShownAs.Plain
                    ),
                    Answers.Line(
                        "at most so many times as at 20 degrees",
                        LeakageTemperature.GreatestFactor(given[Temperature]),
                        ShownAs.Plain
                    ),
                    .. given.Has(Leakage)
                        ?
                        [
                            At20("at 20 degrees at most", given, LeakageTemperature.LeastFactor(given[Temperature])),
                            At20("at 20 degrees at least", given, LeakageTemperature.GreatestFactor(given[Temperature])),
                        ]
                        : Array.Empty<Outcome<ReckonedLine>>(),
                ])
        )
        {
            Formula = "1 to 2 and 1 to 3 times from 20 to 60 degrees, on to 5 and 10 times at 85, by the same share for every kelvin",
            Validity = "the spread of makers; read again at 20 degrees before you judge",
        };

    private static Outcome<ReckonedLine> At20(string what, GivenInputs given, Outcome<Worked<decimal>> factor) =>
        factor.Then(known =>
            Answers.Figure(
                what,
                given[Leakage] / known.Value,
                Dimension.Current,
                $"{given.Text(Leakage)} / {Answers.Text(known.Value, ShownAs.Plain)}",
                known.Source
            )
        );
}
