using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Substitution;

/// <summary>A place on a board and what it asks of a capacitor. What is not known is null and leads to a doubt, never to a guess.</summary>
/// <param name="Role">What it does there.</param>
/// <param name="Kind">The kind that stood there.</param>
/// <param name="Farads">Its nominal capacitance.</param>
/// <param name="RatedVolts">The voltage on its mark, or null when it has none that can be read.</param>
public sealed record CapacitorPlace(CapacitorRole Role, CapacitorKind Kind, decimal Farads, decimal? RatedVolts)
{
    /// <summary>The lower tolerance of the original as a fraction, 0.2 for -20 %.</summary>
    public decimal ToleranceBelow { get; init; } = 0.2m;

    /// <summary>The upper tolerance of the original as a fraction, 0.5 for +50 %.</summary>
    public decimal ToleranceAbove { get; init; } = 0.2m;

    /// <summary>The least capacitance with which the circuit works, in farad.</summary>
    public decimal? LeastFarads { get; init; }

    /// <summary>The most capacitance with which the circuit works, in farad.</summary>
    public decimal? MostFarads { get; init; }

    /// <summary>The highest voltage that occurs, d.c. and ripple peak without load, in volt.</summary>
    public decimal? WorstVolts { get; init; }

    /// <summary>The temperature rating of the original in degrees Celsius.</summary>
    public decimal? CelsiusRating { get; init; }

    /// <summary>The ripple current it carries or was rated for, in ampere r.m.s. at the frequency of the offers' ratings.</summary>
    public decimal? RippleAmperes { get; init; }

    /// <summary>The largest ESR that works, in ohm at the frequency of the offers' figures.</summary>
    public decimal? LargestEsrOhms { get; init; }

    /// <summary>The least ESR that works, where a regulator or loop needs some, in ohm.</summary>
    public decimal? LeastEsrOhms { get; init; }

    /// <summary>The most capacitance the valve rectifier before it may feed, in farad.</summary>
    public decimal? LargestInputFarads { get; init; }

    /// <summary>True when the voltage across it changes sign.</summary>
    public bool IsBipolar { get; init; }

    /// <summary>The safety class it must have.</summary>
    public SafetyClass SafetyClass { get; init; }

    /// <summary>The a.c. voltage it must be rated for, in volt r.m.s.</summary>
    public decimal? AlternatingVolts { get; init; }

    /// <summary>
    /// True when it is on the mains: its role says so, or it has a safety class, or it is a suppression capacitor, whatever its role says.
    /// Nobody fits one of those anywhere else.
    /// </summary>
    public bool IsOnMains => Role == CapacitorRole.Safety || SafetyClass != SafetyClass.None || Kind == CapacitorKind.Suppression;

    /// <summary>The a.c. voltage that a place on the mains asks for, in volt: the mark of the original, or what occurs there where that is
    /// more; null when neither is known.</summary>
    public decimal? MainsVolts =>
        AlternatingVolts ?? (RatedVolts is { } mark && WorstVolts is { } occurs ? Math.Max(mark, occurs) : RatedVolts ?? WorstVolts);

    /// <summary>What it does there, where a place on the mains is one whatever its role says.</summary>
    internal CapacitorRole Duty => IsOnMains ? CapacitorRole.Safety : Role;

    /// <summary>How it is mounted; null when any will do.</summary>
    public CapacitorForm? Form { get; init; }

    /// <summary>The largest diameter or thickness that fits, in millimetre.</summary>
    public decimal? LargestDiameter { get; init; }

    /// <summary>The largest height or length that fits, in millimetre.</summary>
    public decimal? LargestHeight { get; init; }

    /// <summary>The diameter or thickness of the original in millimetre, where the room is not known.</summary>
    public decimal? OriginalDiameter { get; init; }

    /// <summary>The height or length of the original in millimetre, where the room is not known.</summary>
    public decimal? OriginalHeight { get; init; }

    /// <summary>The distance between the holes, in millimetre.</summary>
    public decimal? Pitch { get; init; }
}

/// <summary>How a capacitor is mounted.</summary>
public enum CapacitorForm
{
    /// <summary>Both leads at one end.</summary>
    Radial,

    /// <summary>A lead at each end.</summary>
    Axial,

    /// <summary>Stiff pins that snap into the board.</summary>
    SnapIn,

    /// <summary>Screw terminals.</summary>
    Screw,

    /// <summary>A can with lugs that are twisted.</summary>
    TwistLock,

    /// <summary>Surface mounted.</summary>
    Chip,
}
