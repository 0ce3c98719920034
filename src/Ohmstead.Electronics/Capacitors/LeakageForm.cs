namespace Ohmstead.Electronics.Capacitors;

/// <summary>The shape of a leakage limit: microampere as a function of capacitance in microfarad times voltage in volt (CV, in
/// microcoulomb).</summary>
public abstract record LeakageForm
{
    private LeakageForm() { }

    /// <summary>The limit in microampere for a product CV in microcoulomb.</summary>
    internal abstract decimal MicroAmperes(decimal cv);

    /// <summary>The working, with the product written out by the caller.</summary>
    internal abstract string Working(string product, decimal cv);

    /// <summary>A share of CV, but never under a floor.</summary>
    /// <param name="Factor">Microampere for each microcoulomb.</param>
    /// <param name="Floor">The least limit in microampere.</param>
    public sealed record Floored(decimal Factor, decimal Floor) : LeakageForm
    {
        internal override decimal MicroAmperes(decimal cv) => Math.Max(Factor * cv, Floor);

        internal override string Working(string product, decimal cv) =>
            $"{Figures.Text(Factor)} x {product} = {Figures.Text(Factor * cv)} µA, not under {Figures.Text(Floor)} µA";
    }

    /// <summary>A share of CV plus a constant.</summary>
    /// <param name="Factor">Microampere for each microcoulomb.</param>
    /// <param name="Added">The constant in microampere.</param>
    public sealed record Offset(decimal Factor, decimal Added) : LeakageForm
    {
        internal override decimal MicroAmperes(decimal cv) => (Factor * cv) + Added;

        internal override string Working(string product, decimal cv) =>
            $"{Figures.Text(Factor)} x {product} + {Figures.Text(Added)} µA = {Figures.Text(MicroAmperes(cv))} µA";
    }

    /// <summary>A share of CV plus a constant, with other figures above a bound.</summary>
    /// <param name="Bound">The last product CV, in microcoulomb, that <paramref name="UpTo"/> holds for.</param>
    /// <param name="UpTo">The form up to the bound.</param>
    /// <param name="Above">The form above it.</param>
    public sealed record Stepped(decimal Bound, Offset UpTo, Offset Above) : LeakageForm
    {
        internal override decimal MicroAmperes(decimal cv) => Part(cv).MicroAmperes(cv);

        internal override string Working(string product, decimal cv) =>
            $"{Part(cv).Working(product, cv)} (CV {(cv <= Bound ? "up to" : "above")} {Figures.Text(Bound)})";

        private Offset Part(decimal cv) => cv <= Bound ? UpTo : Above;
    }

    /// <summary>A power of CV, for large cans, rounded to a nanoampere.</summary>
    /// <param name="Factor">The factor.</param>
    /// <param name="Exponent">The power of CV, above 0 and at most 1.</param>
    /// <param name="Added">The constant in microampere.</param>
    public sealed record Power(decimal Factor, double Exponent, decimal Added) : LeakageForm
    {
        internal override decimal MicroAmperes(decimal cv) => decimal.Round(Factor * (decimal)Math.Pow((double)cv, Exponent), 3) + Added;

        internal override string Working(string product, decimal cv) =>
            $"{Figures.Text(Factor)} x ({product})^{Figures.Text(Exponent)}{(Added == 0 ? "" : " + " + Figures.Text(Added))} = "
            + $"{Figures.Text(MicroAmperes(cv))} µA";
    }
}
