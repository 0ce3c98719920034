using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;

namespace Ohmstead.Assessment.Reckoning.Supplies;

/// <summary>Ripple on a reservoir.</summary>
internal static class RippleRule
{
    private static readonly ReckonInput Peak = ReckonInput
        .Create(
            "peak",
            Dimension.Voltage,
            "the peak of the winding (of half of it for a centre tap), to be told the waveform and to have the rule of thumb checked"
        )
        .Within(2m, 10_000m)
        .Optional();
    private static readonly ReckonInput Wanted = ReckonInput
        .Create("wanted", Dimension.Voltage, "a ripple, to be told the capacitance for it")
        .Within(0.0001m, 1000m)
        .Optional();
    private static readonly ReckonInput Capacitance = SharedInputs.Capacitance.Within(1e-9m, 1m).Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "ripple",
            "the ripple on a reservoir capacitor, by the rule of thumb and by its waveform, and the capacitance for a ripple",
            [SharedInputs.Current, Capacitance, SharedInputs.Mains, SharedInputs.Rectifier, Peak, Wanted],
            "current=1A capacitance=4700uF mains=50Hz rectifier=bridge peak=17V wanted=1V",
            Work
        )
        {
            Formula = "dV = I / (2 f C) full wave, I / (f C) half wave; r.m.s. dV / (2 sqrt 3)",
            Validity =
                "capacitance or wanted is needed; while the ripple is under a fifth of the voltage, which only peak can tell; the real "
                + "ripple is 70 to 90 % of the rule",
        };

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        var (amperes, mains, rectifier) = (given[SharedInputs.Current], given[SharedInputs.Mains], given.Kind(SharedInputs.Rectifier));
        var lines = new List<Outcome<ReckonedLine>>();
        if (given.Has(Wanted) && Beyond(given[Wanted], given) is { } wanted)
        {
            return Outcome<Reckoned>.Refused($"wanted: {wanted}");
        }

        if (given.Has(Capacitance))
        {
            lines.AddRange(RuleOfThumb(given));
        }

        if (given.Has(Capacitance) && given.Has(Peak))
        {
            lines.AddRange(Waveform(given));
        }

        if (given.Has(Wanted))
        {
            lines.Add(
                Answers.Line(
                    $"capacitance for {given.Text(Wanted)}",
                    ReservoirRipple.FaradsFor(given[Wanted], amperes, mains, rectifier),
                    Dimension.Capacitance
                )
            );
        }

        return lines.Count > 0 ? Answers.All(lines) : Outcome<Reckoned>.Refused("ripple needs capacitance or wanted");
    }

    private static IEnumerable<Outcome<ReckonedLine>> RuleOfThumb(GivenInputs given)
    {
        var rectifier = given.Kind(SharedInputs.Rectifier);
        var volts = ReservoirRipple.VoltsPeakToPeak(given[SharedInputs.Current], given[SharedInputs.Mains], given[Capacitance], rectifier);
        if (volts.Is(out var ripple, out _) && Beyond(ripple.Value, given) is { } beyond)
        {
            yield return Answers.Said("rule of thumb", $"does not hold: {beyond}", ripple.Arithmetic, ReservoirRipple.Source);
            yield break;
        }

        yield return Answers
            .Line("ripple, peak to peak, at most", volts, Dimension.Voltage)
            .Remarking(
                $"{Answers.Text(rectifier.PulsesPerCycle(), ShownAs.Plain)} charging pulses a cycle, "
                    + $"{Answers.Text(rectifier.DiodesInPath(), ShownAs.Plain)} diodes in the path",
                $"it holds while that is under a fifth of the voltage{(given.Has(Peak) ? string.Empty : ": give peak to have it checked")}"
            );
        yield return volts.Then(known =>
            Answers.Figure(
                "as r.m.s. of a sawtooth",
                (decimal)ReservoirRipple.SawtoothRms((double)known.Value),
                Dimension.Voltage,
                $"{Answers.Text(known.Value, Dimension.Voltage)} / (2 sqrt 3)",
                ReservoirRipple.Source
            )
        );
    }

    // A ripple of 100 V on 17 V is no ripple: without the peak nobody can say.
    private static string? Beyond(decimal ripple, GivenInputs given) =>
        given.Has(Peak) && ripple > ReservoirRipple.ValidShare * given[Peak]
            ? $"{Answers.Text(ripple, Dimension.Voltage)} is more than a fifth of {given.Text(Peak)}"
            : null;

    // The load is the resistance that draws the current at the peak less the diodes: the waveform's own mean is a little lower.
    private static IEnumerable<Outcome<ReckonedLine>> Waveform(GivenInputs given)
    {
        var rectifier = given.Kind(SharedInputs.Rectifier);
        var load =
            given.Double(SharedInputs.Current) > 0
                ? (given.Double(Peak) - (0.7 * rectifier.DiodesInPath())) / given.Double(SharedInputs.Current)
                : 0;
        var wave = ReservoirWaveform.Compute(
            given.Double(Peak),
            given.Double(SharedInputs.Mains),
            given.Double(Capacitance),
            load,
            rectifier
        );
        var how = $"computed step by step for a load of {Answers.Text((decimal)load, Dimension.Resistance)}";
        var source = Answers.Practice("stiff source, exponential diodes, winding resistance left out");
        yield return wave.Then(found =>
            Answers.Figure("ripple by the waveform", (decimal)found.RippleVolts, Dimension.Voltage, how, source)
        );
        yield return wave.Then(found =>
            Answers.Figure("mean voltage by the waveform", (decimal)found.MeanVolts, Dimension.Voltage, how, source)
        );
        yield return wave.Then(found =>
            Answers.Figure(
                "peak current in the diodes",
                (decimal)found.PeakAmperes,
                Dimension.Current,
                $"conducting for {Answers.Text((decimal)found.ConductionDegrees, "degrees")} of the cycle",
                source
            )
        );
    }
}
