namespace Ohmstead.Electronics.Parts;

/// <summary>What current a fuse can interrupt. What is more than that, it may feed as an arc, or burst.</summary>
internal static class FuseBreakingCapacity
{
    private const decimal LeastLow = 35m;
    private const decimal TimesLow = 10m;
    private const decimal High = 1500m;
    private const decimal HighTo = 10m;

    private static readonly Source Low = Source.Published(
        "IEC 60127-2, sheet 3, as quoted in the data sheet Schurter FST",
        "breaking capacity"
    );
    private static readonly Source Ceramic = Source.Published(
        "IEC 60127-2, sheet 5, as quoted in the data sheet Schurter SPT",
        "breaking capacity"
    );
    private static readonly Source American = Source.Published("UL 248-14, as quoted in Littelfuse, Fuseology", "p. 12, at 250 V a.c.");

    // At 250 V a.c., by the rated current up to which a figure holds.
    private static readonly (decimal To, decimal Amperes)[] Steps = [(1m, 35m), (3.5m, 100m), (10m, 200m), (15m, 750m), (30m, 1500m)];

    internal static Outcome<Worked<decimal>> For(FuseSystem system, FuseBreaking? breaking, decimal rated) =>
        Domain
            .Require(Domain.Positive("rated current", rated))
            .Flatten(() =>
                (system, breaking) switch
                {
                    (FuseSystem.IEC, FuseBreaking.L) => Known(
                        Math.Max(LeastLow, TimesLow * rated),
                        $"10 x {Figures.Text(rated)} A = {Figures.Text(TimesLow * rated)} A, at least 35 A",
                        Low
                    ),
                    (FuseSystem.IEC, FuseBreaking.H) when rated <= HighTo => Known(High, "H: 1500 A to a rating of 10 A", Ceramic),
                    (FuseSystem.UL, _) when Steps.FirstOrDefault(step => rated <= step.To) is { Amperes: > 0m } step => Known(
                        step.Amperes,
                        $"UL, to {Figures.Text(step.To)} A: {Figures.Text(step.Amperes)} A",
                        American
                    ),
                    _ => Outcome<Worked<decimal>>.Refused("no figure is known for what it can interrupt"),
                }
            );

    private static Outcome<Worked<decimal>> Known(decimal amperes, string working, Source source) =>
        Outcome<Worked<decimal>>.From(new Worked<decimal>(amperes, working, source));
}
