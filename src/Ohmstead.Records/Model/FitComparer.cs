namespace Ohmstead.Records.Model;

/// <summary>Parts are equal when all is that may decide what fits: values and texts as written, not where they stand.</summary>
public sealed class FitComparer : IEqualityComparer<IFitPart>
{
    private FitComparer() { }

    /// <summary>The one there is.</summary>
    public static FitComparer Instance { get; } = new();

    /// <inheritdoc/>
    public bool Equals(IFitPart? x, IFitPart? y) =>
        ReferenceEquals(x, y)
        || (
            x is not null
            && y is not null
            && Alike.Same(x.Kind, y.Kind)
            && Alike.Same(x.Role, y.Role)
            && Alike.Same(x.Capacitance, y.Capacitance)
            && Alike.Same(x.Resistance, y.Resistance)
            && Alike.Same(x.Inductance, y.Inductance)
            && Alike.Same(x.Frequency, y.Frequency)
            && Alike.Same(x.Tolerance, y.Tolerance)
            && Alike.Same(x.RatedVoltage, y.RatedVoltage)
            && Alike.Same(x.WorkingVoltage, y.WorkingVoltage)
            && Alike.Same(x.Temperature, y.Temperature)
            && Alike.Same(x.Power, y.Power)
            && Alike.Same(x.Current, y.Current)
            && Alike.Same(x.Speed, y.Speed)
            && Alike.Same(x.Breaking, y.Breaking)
            && Alike.Same(x.Standard, y.Standard)
            && Alike.Same(x.Size, y.Size)
            && Alike.Same(x.RippleCurrent, y.RippleCurrent)
            && Alike.Same(x.EsrLimit, y.EsrLimit)
            && Alike.Same(x.EsrLow, y.EsrLow)
            && Alike.Same(x.Low, y.Low)
            && Alike.Same(x.High, y.High)
            && Alike.Same(x.Polarity, y.Polarity)
            && Alike.Same(x.SafetyClass, y.SafetyClass)
            && Alike.Same(x.Material, y.Material)
            && Alike.Same(x.Cells, y.Cells)
            && Alike.Same(x.Form, y.Form)
            && Alike.Same(x.LeadPitch, y.LeadPitch)
            && Alike.Same(x.Diameter, y.Diameter)
            && Alike.Same(x.Height, y.Height)
            && Alike.Same(x.Type, y.Type)
        );

    /// <inheritdoc/>
    public int GetHashCode(IFitPart obj)
    {
        ArgumentNullException.ThrowIfNull(obj);
        // What tells most parts apart; the rest is left to the comparison.
        var hash = Alike.Hash(Alike.Hash(0, obj.Kind), ChosenBy.Value(obj));
        hash = Alike.Hash(Alike.Hash(hash, obj.Role), obj.RatedVoltage);
        return Alike.Hash(Alike.Hash(hash, obj.Tolerance), obj.Type);
    }
}
