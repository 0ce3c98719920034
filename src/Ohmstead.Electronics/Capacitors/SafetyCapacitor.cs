namespace Ohmstead.Electronics.Capacitors;

/// <summary>Rules of interference-suppression capacitors on the mains. None of them may be relaxed.</summary>
public static class SafetyCapacitor
{
    private const decimal OneMicrofarad = 0.000001m;

    // Above this nothing is made for suppression: a slip of units.
    private const decimal MostFarads = 0.0001m;

    private static readonly Source Impulse = Source.Published(
        "Johanson Dielectrics, Safety Certified Application Notes; Vishay VY1 and VY2 data sheets", "peak impulse voltage of X1, X2, Y1 and Y2");
    private static readonly Source ImpulseRemembered = Source.FromMemory("IEC 60384-14", "peak impulse voltage of Y4, and above 1 µF");
    private static readonly Source Order = Source.FromMemory("IEC 60384-14", "classes");

    /// <summary>The peak impulse voltage of a class in kilovolt; X1 and X2 above 1 µF divided by sqrt(C / 1 µF). Refused for a Y above 1 µF: the
    /// figures end there, and none is made.</summary>
    public static Outcome<Worked<double>> ImpulseKilovolts(SafetyClass safetyClass, decimal farads) =>
        Domain.Of(
            Domain.Positive("capacitance", farads),
            Domain.That(farads <= MostFarads, $"capacitance is {Figures.Farads(farads)}, no suppression capacitor is above {Figures.Farads(MostFarads)}"),
            Domain.That(BaseKilovolts(safetyClass) > 0, $"class {safetyClass} has no impulse test"),
            Domain.That(!IsY(safetyClass) || farads <= OneMicrofarad, $"capacitance is {Figures.Farads(farads)}, the figure of class {safetyClass} holds to 1 µF and no such part is made above it"))
        .Compute(() =>
        {
            double volts = BaseKilovolts(safetyClass);
            bool reduced = farads > OneMicrofarad;
            double result = reduced ? volts / Math.Sqrt((double)(farads * 1_000_000m)) : volts;
            string working = result < volts
                ? $"{Figures.Text(volts)} kV / sqrt({Figures.Text(farads * 1_000_000m)}) = {Figures.Text(result, 4)} kV"
                : $"{safetyClass} to 1 µF: {Figures.Text(volts)} kV";
            return new Worked<double>(result, working, reduced || safetyClass == SafetyClass.Y4 ? ImpulseRemembered : Impulse);
        });

    /// <summary>
    /// Whether a class may stand where another stood, with the reason. A Y may replace an X of equal or lower impulse, never the
    /// reverse; no part without a class may replace one with a class. The a.c. rating and the approvals must be kept as well.
    /// </summary>
    public static Worked<bool> MayReplace(SafetyClass original, SafetyClass offered)
    {
        string names = $"{offered} for {original}";
        return (original, offered) switch
        {
            (SafetyClass.None, _) => new(true, "the place asks for no safety class", Order),
            (_, SafetyClass.None) => new(false, $"a part without a class never replaces {original}, however high its d.c. rating", Order),
            _ when original == offered => new(true, $"{names}: the same class", Order),
            _ when IsY(original) && !IsY(offered) => new(false, $"{names}: an X never replaces a Y", Order),
            _ when BaseKilovolts(offered) >= BaseKilovolts(original) =>
                new(true, $"{names}: {Words(offered)} covers {Words(original)}", Order),
            _ => new(false, $"{names}: {Words(offered)} is under {Words(original)}", Order),
        };
    }

    /// <summary>The current a Y capacitor sends into the chassis, 2 pi f C V, in milliampere.</summary>
    /// <remarks>What it is held against is in <see cref="TouchCurrentLimit"/>. Keep the capacitance at or below the original.</remarks>
    public static Outcome<Worked<decimal>> TouchMilliamperes(decimal farads, decimal volts, decimal hertz) =>
        Domain.Of(Domain.Positive("capacitance", farads), Domain.Positive("voltage", volts),
            Domain.Positive("frequency", hertz)).Compute(() =>
        {
            decimal milliamperes = LossFactor.TwoPi * hertz * farads * volts * 1000m;
            string working = $"2 pi x {Figures.Text(hertz)} Hz x {Figures.Farads(farads)} x {Figures.Text(volts)} V = {Figures.Text(milliamperes, 4)} mA";
            return new Worked<decimal>(milliamperes, working, Source.Practice("current through a capacitance"))
            {
                Remarks = ["information only: limits depend on the equipment's class; defer to local codes and licensed practice"],
            };
        });

    private static bool IsY(SafetyClass c) => c is SafetyClass.Y1 or SafetyClass.Y2 or SafetyClass.Y3 or SafetyClass.Y4;

    // X3 and Y3 have no impulse test: 0 ranks them lowest of their letter.
    private static double BaseKilovolts(SafetyClass c) => c switch
    {
        SafetyClass.X1 => 4.0,
        SafetyClass.X2 => 2.5,
        SafetyClass.Y1 => 8.0,
        SafetyClass.Y2 => 5.0,
        SafetyClass.Y4 => 2.5,
        _ => 0,
    };

    private static string Words(SafetyClass c) => BaseKilovolts(c) is > 0 and var kilovolts ? $"an impulse of {Figures.Text(kilovolts)} kV"
        : "no impulse test";
}
