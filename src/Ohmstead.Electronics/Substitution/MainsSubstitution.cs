using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Substitution;

/// <summary>
/// May a capacitor stand on the mains in the place of another: class, the voltages of the class, rated a.c. voltage. Nothing that is not
/// known is let pass here: people rely on such a part not to be shocked or burned.
/// </summary>
public static class MainsSubstitution
{
    private const string Safety = "safety";
    private const string Voltage = "voltage";

    /// <summary>All reasons for and against.</summary>
    /// <param name="place">The class that the place asks for.</param>
    /// <param name="volts">The a.c. voltage that it asks for, in volt, or null when it is not known.</param>
    /// <param name="offered">The class of the part.</param>
    /// <param name="ratedVolts">The rated a.c. voltage of the part, in volt, or null when it is not known.</param>
    public static IReadOnlyList<FitReason> Judge(SafetyClass place, decimal? volts, SafetyClass offered, decimal? ratedVolts)
    {
        if (place == SafetyClass.None)
        {
            return [FitReason.Against(Safety, "the place is on the mains and its class is not known: establish it first")];
        }

        Worked<bool> may = SafetyCapacitor.MayReplace(place, offered, volts);
        FitReason byClass = may.Value
            ? FitReason.For(Safety, may.Arithmetic, may.Source)
            : FitReason.Against(Safety, may.Arithmetic, may.Source);
        FitReason notice = FitReason.Doubt(Safety, Hazards.SafetyNotice.Defer);
        if (may.Value && IsOfTheOther(place, offered, ratedVolts))
        {
            return
            [
                byClass,
                notice,
                FitReason.Against(Voltage, () =>
                    $"{Figures.Text(ratedVolts!.Value)} V is the mark of its {offered.AcrossTheLine()}: a {offered.ToEarth()} ends at "
                    + $"{Figures.Text(SafetyCapacitor.HighestVolts(offered) ?? 0m)} V, write the voltage of that"
                ),
            ];
        }

        return volts is { } asked ? [byClass, notice, ByVoltage(asked, ratedVolts)]
            : may.Value ? [byClass, notice, Unseen(SafetyCapacitor.MayReplaceUnseen(place, offered, ratedVolts))]
            : [byClass, notice];
    }

    // A part with two classes is marked with two voltages; one that is higher than its class to earth has is not that of the place.
    private static bool IsOfTheOther(SafetyClass place, SafetyClass offered, decimal? ratedVolts) =>
        place.IsY() && offered.IsBoth() && ratedVolts is { } mark && mark > SafetyCapacitor.HighestVolts(offered);

    private static FitReason Unseen(Worked<bool> may) =>
        may.Value ? FitReason.For(Voltage, may.Arithmetic, may.Source) : FitReason.Against(Voltage, may.Arithmetic, may.Source);

    // A rating for the mains holds its tolerance and its surges already; what its class is for is told with the class.
    private static FitReason ByVoltage(decimal asked, decimal? offered) =>
        offered switch
        {
            null => FitReason.Against(Voltage, () =>
                $"its rated voltage is not written, and {Figures.Text(asked)} V of mains are asked for"
            ),
            { } rated when rated < asked => FitReason.Against(Voltage, () =>
                $"{Figures.Text(rated)} V is under the {Figures.Text(asked)} V of mains that the place asks for"
            ),
            { } rated => FitReason.For(Voltage, () =>
                $"{Figures.Text(rated)} V is not under the {Figures.Text(asked)} V of mains that the place asks for"
            ),
        };
}
