using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Parts;

/// <summary>What a capacitance that lies beside an inductor does to its reading: below resonance it reads high, L / (1 - (2 pi f)² L
/// C).</summary>
public static class BesideAnInductor
{
    /// <summary>What is read of an inductance with a capacitance beside it, in henry; refused at resonance and above it, where it is no
    /// inductance any more.</summary>
    public static Outcome<Worked<decimal>> ReadHenries(decimal henries, decimal farads, decimal hertz) =>
        Sound(henries, farads, hertz)
            .Flatten(() =>
            {
                decimal share = Share(henries, hertz) * farads;
                return share >= 1m
                    ? Outcome<Worked<decimal>>.Refused($"{Figures.Text(hertz)} Hz is not below the resonance of the two")
                    : Outcome<Worked<decimal>>.From(
                        new(
                            henries / (1m - share),
                            new(() =>
                                $"{Figures.Text(henries)} H / (1 - {Figures.Text(share, 4)}) = {Figures.Text(henries / (1m - share))} H"
                            ),
                            BesideACapacitor.Source
                        )
                    );
            });

    /// <summary>The capacitance beside an inductance that makes the higher reading of it, (1 - L / read) / ((2 pi f)² L), in
    /// farad.</summary>
    public static Outcome<Worked<decimal>> ExplainsFarads(decimal henries, decimal readHenries, decimal hertz) =>
        Domain
            .Require(
                Domain.Positive("inductance", henries),
                Domain.Positive("frequency", hertz),
                Domain.That(readHenries > henries, "the reading is not above its limit")
            )
            .Compute(() =>
            {
                decimal farads = (1m - (henries / readHenries)) / Share(henries, hertz);
                return new Worked<decimal>(
                    farads,
                    new(() =>
                        $"(1 - {Figures.Text(henries)} H / {Figures.Text(readHenries)} H) / ((2 pi x {Figures.Text(hertz)} Hz)² x "
                        + $"{Figures.Text(henries)} H) = {Rounded.Farads(farads)}"
                    ),
                    BesideACapacitor.Source
                );
            });

    private static decimal Share(decimal henries, decimal hertz) => LossFactor.TwoPi * hertz * (LossFactor.TwoPi * hertz) * henries;

    private static Domain Sound(decimal henries, decimal farads, decimal hertz) =>
        Domain.Require(Domain.Positive("inductance", henries), Domain.Positive("capacitance", farads), Domain.Positive("frequency", hertz));
}
