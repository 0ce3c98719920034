using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Substitution;

/// <summary>A capacitor that may go into a place. What is not known of it is null.</summary>
/// <param name="Name">What it is called, for the list.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Farads">Its nominal capacitance.</param>
/// <param name="RatedVolts">Its rated d.c. voltage, or null when it is not known.</param>
public sealed record CapacitorOffer(string Name, CapacitorKind Kind, decimal Farads, decimal? RatedVolts)
{
    /// <summary>Its temperature rating in degrees Celsius.</summary>
    public decimal? CelsiusRating { get; init; }

    /// <summary>Its ripple current rating in ampere r.m.s.</summary>
    public decimal? RippleAmperes { get; init; }

    /// <summary>Its ESR in ohm.</summary>
    public decimal? EsrOhms { get; init; }

    /// <summary>True when it may be used either way round.</summary>
    public bool IsBipolar { get; init; }

    /// <summary>Its safety class.</summary>
    public SafetyClass SafetyClass { get; init; }

    /// <summary>Its rated a.c. voltage in volt r.m.s.</summary>
    public decimal? AlternatingVolts { get; init; }

    /// <summary>The a.c. voltage that it bears across the mains, in volt: what is marked for a.c., else its rated voltage, which on a part
    /// with a class is one.</summary>
    internal decimal? MainsVolts => AlternatingVolts ?? RatedVolts;

    /// <summary>How it is mounted.</summary>
    public CapacitorForm? Form { get; init; }

    /// <summary>Its diameter or thickness in millimetre, sleeve included.</summary>
    public decimal? Diameter { get; init; }

    /// <summary>Its height or length in millimetre.</summary>
    public decimal? Height { get; init; }

    /// <summary>The distance between its leads, in millimetre.</summary>
    public decimal? Pitch { get; init; }
}
