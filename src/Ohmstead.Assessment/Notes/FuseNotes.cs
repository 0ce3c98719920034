using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Notes;

/// <summary>
/// Within what time a fuse must open at an overload, and what it can interrupt, by system, speed and breaking capacity; where the record
/// does not say which it is, all are told.
/// </summary>
public static class FuseNotes
{
    /// <summary>The notes on a fuse of a marked current; none for other parts.</summary>
    public static IReadOnlyList<WorkedNote> Compute(PartValues part)
    {
        if (part.Kind.Value != PartKinds.Fuse || part.Current is not { Value.Value: > 0m } rated)
        {
            return [];
        }

        var (speed, breaking, standard) = (part.Speed?.Value, part.Breaking?.Value, part.Standard?.Value);
        return
        [
            .. FuseFigures
                .For(rated.Value.Value, standard, speed, breaking)
                .Select(row => Note(row, rated, isKnown: standard == FuseSystem.UL || (speed is not null && breaking is not null))),
            .. Breaks(standard, breaking, rated),
            .. Unknown(standard, speed, breaking),
            new(FuseFigures.Meaning, "so many seconds pass above it before it opens", Source.CommonPractice.Text),
        ];
    }

    private static WorkedNote Note(FuseFigures row, Written<Quantity> rated, bool isKnown)
    {
        var current = QuantityText.Format(new Quantity(rated.Value.Value * row.TimesRated, Dimension.Current));
        return new(
            $"{(isKnown ? string.Empty : $"if it is rated by {Words(row)}, ")}it {row.Does} at {current}",
            $"{QuantityText.Format(new Quantity(row.TimesRated, Dimension.Number))} x {rated.Text} = {current}",
            row.Source.Text
        );
    }

    // Nothing is told of what has no figure, rather than the figure of another.
    private static IEnumerable<WorkedNote> Unknown(FuseSystem? standard, FuseSpeed? speed, FuseBreaking? breaking) =>
        FuseFigures.WhyNone(standard, speed, breaking) is { } why
            ? [new(why, "compare the data sheets of both", Source.CommonPractice.Text)]
            : [];

    private static IEnumerable<WorkedNote> Breaks(FuseSystem? standard, FuseBreaking? breaking, Written<Quantity> rated) =>
        (breaking is not null || standard == FuseSystem.UL)
        && FuseFigures.BreaksAmperes(standard ?? FuseSystem.IEC, breaking, rated.Value.Value).Is(out var breaks, out _)
            ?
            [
                new(
                    $"it interrupts {QuantityText.Format(new Quantity(breaks.Value, Dimension.Current))} and no more",
                    breaks.Arithmetic.Text,
                    breaks.Source.Text
                ),
            ]
            : [];

    private static string Words(FuseFigures row)
    {
        string?[] words =
        [
            row.System.ToString(),
            row.Speed is { } speed ? FuseLetters.Words(speed) : null,
            row.Breaking is { } breaking ? FuseLetters.Words(breaking) : null,
        ];
        return string.Join(", ", words.OfType<string>());
    }
}
