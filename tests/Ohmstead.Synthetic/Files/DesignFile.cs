using Ohmstead.Synthetic.Parts;
using Ohmstead.Synthetic.Text;

namespace Ohmstead.Synthetic.Files;

/// <summary>Writes the designs that some boards share.</summary>
public static class DesignFile
{
    /// <summary>The parts of a design, from 1.</summary>
    public static IReadOnlyList<SyntheticPart> Parts(CollectionPlan plan, int design) =>
        PartsList.Invent(SeededRandom.For(plan.Seed, 2, design));

    /// <summary>The test points that every board has.</summary>
    public static IReadOnlyList<FlowLine> Points() =>
        [
            new FlowLine().Add("point", "+15V").Add("nominal", "15 V").Add("tolerance", "5 %").Add("ripple_limit", "10 mV"),
            new FlowLine().Add("point", "+5V").Add("nominal", "5 V").Add("tolerance", "5 %").Add("ripple_limit", "20 mV"),
            new FlowLine().Add("point", "soak").Add("measures", "hours").Add("hours", "4"),
        ];

    /// <summary>The text of one design, from 1.</summary>
    public static string Write(CollectionPlan plan, int design)
    {
        var parts = Parts(plan, design);
        return new LineWriter()
            .Line("---")
            .Line($"design: {CollectionPlan.DesignId(design)}")
            .Line($"title: Servo amplifier, model {design}")
            .Line("maker: Tallis")
            .Line("made: 1978")
            .Line()
            .List(0, "parts", parts.Select(part => part.Line))
            .List(0, "points", Points())
            .List(
                0,
                "known_faults",
                [new FlowLine().Add("at", "C3").Add("what", "dries out beside the regulator").Add("advice", "measure ESR warm")]
            )
            .Line("---")
            .Line()
            .Line("## Notes")
            .Line()
            .Line("An invented design: one servo loop, two rails and an output stage.")
            .ToString();
    }
}
