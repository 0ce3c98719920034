using Ohmstead.Electronics.Life;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Life;

/// <summary>The ripple current behind a ripple voltage.</summary>
internal static class RippleFromVoltageRule
{
    private static readonly ReckonInput Ripple = ReckonInput.Of("ripple", Dimension.Voltage, "the ripple voltage, peak to peak");

    internal static ReckonRule Rule { get; } = new(
        "ripple-from-voltage", "the ripple current that a measured ripple voltage drives through a capacitor",
        [Ripple, Given.Frequency, Given.Capacitance],
        "ripple=2V frequency=100Hz capacitance=1000uF",
        given => Answers.All(Answers.Line("ripple current, r.m.s.", RippleHeating.FromVoltage(given.Double(Ripple), given.Double(Given.Frequency), given.Double(Given.Capacitance)), Dimension.Current)))
    {
        Formula = "I = 2 pi f C Vpp / (2 sqrt 3)",
        Validity = "a triangle without its harmonics: short charging pulses can be half as much again",
    };
}
