using Ohmstead.Electronics.Capacitors;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The usual figures of the dielectric of a film or paper capacitor, by its kind.</summary>
internal static class FilmFigures
{
    /// <summary>The figures, or null for any other kind.</summary>
    internal static DielectricFigures? Of(PartKind kind) => kind.IsFilmOrPaper ? kind.Dielectric : null;
}
