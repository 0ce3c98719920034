using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Notes;

/// <summary>Within what time a fuse must open at an overload, by system and speed; a record seldom says which it is, so all are told.</summary>
public static class FuseNotes
{
    /// <summary>The notes on a fuse of a marked current; none for other parts.</summary>
    public static IReadOnlyList<WorkedNote> Of(PartValues part) =>
        part.Kind.Value == PartKinds.Fuse && part.Current is { Value.Value: > 0m } rated ? [.. FuseFigures.All.Select(row => Note(row, rated)), new(FuseFigures.Meaning, "so many seconds pass above it before it opens", Source.CommonPractice.Text)] : [];

    private static WorkedNote Note(FuseFigures row, Written<Quantity> rated)
    {
        var speed = row.Speed switch { 'F' => " and quick", 'T' => " and slow", _ => string.Empty };
        var current = QuantityText.Format(new Quantity(rated.Value.Value * row.TimesRated, Dimension.Current));
        return new(
            $"if it is rated by {row.System}{speed}, it opens within {QuantityText.Format(new Quantity(row.OpensWithinSeconds, Dimension.Duration))} at {current}",
            $"{QuantityText.Format(new Quantity(row.TimesRated, Dimension.Number))} x {rated.Text} = {current}",
            row.Source.Text);
    }
}
