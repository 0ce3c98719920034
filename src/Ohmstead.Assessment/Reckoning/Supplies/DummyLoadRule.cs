using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;

namespace Ohmstead.Assessment.Reckoning.Supplies;

/// <summary>A load to test a supply with.</summary>
internal static class DummyLoadRule
{
    private static readonly ReckonInput Rail = ReckonInput
        .Create("rail", Dimension.Voltage, "the rail, the one that the supply senses")
        .Within(-1000m, 1000m);
    private static readonly ReckonInput Rated = ReckonInput
        .Create("rated-current", Dimension.Current, "what the rail may deliver")
        .Within(0.001m, 500m);
    private static readonly ReckonInput Share = ReckonInput
        .Create("share", Dimension.Ratio, "the share of it to draw, 10 % at least")
        .Within(DummyLoad.LeastShare, 1m)
        .Usually("20%");

    internal static ReckonRule Rule { get; } =
        new(
            "dummy-load",
            "the resistor to test a supply with, its heat and the rating to ask for",
            [Rail, Rated, Share],
            "rail=5V rated-current=10A share=20%",
            given => DummyLoad.For(given[Rail], given[Rated], given[Share]).Then(Answer).WithCautions("hot-parts")
        )
        {
            Formula = "R = V / (share x I); a part of 2.5 times the heat",
        };

    private static Reckoned Answer(Worked<DummyLoad> load) =>
        new([
            Answers.Figure("resistor", load.Value.Ohms, Dimension.Resistance, load.Arithmetic, load.Source) with
            {
                Remarks = load.Remarks,
            },
            Answers.Figure("current", load.Value.Amperes, Dimension.Current, string.Empty, load.Source),
            Answers.Figure("heat", load.Value.Watts, Dimension.Power, string.Empty, load.Source),
            Answers.Figure("rating to ask for", load.Value.PartWatts, Dimension.Power, string.Empty, load.Source),
        ]);
}
