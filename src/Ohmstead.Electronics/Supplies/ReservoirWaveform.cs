namespace Ohmstead.Electronics.Supplies;

/// <summary>The voltage on a reservoir capacitor through one mains cycle in the steady state, computed step by step.</summary>
/// <remarks>
/// A stiff sine source, rectifying diodes with an exponential characteristic, a capacitor and a resistive load. Winding and diode
/// resistance are left out: they lower the voltage and lengthen conduction, so a real supply ripples a little less.
/// </remarks>
/// <param name="MaximumVolts">The highest voltage.</param>
/// <param name="MinimumVolts">The lowest voltage.</param>
/// <param name="MeanVolts">The mean voltage.</param>
/// <param name="ConductionDegrees">How long one charging pulse lasts, in degrees of the mains cycle, counted where the diodes carry more
/// than a hundredth of their peak.</param>
/// <param name="PeakAmperes">The highest diode current.</param>
public sealed record ReservoirWaveform(
    double MaximumVolts,
    double MinimumVolts,
    double MeanVolts,
    double ConductionDegrees,
    double PeakAmperes
)
{
    private const double ThermalVolts = 0.02585;
    private const int StepsPerPulse = 4000;
    private const int MostPulses = 2000;
    private const double Settled = 1e-7;

    /// <summary>The ripple in volt peak to peak.</summary>
    public double RippleVolts => MaximumVolts - MinimumVolts;

    /// <summary>Computes the waveform.</summary>
    /// <param name="peakVolts">Peak of the source (of half the winding for a centre tap).</param>
    /// <param name="mainsHertz">Mains frequency.</param>
    /// <param name="farads">Reservoir capacitance.</param>
    /// <param name="loadOhms">Load resistance.</param>
    /// <param name="rectifier">The kind of rectifier.</param>
    /// <param name="diodeVoltsAtOneAmpere">Forward drop of one diode at 1 A.</param>
    /// <returns>The waveform, or a refusal when an input cannot be or the steady state is not reached.</returns>
    public static Outcome<ReservoirWaveform> Compute(
        double peakVolts,
        double mainsHertz,
        double farads,
        double loadOhms,
        Rectifier rectifier,
        double diodeVoltsAtOneAmpere = 0.7
    ) =>
        Domain
            .Require(
                Domain.Within("peak voltage", peakVolts, 2, 10_000),
                Domain.Within("mains frequency", mainsHertz, 1, 100_000),
                Domain.Within("capacitance", farads, 1e-9, 10),
                Domain.Within("load resistance", loadOhms, 1e-3, 1e9),
                Domain.Within("diode drop at 1 A", diodeVoltsAtOneAmpere, 0.1, 1.5)
            )
            .Flatten(() => new Circuit(peakVolts, mainsHertz, farads, loadOhms, rectifier, diodeVoltsAtOneAmpere).SteadyState());

    private sealed class Circuit(double peak, double hertz, double farads, double ohms, Rectifier rectifier, double drop)
    {
        private readonly double pathThermal = ThermalVolts * rectifier.DiodesInPath();
        private readonly double saturation = Math.Exp(-drop / ThermalVolts);
        private readonly double step = 1 / (hertz * rectifier.PulsesPerCycle() * StepsPerPulse);

        internal Outcome<ReservoirWaveform> SteadyState()
        {
            double volts = peak - (drop * rectifier.DiodesInPath());
            for (int pulse = 0; pulse < MostPulses; pulse++)
            {
                (double end, ReservoirWaveform wave) = OnePulse(volts);
                if (Math.Abs(end - volts) < Settled * peak)
                {
                    return Outcome<ReservoirWaveform>.From(wave);
                }

                volts = end;
            }

            return Outcome<ReservoirWaveform>.Refused("the waveform does not settle: the time constant is too long for the mains period");
        }

        private (double End, ReservoirWaveform Wave) OnePulse(double start)
        {
            double volts = start,
                sum = 0,
                high = double.MinValue,
                low = double.MaxValue,
                peakCurrent = 0;
            double[] currents = new double[StepsPerPulse];
            for (int k = 0; k < StepsPerPulse; k++)
            {
                double angle = 2 * Math.PI * (k + 1) / (StepsPerPulse * (double)rectifier.PulsesPerCycle());
                double source = rectifier == Rectifier.HalfWave ? peak * Math.Sin(angle) : Math.Abs(peak * Math.Sin(angle));
                double next = Step(volts, source);
                currents[k] = (farads * (next - volts) / step) + (next / ohms);
                volts = next;
                (high, low, sum) = (Math.Max(high, volts), Math.Min(low, volts), sum + volts);
                peakCurrent = Math.Max(peakCurrent, currents[k]);
            }

            double degrees = 360.0 * currents.Count(i => i > peakCurrent / 100) / (StepsPerPulse * rectifier.PulsesPerCycle());
            return (volts, new ReservoirWaveform(high, low, sum / StepsPerPulse, degrees, peakCurrent));
        }

        // Backward Euler: C (v' - v)/h + v'/R = i(source - v'). The left side rises and the right side falls with v', so the one root
        // lies between the voltage without any diode current and the source; halving the range finds it whatever the exponential does.
        private double Step(double volts, double source)
        {
            double unfed = volts / (1 + (step / (ohms * farads)));
            if (source <= unfed)
            {
                return unfed;
            }

            double low = unfed,
                high = source;
            for (int i = 0; i < 60 && high - low > 1e-12 * peak; i++)
            {
                double middle = (low + high) / 2;
                double current = saturation * (Math.Exp(Math.Min((source - middle) / pathThermal, 300)) - 1);
                if ((farads * (middle - volts) / step) + (middle / ohms) < current)
                {
                    low = middle;
                }
                else
                {
                    high = middle;
                }
            }

            return (low + high) / 2;
        }
    }
}
