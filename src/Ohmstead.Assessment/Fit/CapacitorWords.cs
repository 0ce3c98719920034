using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>The words of a record about a capacitor, as the library that judges capacitors takes them.</summary>
internal static class CapacitorWords
{
    private const decimal MetresToMillimetres = 1000m;

    /// <summary>The role; feedback, bias, load and what is not told have no rule of their own.</summary>
    internal static CapacitorRole Role(string? role, bool isAfterValve) => role switch
    {
        "reservoir" => isAfterValve ? CapacitorRole.ValveReservoir : CapacitorRole.Reservoir,
        "decoupling" => CapacitorRole.Decoupling,
        "coupling" => CapacitorRole.Coupling,
        "timing" => CapacitorRole.Timing,
        "filter" => CapacitorRole.Filter,
        "tuning" => CapacitorRole.Tuned,
        "snubber" => CapacitorRole.Snubber,
        "mains suppression" => CapacitorRole.Safety,
        _ => CapacitorRole.Other,
    };

    /// <summary>The form; discs and beads have both leads at one end. Null where nothing is told or the word is 'other'.</summary>
    internal static CapacitorForm? Form(string? form) => form switch
    {
        "axial" => CapacitorForm.Axial,
        "radial" or "disc" or "bead" => CapacitorForm.Radial,
        "snap-in" => CapacitorForm.SnapIn,
        "can" => CapacitorForm.TwistLock,
        "screw" => CapacitorForm.Screw,
        "chip" => CapacitorForm.Chip,
        _ => null,
    };

    /// <summary>The safety class.</summary>
    internal static SafetyClass Safety(string? safety) => safety switch
    {
        "X1" => SafetyClass.X1,
        "X2" => SafetyClass.X2,
        "X3" => SafetyClass.X3,
        "Y1" => SafetyClass.Y1,
        "Y2" => SafetyClass.Y2,
        "Y3" => SafetyClass.Y3,
        "Y4" => SafetyClass.Y4,
        _ => SafetyClass.None,
    };

    /// <summary>Whether the voltage across a part of these values may change its sign.</summary>
    internal static bool IsBipolar(IFitPart values) => values.Kind.Value.IsBipolar || values.Polarity is { Value: "bipolar" };

    /// <summary>A length in millimetre.</summary>
    internal static decimal? Millimetres(Written<Quantity>? length) => length?.Value.Value * MetresToMillimetres;
}
