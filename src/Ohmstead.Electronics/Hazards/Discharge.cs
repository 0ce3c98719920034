using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Hazards;

/// <summary>Letting a capacitor down through a resistor. Information only; see <see cref="SafetyNotice.Defer"/>.</summary>
/// <remarks>
/// The time supposes that the resistor is whole and connected. Usual practice is 1 to 20 kohm wire-wound of 5 to 25 W on an insulated
/// probe to 1 kV, many megohms above (<see cref="LettingDown"/>), never a screwdriver, and then a second check with a meter.
/// </remarks>
public static class Discharge
{
    private static readonly Source Exponential = Source.Practice("exponential discharge");

    /// <summary>The time to fall from one voltage to another, R C ln(V0 / Vs), in second.</summary>
    public static Outcome<Worked<double>> Seconds(double ohms, double farads, double fromVolts, double toVolts) =>
        Checked(farads, fromVolts, toVolts, Domain.Positive("resistance", ohms))
            .Compute(() =>
            {
                double seconds = ohms * farads * Math.Log(fromVolts / toVolts);
                string working =
                    $"{Rounded.Ohms(ohms)} x {Rounded.Farads(farads)} x ln({Figures.Text(fromVolts)} / {Figures.Text(toVolts)}) = "
                    + $"{Figures.Text(seconds, 5)} s";
                return new Worked<double>(seconds, working, Exponential) { Remarks = [SafetyNotice.Defer] };
            });

    /// <summary>The largest resistance that brings it down in a time, t / (C ln(V0 / Vs)), in ohm.</summary>
    public static Outcome<Worked<double>> LargestOhms(double seconds, double farads, double fromVolts, double toVolts) =>
        Checked(
                farads,
                fromVolts,
                toVolts,
                Domain.Positive("time", seconds) ?? Domain.That(fromVolts > toVolts, "the start voltage is not above the end voltage")
            )
            .Compute(() =>
            {
                double ohms = seconds / (farads * Math.Log(fromVolts / toVolts));
                string working =
                    $"{Figures.Text(seconds)} s / ({Rounded.Farads(farads)} x ln({Figures.Text(fromVolts)} / {Figures.Text(toVolts)})) "
                    + $"= {Rounded.Ohms(ohms)}";
                return new Worked<double>(ohms, working, Exponential) { Remarks = [SafetyNotice.Defer] };
            });

    /// <summary>The power in the resistor at the first moment, V0² / R, in watt.</summary>
    public static Outcome<double> PeakWatts(double fromVolts, double ohms) =>
        Domain
            .Require(Domain.NotNegative("start voltage", fromVolts), Domain.Positive("resistance", ohms))
            .Compute(() => fromVolts * fromVolts / ohms);

    /// <summary>The current at the first moment, V0 / R, in ampere.</summary>
    public static Outcome<double> PeakAmperes(double fromVolts, double ohms) =>
        Domain.Require(Domain.NotNegative("start voltage", fromVolts), Domain.Positive("resistance", ohms)).Compute(() => fromVolts / ohms);

    /// <summary>The voltage left after a time, V0 exp(-t / (R C)), in volt.</summary>
    public static Outcome<double> VoltsLeft(double fromVolts, double seconds, double ohms, double farads) =>
        Domain
            .Require(
                Domain.NotNegative("start voltage", fromVolts),
                Domain.NotNegative("time", seconds),
                Domain.Positive("resistance", ohms),
                Domain.Positive("capacitance", farads)
            )
            .Compute(() => fromVolts * Math.Exp(-seconds / (ohms * farads)));

    private static Domain Checked(double farads, double fromVolts, double toVolts, string? other) =>
        Domain.Require(
            Domain.Within("capacitance", farads, 1e-15, 1e3),
            Domain.Positive("start voltage", fromVolts),
            Domain.Positive("end voltage", toVolts),
            Domain.That(
                toVolts <= fromVolts,
                $"the end voltage {Figures.Text(toVolts)} V is above the start voltage {Figures.Text(fromVolts)} V"
            ),
            other
        );
}
