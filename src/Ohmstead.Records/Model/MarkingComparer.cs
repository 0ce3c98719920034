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
            && Alike.Same(x.Kind, y.Kind)
            && Alike.Same(x.Capacitance, y.Capacitance)
            && Alike.Same(x.Resistance, y.Resistance)
            && Alike.Same(x.Inductance, y.Inductance)
            && Alike.Same(x.Frequency, y.Frequency)
            && Alike.Same(x.Current, y.Current)
            && Alike.Same(x.RatedVoltage, y.RatedVoltage)
            && Alike.Same(x.VoltageOfPaper, y.VoltageOfPaper)
            && Alike.Same(x.Tolerance, y.Tolerance)
            && Alike.Same(x.LossFactorLimit, y.LossFactorLimit)
            && Alike.Same(x.EsrLimit, y.EsrLimit)
            && Alike.Same(x.EsrLow, y.EsrLow)
            && Alike.Same(x.LeakageLimit, y.LeakageLimit)
            && Alike.Same(x.Low, y.Low)
            && Alike.Same(x.High, y.High)
            && Alike.Same(x.Material, y.Material)
            && Alike.Same(x.Cells, y.Cells)
            && Alike.Same(x.TellingType, y.TellingType)
            && Alike.Same(x.EsrFrequency, y.EsrFrequency)
            && Alike.Same(x.ClassOfSuppressor, y.ClassOfSuppressor)
            && Alike.Same(x.RoleOfSuppressor, y.RoleOfSuppressor)
            && Alike.Same(x.FormOfSuppressor, y.FormOfSuppressor)
        );

    /// <inheritdoc/>
    public int GetHashCode(IMarkedPart obj)
    {
        ArgumentNullException.ThrowIfNull(obj);
        // What tells most parts apart; the rest is left to the comparison.
        var main = obj.Capacitance ?? obj.Resistance ?? obj.Inductance ?? obj.Frequency;
        var hash = Alike.Hash(Alike.Hash(0, obj.Kind), main);
        hash = Alike.Hash(Alike.Hash(hash, obj.RatedVoltage), obj.Tolerance);
        return main is not null ? hash : Alike.Hash(Alike.Hash(Alike.Hash(hash, obj.Low), obj.High), obj.TellingType);
    }
}
