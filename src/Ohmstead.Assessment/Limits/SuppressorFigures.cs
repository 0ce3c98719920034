using Ohmstead.Electronics.Capacitors;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The figures of a capacitor that stands on the mains, by its kind, class and form.</summary>
internal static class SuppressorFigures
{
    /// <summary>The figures, or null for a part that does not stand there or whose capacitance is not known.</summary>
    internal static SuppressionFigures? Of(IMarkedPart part) => part is { Suppressor: { } told, Capacitance.Value.Value: > 0m and var farads }
        ? SuppressionFigures.Of(IsCeramic(part), part.Kind.Value, told.Value.StartsWith('Y'), farads)
        : null;

    // A disc is of ceramic; a kind that names its dielectric is what it says; the rest is not written.
    private static bool? IsCeramic(IMarkedPart part) => part switch
    {
        { FormOfSuppressor.Value: "disc" } or { Kind.Value: "ceramic class 1" or "ceramic class 2" } => true,
        { Kind.Value: "suppression capacitor" } => null,
        _ => false,
    };
}
