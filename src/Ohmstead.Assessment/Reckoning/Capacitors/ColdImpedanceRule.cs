using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>How much more a cold electrolytic may read.</summary>
internal static class ColdImpedanceRule
{
    private static readonly ReckonInput Rated = SharedInputs.RatedVoltage.Within(2m, LowTemperatureImpedance.Ratios[^1].RatedVolts);

    internal static ReckonRule Rule { get; } =
        new(
            "cold-impedance",
            "how many times its impedance at 20 degrees a new electrolytic may have in the cold",
            [Rated],
            "rated-voltage=25V",
            given =>
                LowTemperatureImpedance.Ratios.FirstOrDefault(row => row.RatedVolts >= given[Rated]) is { } row
                    ? Answers.All(
                        Row("impedance at -25 degrees over that at 20", row.AtMinus25, row.RatedVolts),
                        Row("impedance at -40 degrees over that at 20", row.AtMinus40, row.RatedVolts)
                    )
                    : Outcome<Reckoned>.Refused($"no ratio is known for {given.Text(Rated)}")
        )
        {
            Validity =
                "120 Hz, cans under 16 mm; between two columns the higher voltage is taken. Readings compare within 5 K of 20 degrees",
        };

    private static Outcome<ReckonedLine> Row(string what, decimal ratio, decimal volts) =>
        Outcome<ReckonedLine>.From(
            Answers.Figure(
                what,
                ratio,
                ShownAs.Plain,
                $"column of {Answers.Text(volts, Dimension.Voltage)}",
                LowTemperatureImpedance.Source
            )
        );
}
