using Ohmstead.Electronics.Capacitors;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The figures of a capacitor that stands on the mains, by its kind, class and form.</summary>
internal static class SuppressorFigures
{
    /// <summary>The figures, or null for a part that does not stand there or whose capacitance is not known.</summary>
    internal static SuppressionFigures? For(IMarkedPart part) =>
        Stands(part) && part.Capacitance is { Value.Value: > 0m and var farads }
            ? SuppressionFigures.For(
                IsCeramic(part),
                part.Kind.Value.Capacitor,
                part.ClassOfSuppressor is { } told && told.Value.IsY(),
                farads
            )
            : null;

    /// <summary>Whether a part stands on the mains.</summary>
    internal static bool Stands(IMarkedPart part) =>
        part.ClassOfSuppressor is not null || part.RoleOfSuppressor is not null || part.Kind.Value == PartKinds.SuppressionCapacitor;

    // A disc is of ceramic; a kind that names its dielectric is what it says; the rest is not written.
    private static bool? IsCeramic(IMarkedPart part) =>
        part.FormOfSuppressor is { Value: PartForm.Disc }
        || part.Kind.Value == PartKinds.CeramicClass1
        || part.Kind.Value == PartKinds.CeramicClass2
            ? true
        : part.Kind.Value == PartKinds.SuppressionCapacitor ? null
        : false;
}
