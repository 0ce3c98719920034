namespace Ohmstead.Records.Model;

/// <summary>Parts are equal when all that their limits may depend on is: values and texts as written, not where they stand.</summary>
public sealed class MarkingComparer : IEqualityComparer<IMarkedPart>
{
    private const int Odd = 31;

    private MarkingComparer()
    {
    }

    /// <summary>The one there is.</summary>
    public static MarkingComparer Instance { get; } = new();

    /// <inheritdoc/>
    public bool Equals(IMarkedPart? x, IMarkedPart? y) => ReferenceEquals(x, y)
        || (x is not null && y is not null
            && Same(x.Kind, y.Kind)
            && Same(x.Capacitance, y.Capacitance)
            && Same(x.Resistance, y.Resistance)
            && Same(x.Inductance, y.Inductance)
            && Same(x.Frequency, y.Frequency)
            && Same(x.Current, y.Current)
            && Same(x.RatedVoltage, y.RatedVoltage)
            && Same(x.VoltageOfPaper, y.VoltageOfPaper)
            && Same(x.Tolerance, y.Tolerance)
            && Same(x.LossFactorLimit, y.LossFactorLimit)
            && Same(x.EsrLimit, y.EsrLimit)
            && Same(x.EsrLow, y.EsrLow)
            && Same(x.LeakageLimit, y.LeakageLimit)
            && Same(x.Low, y.Low)
            && Same(x.High, y.High)
            && Same(x.Material, y.Material)
            && Same(x.Cells, y.Cells)
            && Same(x.TellingType, y.TellingType));

    /// <inheritdoc/>
    public int GetHashCode(IMarkedPart obj)
    {
        ArgumentNullException.ThrowIfNull(obj);
        // What tells most parts apart; the rest is left to the comparison.
        var main = obj.Capacitance ?? obj.Resistance ?? obj.Inductance ?? obj.Frequency;
        var hash = Of(obj.Kind.Text);
        hash = unchecked((hash * Odd) + Of(main?.Text));
        hash = unchecked((hash * Odd) + Of(obj.RatedVoltage?.Text));
        hash = unchecked((hash * Odd) + Of(obj.Tolerance?.Text));
        hash = unchecked((hash * Odd) + Of(obj.EsrLimit?.Text));
        hash = unchecked((hash * Odd) + Of(obj.Low?.Text));
        hash = unchecked((hash * Odd) + Of(obj.High?.Text));
        return unchecked((hash * Odd) + Of(obj.TellingType?.Text));
    }

    private static int Of(string? text) => text?.GetHashCode(StringComparison.Ordinal) ?? 0;

    // The text counts beside the value: limits show it, and 0.10 V carries its two places into what is computed from it.
    private static bool Same<T>(Written<T>? one, Written<T>? other)
        where T : IEquatable<T>
        => ReferenceEquals(one, other) || (one is not null && other is not null && one.Text == other.Text && one.Value.Equals(other.Value));
}
