using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;

namespace Ohmstead.Assessment.Reckoning.Supplies;

/// <summary>What a reservoir must be rated for.</summary>
internal static class NoLoadPeakRule
{
    private static readonly ReckonInput Winding = ReckonInput
        .Create("winding", Dimension.Voltage, "the winding's voltage r.m.s. at full load")
        .Within(0.5m, 10_000m);
    private static readonly ReckonInput Regulation = ReckonInput
        .Create("regulation", Dimension.Ratio, "how far it rises without load")
        .Within(0m, 1m)
        .Usually("20%");
    private static readonly ReckonInput High = ReckonInput
        .Create("mains-high", Dimension.Ratio, "how far the mains may be high")
        .Within(0m, 0.5m)
        .Usually("10%");
    private static readonly ReckonInput Diodes = ReckonInput
        .Create("diodes", Dimension.Voltage, "the sum of the diode drops in the path")
        .Within(0m, 100m)
        .Usually("1.4V");

    internal static ReckonRule Rule { get; } =
        new(
            "no-load-peak",
            "the voltage that an unregulated reservoir climbs to without load and with high mains",
            [Winding, Regulation, High, Diodes],
            "winding=12V regulation=20% mains-high=10% diodes=1.4V",
            given =>
                Answers.All(
                    Answers.Line(
                        "no-load peak",
                        NoLoadPeak.Volts(given[Winding], given[Regulation], given[High], given[Diodes]),
                        Dimension.Voltage
                    )
                )
        )
        {
            Formula = "1.414 V (1 + regulation)(1 + mains) - diode drops",
            Validity = "the capacitor must be rated for it, not for the voltage under load",
        };
}
