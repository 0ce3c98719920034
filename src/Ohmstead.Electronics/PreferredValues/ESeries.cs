using System.Collections.Immutable;
using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.PreferredValues;

/// <summary>A series of preferred values, E3 to E192.</summary>
/// <remarks>
/// The values of one decade are 10^(n/m), rounded to two figures up to E24 and to three above, with the standard's own exceptions: 2.7,
/// 3.0, 3.3, 3.6, 3.9, 4.3, 4.7 and 8.2 in E24, and 9.20 in E192. E24 is no part of E96, so a value outside a series is a hint and never
/// an error. Source: IEC 60063:2015, rule from memory.
/// </remarks>
public sealed class ESeries
{
    private ESeries(int count, ImmutableArray<decimal> decade) => (Count, Decade) = (count, decade);

    /// <summary>3 values a decade.</summary>
    public static ESeries E3 { get; } = Every(8, TwoFigures);

    /// <summary>6 values a decade.</summary>
    public static ESeries E6 { get; } = Every(4, TwoFigures);

    /// <summary>12 values a decade.</summary>
    public static ESeries E12 { get; } = Every(2, TwoFigures);

    /// <summary>24 values a decade.</summary>
    public static ESeries E24 { get; } = Every(1, TwoFigures);

    /// <summary>48 values a decade.</summary>
    public static ESeries E48 { get; } = Every(4, ThreeFigures);

    /// <summary>96 values a decade.</summary>
    public static ESeries E96 { get; } = Every(2, ThreeFigures);

    /// <summary>192 values a decade.</summary>
    public static ESeries E192 { get; } = Every(1, ThreeFigures);

    /// <summary>All series, the coarsest first.</summary>
    public static ImmutableArray<ESeries> All => [E3, E6, E12, E24, E48, E96, E192];

    /// <summary>How many values a decade has.</summary>
    public int Count { get; }

    /// <summary>The values from 1 up to 10, in order.</summary>
    public ImmutableArray<decimal> Decade { get; }

    /// <summary>The name: E24.</summary>
    public string Name => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"E{Count}");

    private static ImmutableArray<decimal> TwoFigures =>
        [
            1.0m,
            1.1m,
            1.2m,
            1.3m,
            1.5m,
            1.6m,
            1.8m,
            2.0m,
            2.2m,
            2.4m,
            2.7m,
            3.0m,
            3.3m,
            3.6m,
            3.9m,
            4.3m,
            4.7m,
            5.1m,
            5.6m,
            6.2m,
            6.8m,
            7.5m,
            8.2m,
            9.1m,
        ];

    private static ImmutableArray<decimal> ThreeFigures =>
        [
            .. Enumerable
                .Range(0, 192)
                .Select(n => n == 185 ? 9.20m : Math.Round((decimal)Math.Pow(10, n / 192d), 2, MidpointRounding.AwayFromZero)),
        ];

    /// <summary>Whether the value is in the series, in any decade. Zero and negative values are not.</summary>
    public bool Contains(Quantity value) => value.Value > 0m && Decade.BinarySearch(Mantissa(value.Value)) >= 0;

    /// <summary>The values of the series on both sides; both are the value itself when it is in the series. Null for zero, negative and
    /// extreme values.</summary>
    public PreferredNeighbours? Neighbours(Quantity value)
    {
        if (value.Value <= 0m || DecimalMath.Exponent(value.Value) is < -20 or > 20)
            return null;
        var exponent = DecimalMath.Exponent(value.Value);
        var index = Decade.BinarySearch(Mantissa(value.Value));
        if (index >= 0)
            return new PreferredNeighbours(value, value, value);

        var next = ~index;
        var scale = DecimalMath.PowerOfTen(exponent);
        var below = value with { Value = Decade[next - 1] * scale };
        var above = value with { Value = (next < Decade.Length ? Decade[next] : 10m) * scale };
        return new PreferredNeighbours(below, above, value.Value / below.Value <= above.Value / value.Value ? below : above);
    }

    /// <inheritdoc/>
    public override string ToString() => Name;

    private static ESeries Every(int step, ImmutableArray<decimal> finest)
    {
        ImmutableArray<decimal> decade = [.. finest.Where((_, n) => n % step == 0)];
        return new ESeries(decade.Length, decade);
    }

    private static decimal Mantissa(decimal value) =>
        DecimalMath.TryShift(value, -DecimalMath.Exponent(value), out var mantissa)
            ? mantissa
            : value / DecimalMath.PowerOfTen(DecimalMath.Exponent(value));
}
