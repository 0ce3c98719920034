using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>The current of a Y capacitor into the chassis.</summary>
internal static class TouchCurrentRule
{
    private const decimal MilliPerUnit = 1000m;

    private static readonly ReckonInput Capacitance = SharedInputs.Capacitance.Within(1e-13m, 1e-5m);
    private static readonly ReckonInput Voltage = ReckonInput
        .Create("voltage", Dimension.Voltage, "V, the mains voltage r.m.s.")
        .Within(1m, 1000m);
    private static readonly ReckonInput Mains = SharedInputs.Mains.Within(10m, 1000m);

    internal static ReckonRule Rule { get; } =
        new(
            "touch-current",
            "the current that a capacitor between mains and chassis sends into the chassis",
            [Capacitance, Voltage, Mains],
            "capacitance=4.7nF voltage=250V mains=50Hz",
            given => Work(given).WithCautions("mains", "keep the capacitance at or below the original, and its class")
        )
        {
            Formula = "I = 2 pi f C V",
            Validity = "one capacitor; what is between them and the chassis adds up. A limit that is not passed is no permission",
        };

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        var (farads, volts, hertz) = (given[Capacitance], given[Voltage], given[Mains]);
        var worst = TouchCurrentLimit.WorstMilliamperes(farads, volts, hertz);
        return Answers.All([
            Line("current into the chassis", SafetyCapacitor.TouchMilliamperes(farads, volts, hertz)),
            Line("with mains 10 % and the capacitance 20 % high", worst),
            .. worst.Is(out var known, out _) && TouchCurrentLimit.PassedBy(known.Value) is { Count: > 0 } passed
                ? passed.Select(limit =>
                    Answers.Said(
                        "that is above the limit for",
                        $"{limit.Equipment}, {Answers.Text(limit.Milliamperes, "mA")}",
                        Largest(limit, given),
                        TouchCurrentLimit.Source
                    )
                )
                : [],
        ]);
    }

    private static string Largest(TouchCurrentLimit limit, GivenInputs given) =>
        limit.LargestFarads(given[Voltage], given[Mains]).Is(out var most, out _)
            ? $"largest capacitance at {given.Text(Voltage)}: {most.Arithmetic}"
            : string.Empty;

    private static Outcome<ReckonedLine> Line(string what, Outcome<Worked<decimal>> milliamperes) =>
        milliamperes.Then(worked =>
            Answers.Figure(what, worked.Value / MilliPerUnit, Dimension.Current, worked.Arithmetic, worked.Source) with
            {
                Remarks = worked.Remarks,
            }
        );
}
