using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>Voltages of solid tantalum.</summary>
internal static class TantalumDeratingRule
{
    // No solid tantalum is rated higher.
    private const decimal MostRatedVolts = 125m;

    private static readonly ReckonInput Rail = ReckonInput
        .Create("rail", Dimension.Voltage, "the voltage of the rail it sits on")
        .Within(0.5m, MostRatedVolts / 2m)
        .Optional();
    private static readonly ReckonInput Rated = SharedInputs.RatedVoltage.Within(1m, MostRatedVolts).Optional();
    private static readonly ReckonInput Temperature = ReckonInput
        .Create("temperature", Dimension.Temperature, "the temperature of the part")
        .Within(-55m, 125m)
        .Usually("85C");

    internal static ReckonRule Rule { get; } =
        new(
            "tantalum-derating",
            "the rated voltage to ask for on a rail, and what a solid tantalum bears at a temperature",
            [Rail, Rated, Temperature],
            "rail=12V rated-voltage=25V temperature=105C",
            Work
        )
        {
            Formula = "least rated = rail / 0.5; allowed = Ur to 85 degrees, falling to 2/3 Ur at 125",
            Validity =
                "solid tantalum with manganese dioxide; rail or rated-voltage is needed. They fail short at power-up, whatever their "
                + "capacitance says",
        };

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        var lines = new List<Outcome<ReckonedLine>>(3);
        if (given.Has(Rail))
        {
            lines.Add(Answers.Line("least rated voltage for the rail", Tantalum.LeastRatedVolts(given[Rail]), Dimension.Voltage));
        }

        if (given.Has(Rated))
        {
            lines.Add(
                Answers.Line("allowed at the temperature", Tantalum.CategoryVolts(given[Rated], given[Temperature]), Dimension.Voltage)
            );
            lines.Add(Answers.Line("reverse voltage borne", Tantalum.ReverseVolts(given[Rated], given[Temperature]), Dimension.Voltage));
        }

        return lines.Count > 0 ? Answers.All(lines) : Outcome<Reckoned>.Refused("tantalum-derating needs rail or rated-voltage");
    }
}
