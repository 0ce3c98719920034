using Ohmstead.Electronics.Capacitors;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The usual figures of the dielectric of a dry capacitor, by its kind, and of ceramic by its material.</summary>
internal static class DryFigures
{
    /// <summary>The figures, or null for any other kind.</summary>
    internal static DielectricFigures? For(IMarkedPart part) =>
        part.Kind.Value != PartKinds.CeramicClass2
            ? part.Kind.Value.Dielectric
            : part.Material?.Value.Ceramic ?? DielectricFigures.CeramicClass2;

    /// <summary>Whether a part is of ceramic or mica, whose loss does not go with frequency as that of film does.</summary>
    internal static bool IsCeramicOrMica(IMarkedPart part) => !part.Kind.Value.IsFilmOrPaper && For(part) is not null;
}
