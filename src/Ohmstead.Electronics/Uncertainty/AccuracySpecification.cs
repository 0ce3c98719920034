namespace Ohmstead.Electronics.Uncertainty;

/// <summary>An instrument's accuracy as makers write it: so many per cent of the reading, plus so many digits, plus a fixed part.</summary>
/// <remarks>The digits already hold the resolution: it is not added again.</remarks>
/// <param name="PercentOfReading">Per cent of the reading: 0.5 for 0.5 %.</param>
/// <param name="Digits">Counts of the last place.</param>
/// <param name="Resolution">What one count is worth, in the unit of the reading.</param>
/// <param name="Fixed">A part that does not depend on the reading, in its unit.</param>
public readonly record struct AccuracySpecification(decimal PercentOfReading, decimal Digits, decimal Resolution, decimal Fixed = 0m)
{
    // To 28 figures: acceptance limits that come of it are decimals.
    private const decimal SquareRootOfThree = 1.732050807568877293527446342m;

    // The same: every reading of a collection is multiplied by it, which is faster than dividing by the root.
    private const decimal TwoOverRootOfThree = 1.154700538379251529018297561m;

    private static readonly Source Specification = Source.Practice("the maker's specification taken as limits of error");

    /// <summary>The half width of the range the true value is in, |reading| p/100 + digits x resolution + fixed, in the reading's
    /// unit.</summary>
    public Outcome<Worked<decimal>> HalfWidth(decimal reading)
    {
        AccuracySpecification own = this;
        return Sound.Compute(() =>
        {
            decimal halfWidth = own.HalfWidthAt(reading);
            return new Worked<decimal>(halfWidth, new(() => own.Working(reading, halfWidth)), Specification);
        });
    }

    /// <summary>The standard uncertainty of a reading, half width / sqrt(3): every error within the specification is taken as equally
    /// likely.</summary>
    public Outcome<decimal> StandardUncertaintyOf(decimal reading) => HalfWidth(reading).Then(a => a.Value / SquareRootOfThree);

    /// <summary>The expanded uncertainty of a reading, k = 2 (about 95 %), with its working.</summary>
    public Outcome<Worked<decimal>> ExpandedUncertaintyOf(decimal reading) =>
        HalfWidth(reading)
            .Then(a =>
            {
                decimal expanded = Expanded(a.Value);
                return new Worked<decimal>(
                    expanded,
                    new(() => $"{a.Arithmetic}; 2 x {Figures.Text(a.Value)} / sqrt(3) = {Figures.Text(expanded, 4)}"),
                    Uncertainty.StandardUncertainty.RectangularSource
                );
            });

    /// <summary>The expanded uncertainty of a reading as <see cref="ExpandedUncertaintyOf"/> gives it, without its working: every reading
    /// of a collection asks for it.</summary>
    public Outcome<decimal> ExpandedUncertainty(decimal reading) =>
        Sound.Flatten((specification: this, reading), static given =>
            Outcome<decimal>.From(Expanded(given.specification.HalfWidthAt(given.reading)))
        );

    private Domain Sound =>
        Domain.Require(
            Domain.NotNegative("per cent of reading", PercentOfReading),
            Domain.NotNegative("digits", Digits),
            Domain.NotNegative("resolution", Resolution),
            Domain.NotNegative("fixed part", Fixed)
        );

    private decimal HalfWidthAt(decimal reading) => (Math.Abs(reading) * PercentOfReading / 100m) + (Digits * Resolution) + Fixed;

    private static decimal Expanded(decimal halfWidth) => halfWidth * TwoOverRootOfThree;

    private string Working(decimal reading, decimal halfWidth)
    {
        string fixedPart = Fixed == 0 ? "" : $" + {Figures.Text(Fixed)}";
        return $"{Figures.Text(PercentOfReading)} % of {Figures.Text(Math.Abs(reading))} + {Figures.Text(Digits)} x "
            + $"{Figures.Text(Resolution)}{fixedPart} = {Figures.Text(halfWidth)}";
    }
}
