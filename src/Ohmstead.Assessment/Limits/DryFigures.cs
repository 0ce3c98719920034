using Ohmstead.Electronics.Capacitors;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The usual figures of the dielectric of a dry capacitor, by its kind and its material.</summary>
internal static class DryFigures
{
    /// <summary>The figures, or null for any other kind.</summary>
    internal static DielectricFigures? Of(IMarkedPart part) => part.Kind.Value switch
    {
        "polyester film" => DielectricFigures.Polyester,
        "polypropylene film" => DielectricFigures.Polypropylene,
        "polystyrene film" => DielectricFigures.Polystyrene,
        "polycarbonate film" => DielectricFigures.Polycarbonate,
        "paper" => DielectricFigures.PaperInWaxOrOil,
        "metallised paper" => DielectricFigures.MetallisedPaper,
        "mica" => DielectricFigures.SilverMica,
        "ceramic class 1" => DielectricFigures.CeramicClass1,
        "ceramic class 2" => part.Material?.Value switch
        {
            "X7R" => DielectricFigures.CeramicX7R,
            "Z5U" or "Y5V" => DielectricFigures.CeramicZ5U,
            _ => DielectricFigures.CeramicClass2,
        },
        _ => null,
    };

    /// <summary>Whether a part is of ceramic or mica, whose loss does not go with frequency as that of film does.</summary>
    internal static bool IsCeramicOrMica(IMarkedPart part) => part.Kind.Value is "ceramic class 1" or "ceramic class 2" or "mica";
}
