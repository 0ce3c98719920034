using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Supplies;

/// <summary>Choke-input supplies, full wave: below a critical current the output climbs from 0.90 to 1.41 times the winding's r.m.s.
/// voltage.</summary>
public static class ChokeInput
{
    /// <summary>Output over winding r.m.s. while the choke holds.</summary>
    public const decimal HeldShare = 0.90m;

    /// <summary>Output over winding r.m.s. without load.</summary>
    public const decimal UnloadedShare = 1.41m;

    /// <summary>The largest load resistance, bleeder included, that keeps the choke working: 6 pi f L, in ohm.</summary>
    public static Outcome<Worked<decimal>> LargestLoadOhms(decimal henries, decimal mainsHertz) =>
        Domain
            .Require(Domain.Positive("inductance", henries), Domain.Positive("mains frequency", mainsHertz))
            .Compute(() =>
            {
                decimal ohms = 3m * Capacitors.LossFactor.TwoPi * mainsHertz * henries;
                string working = $"6 pi x {Figures.Text(mainsHertz)} Hz x {Figures.Text(henries)} H = {Rounded.Ohms(ohms)}";
                return new Worked<decimal>(ohms, working, Source.FromMemory("Radiotron Designer's Handbook, 4th edition", "chapter 30"));
            });
}
