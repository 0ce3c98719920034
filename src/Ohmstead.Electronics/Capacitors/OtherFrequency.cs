using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Capacitors;

/// <summary>What a loss read at one frequency says against a limit that holds at another: how low it must be to be inside for certain, and
/// how high to be outside.</summary>
/// <remarks>
/// ESR(f) = D / (2 pi f C) + r: the loss of the dielectric falls with frequency, the resistance of foils and electrolyte does not, and how
/// a part divides into the two is not known. So with L the limit at f0, a part exactly on it reads somewhere between L f0 / f and L. The
/// dissipation factor is 2 pi f C times that: it rises with frequency, and at most as frequency does.
/// </remarks>
public static class OtherFrequency
{
    // What the bridges and testers of the bench measure at: 50 Hz the older ones, 100 kHz the testers of ESR. Common practice.
    private const decimal LowestUsualHertz = 50m;
    private const decimal MainsHertz = 120m;
    private const decimal HighestUsualHertz = 100_000m;

    /// <summary>Where the two terms come from; what follows for a limit is algebra.</summary>
    public static Source Source { get; } =
        Source.Published(
            "Cornell Dubilier, Aluminum Electrolytic Capacitor Application Guide, as quoted at stabilityissues.net 2012-01-31",
            "ESR against frequency"
        );

    /// <summary>What an ESR read at a frequency proves against a limit that holds at another.</summary>
    public static Outcome<Worked<ProvedLimits>> Esr(decimal limitOhms, decimal limitHertz, decimal readHertz) =>
        Sound("ESR limit", limitOhms, limitHertz, readHertz)
            .Compute(() =>
            {
                decimal scaled = limitOhms * (limitHertz / readHertz);
                return new Worked<ProvedLimits>(
                    new(Math.Min(limitOhms, scaled), Math.Max(limitOhms, scaled)),
                    new(() =>
                        $"between {Rounded.Ohms(limitOhms)} x {Figures.Text(limitHertz)} Hz / {Figures.Text(readHertz)} Hz = "
                        + $"{Rounded.Ohms(scaled)} and {Rounded.Ohms(limitOhms)}"
                    ),
                    Source
                );
            });

    /// <summary>What a dissipation factor read at a frequency proves against a limit that holds at another.</summary>
    public static Outcome<Worked<ProvedLimits>> LossFactor(decimal limit, decimal limitHertz, decimal readHertz) =>
        Sound("dissipation factor limit", limit, limitHertz, readHertz)
            .Compute(() =>
            {
                decimal scaled = limit * (readHertz / limitHertz);
                return new Worked<ProvedLimits>(
                    new(Math.Min(limit, scaled), Math.Max(limit, scaled)),
                    new(() =>
                        $"between {Figures.Text(limit)} and {Figures.Text(limit)} x {Figures.Text(readHertz)} Hz / "
                        + $"{Figures.Text(limitHertz)} Hz = {Figures.Text(scaled)}"
                    ),
                    Source
                );
            });

    /// <summary>What an ESR proves whose frequency nobody wrote down, or against a limit that names none: it lies between 50 Hz and 100
    /// kHz, as meters have it.</summary>
    /// <param name="limitOhms">The limit.</param>
    /// <param name="limitHertz">The frequency of the limit, or null when it is not known.</param>
    /// <param name="readHertz">The frequency of the reading, or null when it is not known.</param>
    public static Outcome<Worked<ProvedLimits>> EsrAtUnknown(decimal limitOhms, decimal? limitHertz, decimal? readHertz)
    {
        (decimal lowest, decimal highest) = (limitHertz ?? Least(readHertz), limitHertz ?? Most(readHertz));
        return
            Esr(limitOhms, lowest, readHertz ?? HighestUsualHertz).Is(out Worked<ProvedLimits>? one, out string? reason)
            && Esr(limitOhms, highest, readHertz ?? LowestUsualHertz).Is(out Worked<ProvedLimits>? other, out reason)
            ? Outcome<Worked<ProvedLimits>>.From(
                new(
                    new(Math.Min(one.Value.InsideTo, other.Value.InsideTo), Math.Max(one.Value.OutsideAbove, other.Value.OutsideAbove)),
                    new(() => $"from 50 Hz to 100 kHz {one.Arithmetic}, {other.Arithmetic}"),
                    Source
                )
            )
            : Outcome<Worked<ProvedLimits>>.Refused(reason);
    }

    // A limit that names no frequency holds at 120 Hz or at 100 kHz, as data sheets have it: at neither more nor less than what was read
    // beyond them.
    private static decimal Least(decimal? readHertz) => Math.Min(readHertz ?? MainsHertz, MainsHertz);

    private static decimal Most(decimal? readHertz) => Math.Max(readHertz ?? HighestUsualHertz, HighestUsualHertz);

    private static Domain Sound(string name, decimal limit, decimal limitHertz, decimal readHertz) =>
        Domain.Require(
            Domain.NotNegative(name, limit),
            Domain.Positive("frequency of the limit", limitHertz),
            Domain.Positive("frequency of the reading", readHertz)
        );
}

/// <summary>A limit in two: what is proved inside, and what is proved outside. Between them a reading does not decide.</summary>
/// <param name="InsideTo">The greatest value that is inside for certain.</param>
/// <param name="OutsideAbove">The greatest value that may still be inside: above it, it is outside for certain.</param>
public readonly record struct ProvedLimits(decimal InsideTo, decimal OutsideAbove);
