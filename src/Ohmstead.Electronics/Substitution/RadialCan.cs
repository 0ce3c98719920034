namespace Ohmstead.Electronics.Substitution;

/// <summary>The usual lead spacing of radial cans. A sleeve adds 0.5 mm to the diameter and 1 to 2 mm to the length.</summary>
/// <param name="Diameter">Can diameter in millimetre.</param>
/// <param name="Pitch">Lead spacing in millimetre.</param>
/// <param name="LeadDiameter">Lead diameter in millimetre, the thinner where two are usual.</param>
public sealed record RadialCan(decimal Diameter, decimal Pitch, decimal LeadDiameter)
{
    /// <summary>Where the figures come from; the sizes 6.3, 10 and from 20 mm up are from memory.</summary>
    public static Source Source { get; } =
        Source.Published("KEMET ESY taping table; Illinois Capacitor suffix list", "lead spacing, in part from memory");

    /// <summary>The series.</summary>
    public static IReadOnlyList<RadialCan> All { get; } =
    [
        new(4m, 1.5m, 0.45m),
        new(5m, 2.0m, 0.5m),
        new(6.3m, 2.5m, 0.5m),
        new(8m, 3.5m, 0.5m),
        new(10m, 5.0m, 0.6m),
        new(12.5m, 5.0m, 0.6m),
        new(16m, 7.5m, 0.8m),
        new(18m, 7.5m, 0.8m),
        new(20m, 10.0m, 0.8m),
        new(22m, 10.0m, 0.8m),
        new(25m, 12.5m, 0.8m),
    ];

    /// <summary>The pin spacing of snap-in cans of 20 to 40 mm, in millimetre (from memory).</summary>
    public const decimal SnapInPitch = 10.0m;

    /// <summary>The usual lead spacings of film parts, in millimetre (from memory).</summary>
    public static IReadOnlyList<decimal> FilmPitches { get; } = [5m, 7.5m, 10m, 15m, 22.5m, 27.5m, 37.5m];

    /// <summary>The cans whose leads go into holes so far apart, within the half millimetre that forming makes up for.</summary>
    public static IReadOnlyList<RadialCan> ForHoles(decimal pitch) => [.. All.Where(c => Math.Abs(c.Pitch - pitch) <= 0.5m)];
}
