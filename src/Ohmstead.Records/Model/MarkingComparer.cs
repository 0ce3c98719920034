namespace Ohmstead.Records.Model;

/// <summary>Parts are equal when all that their limits may depend on is: values and texts as written, not where they stand.</summary>
public sealed class MarkingComparer : IEqualityComparer<IMarkedPart>
{
    private MarkingComparer() { }

    /// <summary>The one there is.</summary>
    public static MarkingComparer Instance { get; } = new();

    /// <inheritdoc/>
    public bool Equals(IMarkedPart? x, IMarkedPart? y) =>
        ReferenceEquals(x, y)
        || (
            x is not null
            && y is not null
            && WrittenEquality.AreEqual(x.Kind, y.Kind)
            && WrittenEquality.AreEqual(x.Capacitance, y.Capacitance)
            && WrittenEquality.AreEqual(x.Resistance, y.Resistance)
            && WrittenEquality.AreEqual(x.Inductance, y.Inductance)
            && WrittenEquality.AreEqual(x.Frequency, y.Frequency)
            && WrittenEquality.AreEqual(x.Current, y.Current)
            && WrittenEquality.AreEqual(x.RatedVoltage, y.RatedVoltage)
            && WrittenEquality.AreEqual(x.VoltageOfPaper, y.VoltageOfPaper)
            && WrittenEquality.AreEqual(x.Tolerance, y.Tolerance)
            && WrittenEquality.AreEqual(x.LossFactorLimit, y.LossFactorLimit)
            && WrittenEquality.AreEqual(x.EsrLimit, y.EsrLimit)
            && WrittenEquality.AreEqual(x.EsrLow, y.EsrLow)
            && WrittenEquality.AreEqual(x.LeakageLimit, y.LeakageLimit)
            && WrittenEquality.AreEqual(x.Low, y.Low)
            && WrittenEquality.AreEqual(x.High, y.High)
            && WrittenEquality.AreEqual(x.Material, y.Material)
            && WrittenEquality.AreEqual(x.Cells, y.Cells)
            && WrittenEquality.AreEqual(x.TellingType, y.TellingType)
            && WrittenEquality.AreEqual(x.EsrFrequency, y.EsrFrequency)
            && WrittenEquality.AreEqual(x.ClassOfSuppressor, y.ClassOfSuppressor)
            && WrittenEquality.AreEqual(x.RoleOfSuppressor, y.RoleOfSuppressor)
            && WrittenEquality.AreEqual(x.FormOfSuppressor, y.FormOfSuppressor)
        );

    /// <inheritdoc/>
    public int GetHashCode(IMarkedPart obj)
    {
        ArgumentNullException.ThrowIfNull(obj);
        // What tells most parts apart; the rest is left to the comparison.
        var main = obj.Capacitance ?? obj.Resistance ?? obj.Inductance ?? obj.Frequency;
        var hash = WrittenEquality.Hash(WrittenEquality.Hash(0, obj.Kind), main);
        hash = WrittenEquality.Hash(WrittenEquality.Hash(hash, obj.RatedVoltage), obj.Tolerance);
        return main is not null
            ? hash
            : WrittenEquality.Hash(WrittenEquality.Hash(WrittenEquality.Hash(hash, obj.Low), obj.High), obj.TellingType);
    }
}
