using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>The impulse of a mains suppressor's class.</summary>
internal static class ImpulseRule
{
    private static readonly ReckonInput Class = ReckonInput.Word("class", "the safety class", "X1", "X2", "X3", "Y1", "Y2", "Y3", "Y4");

    private static readonly ReckonInput Capacitance = SharedInputs.Capacitance.Within(1e-12m, 1e-4m);

    internal static ReckonRule Rule { get; } =
        new(
            "impulse",
            "the peak impulse voltage that a class of mains capacitor is tested with",
            [Class, Capacitance],
            "class=X2 capacitance=2.2uF",
            given =>
                Enum.TryParse<SafetyClass>(given.Text(Class), out var known)
                    ? Answers
                        .All(Answers.Line("peak impulse voltage", SafetyCapacitor.ImpulseKilovolts(known, given[Capacitance]), "kV"))
                        .WithCaution("the class, the a.c. rating and the approvals of the original are kept, never relaxed")
                    : default
        )
        {
            Formula = "X1 4 kV, X2 2.5 kV, Y1 8 kV, Y2 5 kV, Y4 2.5 kV; X1 and X2 above 1 µF divided by sqrt(C / 1 µF)",
            Validity = "a class Y to 1 µF, above it no figure holds and no part is made",
        };
}
