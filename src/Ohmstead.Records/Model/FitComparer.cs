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
            && WrittenEquality.AreEqual(x.Kind, y.Kind)
            && WrittenEquality.AreEqual(x.Role, y.Role)
            && WrittenEquality.AreEqual(x.Capacitance, y.Capacitance)
            && WrittenEquality.AreEqual(x.Resistance, y.Resistance)
            && WrittenEquality.AreEqual(x.Inductance, y.Inductance)
            && WrittenEquality.AreEqual(x.Frequency, y.Frequency)
            && WrittenEquality.AreEqual(x.Tolerance, y.Tolerance)
            && WrittenEquality.AreEqual(x.RatedVoltage, y.RatedVoltage)
            && WrittenEquality.AreEqual(x.WorkingVoltage, y.WorkingVoltage)
            && WrittenEquality.AreEqual(x.Temperature, y.Temperature)
            && WrittenEquality.AreEqual(x.Power, y.Power)
            && WrittenEquality.AreEqual(x.Current, y.Current)
            && WrittenEquality.AreEqual(x.Speed, y.Speed)
            && WrittenEquality.AreEqual(x.Breaking, y.Breaking)
            && WrittenEquality.AreEqual(x.Standard, y.Standard)
            && WrittenEquality.AreEqual(x.Size, y.Size)
            && WrittenEquality.AreEqual(x.RippleCurrent, y.RippleCurrent)
            && WrittenEquality.AreEqual(x.EsrLimit, y.EsrLimit)
            && WrittenEquality.AreEqual(x.EsrLow, y.EsrLow)
            && WrittenEquality.AreEqual(x.Low, y.Low)
            && WrittenEquality.AreEqual(x.High, y.High)
            && WrittenEquality.AreEqual(x.Polarity, y.Polarity)
            && WrittenEquality.AreEqual(x.SafetyClass, y.SafetyClass)
            && WrittenEquality.AreEqual(x.Material, y.Material)
            && WrittenEquality.AreEqual(x.Cells, y.Cells)
            && WrittenEquality.AreEqual(x.Form, y.Form)
            && WrittenEquality.AreEqual(x.LeadPitch, y.LeadPitch)
            && WrittenEquality.AreEqual(x.Diameter, y.Diameter)
            && WrittenEquality.AreEqual(x.Height, y.Height)
            && WrittenEquality.AreEqual(x.Type, y.Type)
        );

    /// <inheritdoc/>
    public int GetHashCode(IFitPart obj)
    {
        ArgumentNullException.ThrowIfNull(obj);
        // What tells most parts apart; the rest is left to the comparison.
        var hash = WrittenEquality.Hash(WrittenEquality.Hash(0, obj.Kind), ChosenBy.Value(obj));
        hash = WrittenEquality.Hash(WrittenEquality.Hash(hash, obj.Role), obj.RatedVoltage);
        return WrittenEquality.Hash(WrittenEquality.Hash(hash, obj.Tolerance), obj.Type);
    }
}
