using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The dielectric and build of a film or paper capacitor, from the letters printed on it.</summary>
/// <param name="Letters">The letters: MKT.</param>
/// <param name="Dielectric">The dielectric: polyester.</param>
/// <param name="IsMetallised">True when the electrodes are metal on the dielectric, which heals itself; false for foil.</param>
/// <param name="Source">Where the letters come from.</param>
public sealed record FilmDielectric(string Letters, string Dielectric, bool IsMetallised, Source Source)
{
    private static readonly Source Standard = Source.Practice("letters of DIN 41379 as the trade uses them");

    /// <summary>Reads the letters.</summary>
    public static Parsed<FilmDielectric> Parse(ReadOnlySpan<char> text)
    {
        FilmDielectric? found = text switch
        {
            "KS" => new("KS", "polystyrene", false, Standard),
            "KP" => new("KP", "polypropylene", false, Standard),
            "KT" => new("KT", "polyester", false, Standard),
            "MKT" => new("MKT", "polyester", true, Standard),
            "MKC" => new("MKC", "polycarbonate", true, Standard),
            "MKP" => new("MKP", "polypropylene", true, Standard),
            "MP" => new("MP", "paper", true, Source.FromMemory("DIN 41379")),
            _ => null,
        };
        return found is not null
            ? Parsed<FilmDielectric>.From(found)
            : Parsed<FilmDielectric>.Failed(
                new ParseFault(
                    text.IsEmpty ? ParseFaultKind.Empty : ParseFaultKind.NotUnderstood,
                    0,
                    text.Length,
                    $"'{Excerpt.From(text)}' names no dielectric, expected KS, KP, KT, MKT, MKC, MKP or MP",
                    null
                )
            );
    }
}
