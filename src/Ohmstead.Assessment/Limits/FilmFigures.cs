using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Assessment.Limits;

/// <summary>The usual figures of the dielectric of a film or paper capacitor, by its kind.</summary>
internal static class FilmFigures
{
    /// <summary>The figures, or null for any other kind.</summary>
    internal static DielectricFigures? Of(string kind) => kind switch
    {
        "polyester film" => DielectricFigures.Polyester,
        "polypropylene film" => DielectricFigures.Polypropylene,
        "polystyrene film" => DielectricFigures.Polystyrene,
        "polycarbonate film" => DielectricFigures.Polycarbonate,
        "paper" => DielectricFigures.PaperInWaxOrOil,
        "metallised paper" => DielectricFigures.MetallisedPaper,
        _ => null,
    };
}
