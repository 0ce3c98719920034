using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Supplies;

/// <summary>A load to test a switching supply with: many do not start, or overshoot, without one on the rail they sense.</summary>
/// <param name="Ohms">The resistance.</param>
/// <param name="Amperes">The current it draws.</param>
/// <param name="Watts">The heat it makes.</param>
/// <param name="PartWatts">The rating to ask of the resistor, two and a half times the heat.</param>
public sealed record DummyLoad(decimal Ohms, decimal Amperes, decimal Watts, decimal PartWatts)
{
    /// <summary>The least share of the rated current.</summary>
    public const decimal LeastShare = 0.10m;

    /// <summary>The share usually enough.</summary>
    public const decimal UsualShare = 0.20m;

    private const decimal PowerMargin = 2.5m;

    /// <summary>The load for a rail of so many volts and rated amperes, at a share of the rated current.</summary>
    public static Outcome<Worked<DummyLoad>> For(decimal railVolts, decimal ratedAmperes, decimal share = UsualShare) =>
        Domain
            .Require(
                Domain.Positive("rail voltage", Math.Abs(railVolts)),
                Domain.Positive("rated current", ratedAmperes),
                Domain.Within("share of the rated current", share, LeastShare, 1m)
            )
            .Compute(() =>
            {
                decimal amperes = ratedAmperes * share;
                decimal ohms = Math.Abs(railVolts) / amperes;
                decimal watts = Math.Abs(railVolts) * amperes;
                string working =
                    $"{Figures.Text(Math.Abs(railVolts))} V / {Figures.Text(amperes)} A = {Rounded.Ohms(ohms)}, {Figures.Text(watts)} "
                    + $"W, a part of {Figures.Text(PowerMargin * watts)} W";
                return new Worked<DummyLoad>(new DummyLoad(ohms, amperes, watts, PowerMargin * watts), working, Source.CommonPractice)
                {
                    Remarks = ["on the rail the supply senses; the resistor gets hot"],
                };
            });
}
