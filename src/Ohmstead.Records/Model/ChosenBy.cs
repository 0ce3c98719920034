using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Records.Model;

/// <summary>What a part is chosen by before all else.</summary>
public static class ChosenBy
{
    /// <summary>The marked value: the first of capacitance, resistance, inductance, frequency and current that is written; null when none
    /// is.</summary>
    public static Written<Quantity>? Value(IFitPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Capacitance ?? part.Resistance ?? part.Inductance ?? part.Frequency ?? part.Current;
    }
}
