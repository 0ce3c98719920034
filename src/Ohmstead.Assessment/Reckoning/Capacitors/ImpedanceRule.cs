using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>The impedance of a real capacitor.</summary>
internal static class ImpedanceRule
{
    private static readonly ReckonInput Inductance = SharedInputs.Inductance.Usually("0H");

    internal static ReckonRule Rule { get; } =
        new(
            "impedance",
            "the impedance of a capacitor with its ESR and inductance",
            [SharedInputs.Capacitance, SharedInputs.Esr, SharedInputs.Frequency, Inductance],
            "capacitance=470uF esr=0.1ohm frequency=100kHz inductance=15nH",
            given =>
                Answers.All(
                    Answers.Line(
                        "impedance",
                        LossFactor.ImpedanceOhms(
                            given.Double(SharedInputs.Esr),
                            given.Double(SharedInputs.Frequency),
                            given.Double(SharedInputs.Capacitance),
                            given.Double(Inductance)
                        ),
                        Dimension.Resistance,
                        $"sqrt(({given.Text(SharedInputs.Esr)})² + "
                            + $"(2 pi x {given.Text(SharedInputs.Frequency)} x {given.Text(Inductance)} - 1 / (2 "
                            + $"pi x {given.Text(SharedInputs.Frequency)} x {given.Text(SharedInputs.Capacitance)}))²)",
                        Answers.Practice("impedances in series")
                    )
                )
        )
        {
            Formula = "Z = sqrt(ESR² + (2 pi f L - 1 / (2 pi f C))²)",
            Validity = "the ESR must be that of this frequency; radial electrolytics have some 13 to 18 nH",
        };
}
