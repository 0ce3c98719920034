using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Assessment.Reckoning.Substitution;

/// <summary>What goes into holes.</summary>
internal static class PitchRule
{
    private const decimal MillimetresPerMetre = 1000m;
    private const decimal Forming = 0.5m;

    private static readonly ReckonInput Pitch = ReckonInput
        .Create("pitch", Dimension.Length, "the spacing of the holes")
        .Within(0.0005m, 0.1m);

    internal static ReckonRule Rule { get; } =
        new("pitch", "which radial cans and film parts go into holes so far apart", [Pitch], "pitch=5.08mm", given =>
            Work(given[Pitch] * MillimetresPerMetre)
        )
        {
            Validity = "within the half millimetre that forming the leads makes up for; a sleeve adds 0.5 mm to the diameter",
        };

    private static Outcome<Reckoned> Work(decimal pitch)
    {
        var cans = RadialCan.ForHoles(pitch);
        decimal[] films = [.. RadialCan.FilmPitches.Where(film => Math.Abs(film - pitch) <= Forming)];
        return Answers.All(
            Answers.Said(
                "radial cans",
                cans.Count == 0
                    ? "none of the usual ones"
                    : string.Join(
                        ", ",
                        cans.Select(can =>
                            $"{Text(can.Diameter)} mm with {Text(can.Pitch)} mm spacing and {Text(can.LeadDiameter)} mm leads"
                        )
                    ),
                string.Empty,
                RadialCan.Source
            ),
            Answers.Said(
                "film parts",
                films.Length == 0
                    ? $"none of the usual ones ({string.Join(", ", RadialCan.FilmPitches.Select(Text))} mm)"
                    : string.Join(", ", films.Select(film => Text(film) + " mm spacing")),
                string.Empty,
                new Source("usual spacings of film parts", null, SourceBasis.Memory)
            )
        );
    }

    private static string Text(decimal value) => ShownAs.Plain.Text(value);
}
