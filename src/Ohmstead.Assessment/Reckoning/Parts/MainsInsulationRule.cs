using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Parts;

/// <summary>What a reading of mains insulation is worth.</summary>
internal static class MainsInsulationRule
{
    private static readonly ReckonInput Read = ReckonInput
        .Create("read", Dimension.Resistance, "what the insulation meter showed at 500 V d.c.")
        .Within(0m, 1e14m);

    internal static ReckonRule Rule { get; } =
        new(
            "mains-insulation",
            "which requirements for the insulation between mains and what can be touched a reading meets",
            [Read],
            "read=5M",
            given =>
                Answers
                    .All([
                        .. MainsInsulation.All.Select(known =>
                            Answers.Said(
                                known.Equipment,
                                $"at least {Answers.Text(known.Ohms, Dimension.Resistance)}: {given.Text(Read)} is "
                                    + $"{(known.Holds(given[Read]) ? "inside" : "outside")}",
                                string.Empty,
                                known.Source
                            )
                        ),
                    ])
                    .WithCautions(
                        "mains",
                        "a pass by one requirement is a fail by another: say by which; a flash test is not for equipment in use"
                    )
        )
        {
            Validity =
                "500 V d.c. for 5 s, line and neutral joined, to earth or the case; a mains filter or a surge part fails it without "
                + "fault: electronics are tested at 250 V d.c. or by touch current instead",
        };
}
