namespace Ohmstead.Electronics.Quantities;

/// <summary>How far a part may be from its nominal value as delivered: two signed decimals, relative (fractions) or absolute (in a
/// dimension's base unit).</summary>
/// <remarks>-10/+50 % is held as -0.1 and 0.5; ±0.5 pF as -5e-13 and 5e-13 farad. The default value is relative and allows nothing but the
/// nominal.</remarks>
public readonly partial record struct Tolerance
{
    private Tolerance(decimal lower, decimal upper, Dimension? absoluteIn) => (Lower, Upper, AbsoluteIn) = (lower, upper, absoluteIn);

    /// <summary>The lower deviation with its sign, 0 or below in all but odd cases.</summary>
    public decimal Lower { get; }

    /// <summary>The upper deviation with its sign; never below <see cref="Lower"/>.</summary>
    public decimal Upper { get; }

    /// <summary>The dimension of an absolute tolerance, or null when the deviations are fractions of the nominal.</summary>
    public Dimension? AbsoluteIn { get; }

    /// <summary>True when the deviations are fractions of the nominal value.</summary>
    public bool IsRelative => AbsoluteIn is null;

    /// <summary>A tolerance in fractions of the nominal: (-0.1, 0.5) for -10/+50 %.</summary>
    /// <exception cref="ArgumentException">Lower is above upper.</exception>
    public static Tolerance Relative(decimal lower, decimal upper) => Checked(lower, upper, null);

    /// <summary>A symmetric tolerance in fractions of the nominal: 0.2 for ±20 %.</summary>
    /// <exception cref="ArgumentException">The fraction is negative.</exception>
    public static Tolerance Relative(decimal plusMinus) => Checked(-plusMinus, plusMinus, null);

    /// <summary>A tolerance in the base unit of a dimension.</summary>
    /// <exception cref="ArgumentException">Lower is above upper.</exception>
    public static Tolerance Absolute(decimal lower, decimal upper, Dimension dimension) => Checked(lower, upper, dimension);

    /// <summary>The limits around a nominal value, by decimal arithmetic: 470 µF -10/+50 % gives 423 µF and 705 µF.</summary>
    /// <remarks>
    /// A lower limit below 0 of a dimension that has no negative values is no limit (null). A negative nominal keeps its limits in order.
    /// An absolute tolerance of another dimension than the nominal gives an interval that contains nothing of the nominal's.
    /// </remarks>
    /// <exception cref="OverflowException">A limit is beyond what a decimal holds; values read from text never get there.</exception>
    public Interval Apply(Quantity nominal)
    {
        if (AbsoluteIn is { } dimension && dimension != nominal.Dimension)
            return new Interval(new Quantity(Lower, dimension), new Quantity(Upper, dimension));
        var one = nominal.Value + (IsRelative ? nominal.Value * Lower : Lower);
        var other = nominal.Value + (IsRelative ? nominal.Value * Upper : Upper);
        var (lower, upper) = one <= other ? (one, other) : (other, one);
        return new Interval(
            lower < 0m && DimensionFacts.Least(nominal.Dimension) == 0m ? null : nominal with { Value = lower },
            nominal with
            {
                Value = upper,
            }
        );
    }

    /// <summary>The canonical text: ±20 %, -10/+50 %, 0/+100 %, ±0.5 pF.</summary>
    public override string ToString()
    {
        if (Lower == -Upper)
            return $"±{Side(Upper)}";
        return IsRelative ? $"{Signed(Lower)[..^2]}/{Signed(Upper)}" : $"{Signed(Lower)}/{Signed(Upper)}";
    }

    private static Tolerance Checked(decimal lower, decimal upper, Dimension? dimension) =>
        lower <= upper
            ? new Tolerance(lower, upper, dimension)
            : throw new ArgumentException("The lower deviation is above the upper one.", nameof(lower));

    private string Signed(decimal deviation) => $"{(deviation < 0m ? "-" : deviation > 0m ? "+" : "")}{Side(Math.Abs(deviation))}";

    private string Side(decimal deviation) =>
        AbsoluteIn is { } dimension ? QuantityText.Format(new Quantity(deviation, dimension)) : QuantityText.FormatPercent(deviation);
}
