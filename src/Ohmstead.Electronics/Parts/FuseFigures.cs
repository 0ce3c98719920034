using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Parts;

/// <summary>How long a fuse carries an overload, and within what time it opens. A rating in one system is not a rating in the
/// other.</summary>
/// <param name="System">The system of the rating.</param>
/// <param name="Speed">The speed; null for any.</param>
/// <param name="Breaking">The breaking capacity; null for any. A slow fuse of high breaking capacity opens much later than one of
/// low.</param>
/// <param name="FromAmperes">The lowest rated current that the figures are for.</param>
/// <param name="ToAmperes">The highest.</param>
/// <param name="TimesRated">The overload as a multiple of the rated current.</param>
/// <param name="CarriesSeconds">It must carry it for so many seconds; null where nothing is asked.</param>
/// <param name="OpensWithinSeconds">It must open within so many seconds; null where nothing is asked.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record FuseFigures(
    FuseSystem System,
    FuseSpeed? Speed,
    FuseBreaking? Breaking,
    decimal FromAmperes,
    decimal ToAmperes,
    decimal TimesRated,
    decimal? CarriesSeconds,
    decimal? OpensWithinSeconds,
    Source Source
)
{
    private const decimal Minute = 60m;
    private const decimal HalfHour = 1800m;
    private const decimal Hour = 3600m;

    private static readonly Source Sheet3 = Source.Published(
        "IEC 60127-2, sheet 3, as quoted in the data sheet Schurter FST",
        "pre-arcing times"
    );
    private static readonly Source Sheet5 = Source.Published(
        "IEC 60127-2, sheet 5, as quoted in the data sheets Schurter SPT and SMD-SPT",
        "pre-arcing times"
    );
    private static readonly Source Quick = Source.Published(
        "IEC 60127-2, sheets 1 and 2, as quoted in a table of times at csdn.net 111836789",
        "pre-arcing times"
    );
    private static readonly Source American = Source.Published("UL 248-14, as quoted in Littelfuse, Fuseology", "p. 12");

    /// <summary>What a whole fuse does not prove.</summary>
    public const string Meaning = "a whole fuse is no evidence that the current was below its rating";

    /// <summary>The figures known here. Of M, FF and TT, and of enhanced breaking capacity, none is.</summary>
    public static IReadOnlyList<FuseFigures> All { get; } =
    [
        .. Iec(
            FuseSpeed.F,
            null,
            0.032m,
            0.1m,
            Quick,
            (1.5m, Hour, null),
            (2.1m, null, HalfHour),
            (2.75m, 0.01m, 0.5m),
            (4m, 0.003m, 0.1m),
            (10m, null, 0.020m)
        ),
        .. Iec(
            FuseSpeed.F,
            null,
            0.125m,
            10m,
            Quick,
            (1.5m, Hour, null),
            (2.1m, null, HalfHour),
            (2.75m, 0.05m, 2m),
            (4m, 0.01m, 0.3m),
            (10m, null, 0.020m)
        ),
        .. Iec(
            FuseSpeed.T,
            FuseBreaking.L,
            0.05m,
            0.1m,
            Sheet3,
            (1.5m, Hour, null),
            (2.1m, null, 2m * Minute),
            (2.75m, 0.2m, 10m),
            (4m, 0.04m, 3m),
            (10m, 0.01m, 0.3m)
        ),
        .. Iec(
            FuseSpeed.T,
            FuseBreaking.L,
            0.125m,
            6.3m,
            Sheet3,
            (1.5m, Hour, null),
            (2.1m, null, 2m * Minute),
            (2.75m, 0.6m, 10m),
            (4m, 0.15m, 3m),
            (10m, 0.02m, 0.3m)
        ),
        .. Iec(
            FuseSpeed.T,
            FuseBreaking.L,
            8m,
            20m,
            Sheet3,
            (1.5m, HalfHour, null),
            (2.1m, null, 2m * Minute),
            (2.75m, 0.6m, 10m),
            (4m, 0.15m, 3m),
            (10m, 0.02m, 0.3m)
        ),
        .. Iec(
            FuseSpeed.T,
            FuseBreaking.H,
            0.5m,
            0.8m,
            Sheet5,
            (1.5m, Hour, null),
            (2.1m, null, HalfHour),
            (2.75m, 0.25m, 80m),
            (4m, 0.05m, 5m),
            (10m, 0.005m, 0.15m)
        ),
        .. Iec(
            FuseSpeed.T,
            FuseBreaking.H,
            1m,
            3.15m,
            Sheet5,
            (1.5m, Hour, null),
            (2.1m, null, HalfHour),
            (2.75m, 0.75m, 80m),
            (4m, 0.095m, 5m),
            (10m, 0.01m, 0.15m)
        ),
        .. Iec(
            FuseSpeed.T,
            FuseBreaking.H,
            4m,
            16m,
            Sheet5,
            (2.1m, null, HalfHour),
            (2.75m, 0.75m, 80m),
            (4m, 0.15m, 5m),
            (10m, 0.02m, 0.15m)
        ),
        new(FuseSystem.UL, null, null, 0m, 60m, 1.35m, null, Hour, American),
        new(FuseSystem.UL, null, null, 0m, 30m, 2m, null, 2m * Minute, American),
        new(FuseSystem.UL, null, null, 35m, 60m, 2m, null, 4m * Minute, American),
    ];

    /// <summary>The figures of a rated current, of those that a fuse may be: where speed, breaking capacity or system is not known, of
    /// each.</summary>
    public static IEnumerable<FuseFigures> For(decimal ratedAmperes, FuseSystem? system, FuseSpeed? speed, FuseBreaking? breaking) =>
        All.Where(row =>
            ratedAmperes >= row.FromAmperes
            && ratedAmperes <= row.ToAmperes
            && (system is null || row.System == system)
            && (speed is null || row.Speed is null || row.Speed == speed)
            && (
                breaking is null
                || (row.System == FuseSystem.IEC && (row.Breaking is null ? breaking != FuseBreaking.E : row.Breaking == breaking))
            )
        );

    /// <summary>Why times or breaking capacity of a fuse are not known here, or null where they are: no figure of another stands in for
    /// them.</summary>
    public static string? WhyNone(FuseSystem? system, FuseSpeed? speed, FuseBreaking? breaking) =>
        (system, speed, breaking) switch
        {
            (FuseSystem.UL, _, _) => null,
            (_, FuseSpeed.FF or FuseSpeed.M or FuseSpeed.TT, _) =>
                $"no source at hand has times for {speed}, {FuseLetters.Words(speed.Value)}: they differ by maker",
            (_, _, FuseBreaking.E) => "no source at hand has times and breaking capacity for E, enhanced",
            _ => null,
        };

    /// <summary>What current it can interrupt at 250 V a.c., in ampere; refused where no figure is known.</summary>
    public static Outcome<Worked<decimal>> BreaksAmperes(FuseSystem system, FuseBreaking? breaking, decimal ratedAmperes) =>
        FuseBreakingCapacity.For(system, breaking, ratedAmperes);

    /// <summary>What it does at its overload, in words: "opens within 2 min", "carries it for 20 ms and opens within 300 ms".</summary>
    public string Does =>
        (CarriesSeconds, OpensWithinSeconds) switch
        {
            ({ } least, { } most) => $"carries it for {Time(least)} and opens within {Time(most)}",
            ({ } least, null) => $"carries it for {Time(least)}",
            (null, { } most) => $"opens within {Time(most)}",
            _ => "does as it likes",
        };

    private static string Time(decimal seconds) => QuantityText.Format(new Quantity(seconds, Dimension.Duration));

    private static IEnumerable<FuseFigures> Iec(
        FuseSpeed speed,
        FuseBreaking? breaking,
        decimal from,
        decimal to,
        Source source,
        params (decimal Times, decimal? Carries, decimal? Opens)[] rows
    ) => rows.Select(row => new FuseFigures(FuseSystem.IEC, speed, breaking, from, to, row.Times, row.Carries, row.Opens, source));
}
