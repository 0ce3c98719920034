using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>What an aluminium electrolytic bears beyond its rated voltage.</summary>
internal static class SurgeRule
{
    internal static ReckonRule Rule { get; } =
        new(
            "surge",
            "the surge and the reverse voltage of an aluminium electrolytic",
            [SharedInputs.RatedVoltage],
            "rated-voltage=450V",
            given =>
                Answers.All(
                    Answers.Line("surge voltage", SurgeVoltage.Volts(given[SharedInputs.RatedVoltage]), Dimension.Voltage),
                    Answers.Line("reverse voltage", Outcome<Worked<decimal>>.From(SurgeVoltage.ReverseVolts), Dimension.Voltage)
                )
        )
        {
            Formula = "1.15 Ur to 100 V, 1.10 Ur above",
            Validity = "short surges, never continuous",
        };
}
