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
    internal static CapacitorRole Role(PartRole? role, bool isAfterValve) =>
        role switch
        {
            PartRole.Reservoir => isAfterValve ? CapacitorRole.ValveReservoir : CapacitorRole.Reservoir,
            PartRole.Decoupling => CapacitorRole.Decoupling,
            PartRole.Coupling => CapacitorRole.Coupling,
            PartRole.Timing => CapacitorRole.Timing,
            PartRole.Filter => CapacitorRole.Filter,
            PartRole.Tuning => CapacitorRole.Tuned,
            PartRole.Snubber => CapacitorRole.Snubber,
            PartRole.MainsSuppression => CapacitorRole.Safety,
            PartRole.Feedback or PartRole.Bias or PartRole.Load or PartRole.Bleeder or PartRole.Other or null => CapacitorRole.Other,
        };

    /// <summary>The form; discs and beads have both leads at one end. Null where nothing is told or the word is 'other'.</summary>
    internal static CapacitorForm? Form(PartForm? form) =>
        form switch
        {
            PartForm.Axial => CapacitorForm.Axial,
            PartForm.Radial or PartForm.Disc or PartForm.Bead => CapacitorForm.Radial,
            PartForm.SnapIn => CapacitorForm.SnapIn,
            PartForm.Can => CapacitorForm.TwistLock,
            PartForm.Screw => CapacitorForm.Screw,
            PartForm.Chip => CapacitorForm.Chip,
            PartForm.Other or null => null,
        };

    /// <summary>The safety class.</summary>
    internal static SafetyClass Safety(Written<SafetyClass>? safety) => safety?.Value ?? SafetyClass.None;

    /// <summary>Whether the voltage across a part of these values may change its sign.</summary>
    internal static bool IsBipolar(IFitPart values) => values.Kind.Value.IsBipolar || values.Polarity is { Value: PartPolarity.Bipolar };

    /// <summary>A length in millimetre.</summary>
    internal static decimal? Millimetres(Written<Quantity>? length) => length?.Value.Value * MetresToMillimetres;
}
