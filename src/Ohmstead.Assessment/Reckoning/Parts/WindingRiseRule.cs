using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Parts;

/// <summary>How hot a winding got.</summary>
internal static class WindingRiseRule
{
    private static readonly ReckonInput Cold = ReckonInput.Create("cold", Dimension.Resistance, "R1, at the start").Within(1e-6m, 1e9m);
    private static readonly ReckonInput Hot = ReckonInput
        .Create("hot", Dimension.Resistance, "R2, at once after switching off")
        .Within(1e-6m, 1e9m);
    private static readonly ReckonInput Start = ReckonInput
        .Create("start", Dimension.Temperature, "T1, winding and room at the start")
        .Within(-40m, 100m)
        .Usually("20C");
    private static readonly ReckonInput Room = ReckonInput
        .Create("room", Dimension.Temperature, "T2, the room at the end")
        .Within(-40m, 100m)
        .Usually("20C");

    internal static ReckonRule Rule { get; } =
        new(
            "winding-rise",
            "how much hotter than the room a copper winding got, from its resistance cold and hot",
            [Cold, Hot, Start, Room],
            "cold=10.0ohm hot=12.0ohm start=20C room=22C",
            given =>
                Answers
                    .All(Answers.Line("rise", CopperRise.Kelvin(given[Cold], given[Hot], given[Start], given[Room]), "K"))
                    .WithCautions("mains")
        )
        {
            Formula = "(R2 - R1) / R1 (234.5 + T1) - (T2 - T1)",
            Validity = "copper; measured with the set unplugged and its capacitors let down",
        };
}
