using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Life;

/// <summary>The life of an electrolytic by every form known.</summary>
internal static class LifeRule
{
    private static readonly ReckonInput Ambient = ReckonInput
        .Create("temperature", Dimension.Temperature, "Ta, the temperature around the part")
        .Within(0m, 150m);
    private static readonly ReckonInput RatedRise = ReckonInput
        .Kelvin("rated-rise", "dT0, the core's rise at rated ripple")
        .Within(0m, 39m)
        .Usually("5K");
    private static readonly ReckonInput Ripple = ReckonInput
        .Create("ripple", Dimension.Ratio, "I/I0, the share of the rated ripple current")
        .Within(0m, 5m)
        .Optional();
    private static readonly ReckonInput Voltage = ReckonInput
        .Create("voltage", Dimension.Ratio, "U/Ur, the share of the rated voltage")
        .Within(0.1m, 1m)
        .Optional();
    private static readonly ReckonInput Exponent = ReckonInput
        .Create("exponent", Dimension.Number, "n of a voltage factor (Ur/U)^n, from the maker")
        .Within(0m, 12m)
        .Optional();
    private static readonly ReckonInput Case = ReckonInput
        .Create("case", Dimension.Temperature, "Tc, the temperature of the can")
        .Within(0m, 150m)
        .Optional();
    private static readonly ReckonInput Core = ReckonInput
        .Create("core", Dimension.Temperature, "the temperature of the core")
        .Within(0m, 150m)
        .Optional();
    private static readonly ReckonInput RatedCore = ReckonInput
        .Create("rated-core", Dimension.Temperature, "the core's temperature that the rated life holds at")
        .Within(40m, 150m)
        .Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "life",
            "how long a wet aluminium electrolytic is expected to stay within its limits, by each form that the inputs allow",
            [SharedInputs.RatedLife, SharedInputs.RatedTemperature, Ambient, RatedRise, Ripple, Voltage, Exponent, Case, Core, RatedCore],
            "rated-life=2000h rated-temperature=105C temperature=65C ripple=0.5 rated-rise=5K",
            Work
        )
        {
            Formula = "L = L0 2^((T0 - T) / 10), and makers' forms with ripple, voltage, case and core",
            Validity = "an estimate, not a promise: makers' forms disagree by several times; between 40 degrees and the rated temperature",
        };

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        var (hours, rated, ambient) = (
            given.Hours(SharedInputs.RatedLife),
            given.Double(SharedInputs.RatedTemperature),
            given.Double(Ambient)
        );
        if (ambient > rated)
        {
            return Outcome<Reckoned>.Refused(
                $"temperature: {given.Text(Ambient)} is above the rated {given.Text(SharedInputs.RatedTemperature)}, "
                    + "outside what the part is "
                    + "made for"
            );
        }

        var (rise, ripple, voltage) = (given.Double(RatedRise), given.Double(Ripple), given.Double(Voltage));
        var lines = new List<Outcome<ReckonedLine>> { Line(TenKelvinRule.Hours(hours, rated, ambient)) };
        if (given.Has(Ripple))
        {
            lines.Add(Line(MakersLifeForms.RippleForm(hours, rated, ambient, rise, ripple)));
        }

        if (given.Has(Ripple) && given.Has(Voltage))
        {
            lines.Add(Line(MakersLifeForms.ThreeFactorForm(hours, rated, ambient, rise, ripple, voltage)));
        }

        if (given.Has(Voltage))
        {
            lines.Add(Line(MakersLifeForms.LinearVoltageForm(hours, rated, ambient, voltage)));
        }

        if (given.Has(Voltage) && given.Has(Exponent))
        {
            lines.Add(
                Answers.Line(
                    "voltage factor",
                    MakersLifeForms.VoltageFactor(voltage, given.Double(Exponent)),
                    ShownAs.Plain,
                    $"(1 / {given.Text(Voltage)})^{given.Text(Exponent)}",
                    Answers.Practice("general form of makers' voltage factors")
                )
            );
        }

        if (given.Has(Case))
        {
            lines.Add(Line(MakersLifeForms.CaseForm(hours, rated, given.Double(Case))));
        }

        if (given.Has(Core) && given.Has(RatedCore) && given.Has(Voltage))
        {
            lines.Add(Line(MakersLifeForms.CoreForm(hours, given.Double(RatedCore), given.Double(Core), voltage)));
        }

        return Answers.All(lines);
    }

    private static Outcome<ReckonedLine> Line(Outcome<LifeEstimate> estimate) =>
        estimate.Then(life => LifeLines.Line($"life, {life.Model}", life));
}
