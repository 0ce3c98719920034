using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Hazards;

/// <summary>Letting a charged capacitor down.</summary>
internal static class DischargeRule
{
    // From so many kilovolts on it is a picture tube that is meant.
    private const decimal TubeFrom = 5m;

    private static readonly ReckonInput From = ReckonInput
        .Create("from", Dimension.Voltage, "V0, the voltage it may be charged to")
        .Within(1m, 100_000m);
    private static readonly ReckonInput To = ReckonInput
        .Create("to", Dimension.Voltage, "Vs, the voltage to come down to")
        .Within(0.1m, 1000m)
        .Usually("60V");
    private static readonly ReckonInput Resistance = SharedInputs.Resistance.Optional();
    private static readonly ReckonInput Time = ReckonInput
        .Create("time", Dimension.Duration, "t, the time that is wanted, or that has gone by")
        .Within(0.001m, 100_000m * SharedInputs.Hour)
        .Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "discharge",
            "the time to let a capacitor down, what is left after a time, and what the resistor takes",
            [SharedInputs.Capacitance, From, To, Resistance, Time],
            "capacitance=470uF from=400V to=60V resistance=2k2",
            given => Work(given).WithCautions(given[From] > LettingDown.HighVolts * TubeFrom ? "picture-tube" : "stored-energy")
        )
        {
            Formula = "t = R C ln(V0 / Vs); V(t) = V0 exp(-t / (R C)); P0 = V0² / R; E = C V0² / 2",
            Validity =
                "resistance or time is needed; it supposes that the resistor is whole and connected: measure before and after. Count "
                + "with the highest capacitance that the marking allows: 705 µF for 470 µF -10/+50 %",
        };

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        var (farads, from, to) = (given.Double(SharedInputs.Capacitance), given.Double(From), given.Double(To));
        var lines = new List<Outcome<ReckonedLine>>(6);
        if (given.Has(Resistance) && LettingDown.Against(given[From], given[Resistance]) is { } flash)
        {
            return Outcome<Reckoned>.Refused(flash);
        }

        if (given.Has(Resistance))
        {
            var (ohms, text) = (given.Double(Resistance), given.Text(Resistance));
            lines.Add(Answers.Line($"time from {given.Text(From)} to {given.Text(To)}", Discharge.Seconds(ohms, farads, from, to), "s"));
            lines.Add(
                Answers.Line(
                    "power in the resistor at the first moment",
                    Discharge.PeakWatts(from, ohms),
                    Dimension.Power,
                    $"({given.Text(From)})² / {text}",
                    Ohm
                )
            );
            lines.Add(
                Answers.Line(
                    "current at the first moment",
                    Discharge.PeakAmperes(from, ohms),
                    Dimension.Current,
                    $"{given.Text(From)} / {text}",
                    Ohm
                )
            );
            if (given.Has(Time))
            {
                lines.Add(
                    Answers.Line(
                        $"voltage left after {given.Text(Time)}",
                        Discharge.VoltsLeft(from, given.Double(Time), ohms, farads),
                        Dimension.Voltage,
                        $"{given.Text(From)} x exp(-{given.Text(Time)} / ({text} x {given.Text(SharedInputs.Capacitance)}))",
                        Exponential
                    )
                );
            }
        }
        else if (given.Has(Time))
        {
            lines.Add(
                Answers.Line(
                    $"largest resistance for {given.Text(Time)}",
                    Discharge.LargestOhms(given.Double(Time), farads, from, to),
                    Dimension.Resistance
                )
            );
        }
        else
        {
            return Outcome<Reckoned>.Refused("discharge needs resistance or time");
        }

        lines.Add(Answers.Line("least resistance to use", LettingDown.LeastOhms(given[From]), Dimension.Resistance));
        lines.Add(
            Answers
                .Line(
                    "that may come back by itself, of an aluminium electrolytic",
                    StoredEnergy.RecoveredVolts(given[From]),
                    Dimension.Voltage
                )
                .Remarking(
                    $"most of it days later ({StoredEnergy.RecoveryTimeSource.Text}): measure again before each touch, keep a shorting "
                        + "link on it"
                )
        );
        lines.Add(
            StoredEnergy
                .Compute(given[SharedInputs.Capacitance], given[From])
                .Then(energy => Answers.Figure("stored energy", energy.Joules, Dimension.Energy, energy.Arithmetic, StoredEnergy.Source))
        );
        return Answers.All(lines);
    }

    private static Source Ohm => Answers.Practice("Ohm's law");

    private static Source Exponential => Answers.Practice("exponential discharge");
}
