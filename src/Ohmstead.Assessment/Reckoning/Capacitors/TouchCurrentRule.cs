using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>The current of a Y capacitor into the chassis.</summary>
internal static class TouchCurrentRule
{
    private const decimal MilliPerUnit = 1000m;

    private static readonly ReckonInput Voltage = ReckonInput.Of("voltage", Dimension.Voltage, "V, the mains voltage r.m.s.");

    internal static ReckonRule Rule { get; } = new(
        "touch-current", "the current that a capacitor between mains and chassis sends into the chassis",
        [Given.Capacitance, Voltage, Given.Mains],
        "capacitance=4.7nF voltage=250V mains=50Hz",
        given => Answers.All(SafetyCapacitor.TouchMilliamperes(given[Given.Capacitance], given[Voltage], given[Given.Mains])
                .Then(worked => Answers.Figure("current into the chassis", worked.Value / MilliPerUnit, Dimension.Current, worked.Arithmetic, worked.Source) with { Remarks = worked.Remarks }))
            .WithCaution("limits run from 0.25 to 3.5 mA by class of equipment (from memory); keep the capacitance at or below the original"))
    {
        Formula = "I = 2 pi f C V",
    };
}
