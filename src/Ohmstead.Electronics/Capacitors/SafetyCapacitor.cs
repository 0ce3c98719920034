using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Capacitors;

/// <summary>Rules of interference-suppression capacitors on the mains. None of them may be relaxed.</summary>
public static class SafetyCapacitor
{
    private const decimal OneMicrofarad = 0.000001m;

    // Above this nothing is made for suppression: a slip of units.
    private const decimal MostFarads = 0.0001m;

    private static readonly Source Impulse = Source.Published(
        "Johanson Dielectrics, Safety Certified Application Notes; Vishay VY1 and VY2 data sheets",
        "peak impulse voltage of X1, X2, Y1 and Y2"
    );
    private static readonly Source ImpulseListed = Source.Published(
        "IEC 60384-14, classes, as quoted in the classification tables of makers",
        "peak impulse voltage of Y4, and above 1 µF"
    );
    private static readonly Source Order = Source.Published(
        "IEC 60384-14, classes, as quoted in the tutorials of KEMET and Johanson Dielectrics on safety capacitors",
        "impulse and place of each class"
    );
    private static readonly Source Ranges = Source.Published(
        "IEC 60384-14, classes and their voltages, as makers quote them",
        "Y1 to 500 V, Y2 150 to 300 V, Y3 150 to 250 V, Y4 under 150 V"
    );
    private const decimal Y4EndsUnder = 150m;

    /// <summary>The peak impulse voltage of a class in kilovolt; X1 and X2 above 1 µF divided by sqrt(C / 1 µF). Refused for a Y above 1
    /// µF: the figures end there, and none is made.</summary>
    public static Outcome<Worked<double>> ImpulseKilovolts(SafetyClass safetyClass, decimal farads) =>
        Domain
            .Require(
                Domain.Positive("capacitance", farads),
                Domain.That(
                    farads <= MostFarads,
                    $"capacitance is {Rounded.Farads(farads)}, no suppression capacitor is above {Rounded.Farads(MostFarads)}"
                ),
                Domain.That(!safetyClass.IsBoth(), $"{safetyClass.Name()} are two classes, each with an impulse of its own: ask for one"),
                Domain.That(safetyClass.IsBoth() || BaseKilovolts(safetyClass) > 0, $"class {safetyClass} has no impulse test"),
                Domain.That(
                    !safetyClass.IsY() || farads <= OneMicrofarad,
                    $"capacitance is {Rounded.Farads(farads)}, the figure of class {safetyClass} holds to 1 µF and no "
                        + $"such part is made above it"
                )
            )
            .Compute(() =>
            {
                double volts = BaseKilovolts(safetyClass);
                bool reduced = farads > OneMicrofarad;
                double result = reduced ? volts / Math.Sqrt((double)(farads * 1_000_000m)) : volts;
                string working =
                    result < volts
                        ? $"{Figures.Text(volts)} kV / sqrt({Figures.Text(farads * 1_000_000m)}) = {Figures.Text(result, 4)} kV"
                        : $"{safetyClass} to 1 µF: {Figures.Text(volts)} kV";
                return new Worked<double>(result, working, reduced || safetyClass == SafetyClass.Y4 ? ImpulseListed : Impulse);
            });

    /// <summary>
    /// The highest a.c. voltage that a class is for, in volt r.m.s.; null where the class alone does not say. A Y4 ends under its figure,
    /// the others at theirs. Of a part with two classes it is that to earth, the lower one.
    /// </summary>
    public static decimal? HighestVolts(SafetyClass safetyClass) =>
        safetyClass.ToEarth() switch
        {
            SafetyClass.Y1 => 500m,
            SafetyClass.Y2 => 300m,
            SafetyClass.Y3 => 250m,
            SafetyClass.Y4 => Y4EndsUnder,
            _ => null,
        };

    /// <summary>
    /// Whether a class may stand where another stood, with the reason. A Y may replace an X of equal or lower impulse, never the
    /// reverse; a class is not taken above the voltages that it is for, and a Y4 is for places under 150 V alone; no part without a class
    /// may replace one with a class. A part with two classes stands where either may; in the place of one both are kept. The a.c. rating
    /// and the approvals must be kept as well.
    /// </summary>
    /// <param name="original">The class that the place asks for.</param>
    /// <param name="offered">The class of the part.</param>
    /// <param name="volts">The a.c. voltage of the place in volt r.m.s., or null when it is not known.</param>
    public static Worked<bool> MayReplace(SafetyClass original, SafetyClass offered, decimal? volts = null)
    {
        if (original.IsBoth())
        {
            Worked<bool> across = MayReplace(original.AcrossTheLine(), offered, volts),
                toEarth = MayReplace(original.ToEarth(), offered, volts);
            return !across.Value ? across
                : !toEarth.Value ? toEarth
                : new(true, $"{across.Arithmetic}; {toEarth.Arithmetic}", toEarth.Source);
        }

        if (offered.IsBoth() && original != SafetyClass.None)
        {
            Worked<bool> toEarth = MayReplace(original, offered.ToEarth(), volts);
            Worked<bool> chosen = toEarth.Value || original.IsY() ? toEarth : MayReplace(original, offered.AcrossTheLine(), volts);
            return new(chosen.Value, $"{offered.Name()}, {chosen.Arithmetic}", chosen.Source);
        }

        string names = $"{offered} for {original}";
        return (original, offered) switch
        {
            (SafetyClass.None, _) => new(true, "the place asks for no safety class", Order),
            (_, SafetyClass.None) => new(
                false,
                $"a part without a class never replaces {original.Name()}, however high its d.c. rating",
                Order
            ),
            _ when original.IsY() && !offered.IsY() => new(false, $"{names}: an X never replaces a Y", Order),
            _ when volts is { } place && EndsBelow(offered, place) => new(
                false,
                $"{names}: {offered} is for {Range(offered)}, the place has {Figures.Text(place)} V",
                Ranges
            ),
            _ when original == offered => new(true, $"{names}: the same class", Order),
            (_, SafetyClass.Y4) when volts is null => new(
                false,
                $"{names}: Y4 is for {Range(SafetyClass.Y4)}, and the voltage of the place is not written",
                Ranges
            ),
            _ when BaseKilovolts(offered) >= BaseKilovolts(original) => new(
                true,
                $"{names}: {Words(offered)} covers {Words(original)}",
                Order
            ),
            _ => new(false, $"{names}: {Words(offered)} is under {Words(original)}", Order),
        };
    }

    /// <summary>
    /// Whether a part may stand in a place of a class whose voltage is not written: only where it bears the highest voltage that there can
    /// be in such a place.
    /// </summary>
    /// <param name="original">The class that the place asks for.</param>
    /// <param name="offered">The class of the part.</param>
    /// <param name="ratedVolts">The rated a.c. voltage of the part in volt r.m.s., or null when it is not known.</param>
    public static Worked<bool> MayReplaceUnseen(SafetyClass original, SafetyClass offered, decimal? ratedVolts)
    {
        Worked<bool> may = MayReplace(original, offered);
        return !may.Value || original == SafetyClass.None ? may
            : HighestVolts(original) is { } highest && Bears(offered, ratedVolts) is { } borne && borne >= highest
                ? new(true, $"{Figures.Text(borne)} V, and no {original.Name()} place has more than {Figures.Text(highest)} V", Ranges)
            : new(false, "not for this place until its mains voltage is written", Ranges);
    }

    /// <summary>What a part of a class bears: its mark, and no more than the class is for.</summary>
    public static decimal? Bears(SafetyClass safetyClass, decimal? ratedVolts) =>
        ratedVolts is { } mark && HighestVolts(safetyClass) is { } highest ? Math.Min(mark, highest) : ratedVolts;

    /// <summary>The current a Y capacitor sends into the chassis, 2 pi f C V, in milliampere.</summary>
    /// <remarks>What it is held against is in <see cref="TouchCurrentLimit"/>. Keep the capacitance at or below the original.</remarks>
    public static Outcome<Worked<decimal>> TouchMilliamperes(decimal farads, decimal volts, decimal hertz) =>
        Domain
            .Require(Domain.Positive("capacitance", farads), Domain.Positive("voltage", volts), Domain.Positive("frequency", hertz))
            .Compute(() =>
            {
                decimal milliamperes = LossFactor.TwoPi * hertz * farads * volts * 1000m;
                string working =
                    $"2 pi x {Figures.Text(hertz)} Hz x {Rounded.Farads(farads)} x {Figures.Text(volts)} V = "
                    + $"{Figures.Text(milliamperes, 4)} mA";
                return new Worked<decimal>(milliamperes, working, Source.Practice("current through a capacitance"))
                {
                    Remarks = ["information only: limits depend on the equipment's class; defer to local codes and licensed practice"],
                };
            });

    private static bool EndsBelow(SafetyClass c, decimal volts) =>
        HighestVolts(c) is { } highest && (volts > highest || (c == SafetyClass.Y4 && volts == highest));

    private static string Range(SafetyClass c) =>
        c == SafetyClass.Y4 ? "places under 150 V" : $"places of up to {Figures.Text(HighestVolts(c) ?? 0m)} V";

    // X3 and Y3 have no impulse test: 0 ranks them lowest of their letter.
    private static double BaseKilovolts(SafetyClass c) =>
        c switch
        {
            SafetyClass.X1 => 4.0,
            SafetyClass.X2 => 2.5,
            SafetyClass.Y1 => 8.0,
            SafetyClass.Y2 => 5.0,
            SafetyClass.Y4 => 2.5,
            _ => 0,
        };

    private static string Words(SafetyClass c) =>
        BaseKilovolts(c) is > 0 and var kilovolts ? $"an impulse of {Figures.Text(kilovolts)} kV" : "no impulse test";
}
