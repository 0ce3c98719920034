using Ohmstead.Assessment.History;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>What to look for where the drawer has nothing: the need of a place in words.</summary>
public static class PlaceNeed
{
    /// <summary>The lines, in the order in which a person looks through a list of parts.</summary>
    public static IReadOnlyList<NeedLine> Describe(FitPlace place) =>
        place.Capacitor is { } capacitor ? [.. CapacitorNeed.Lines(capacitor)] : [.. Plain(place.Values)];

    private static IEnumerable<NeedLine> Plain(IFitPart values)
    {
        yield return Line(FitAspects.Kind, PartWords.Describe(values));
        if (values.Resistance is { } ohms)
        {
            var range = new Interval(values.Low?.Value, values.High?.Value);
            range = range is { Lower: null, Upper: null } && values.Tolerance is { } tolerance ? tolerance.Value.Apply(ohms.Value) : range;
            yield return new(FitAspects.Value, PreferredWords.Describe(ohms.Value, range), PreferredWords.Source);
        }

        if (values.Tolerance is { } asked)
        {
            yield return Line(FitAspects.Tolerance, $"{asked.Value} or closer");
        }

        foreach (
            var (aspect, rating) in new[]
            {
                (FitAspects.Power, values.Power),
                (FitAspects.Current, values.Current),
                (FitAspects.Voltage, values.RatedVoltage),
                (FitAspects.Temperature, values.Temperature),
            }
        )
        {
            if (rating is not null)
            {
                yield return Line(
                    aspect,
                    IsExact(values.Kind.Value, aspect)
                        ? $"{QuantityText.Format(rating.Value)}, neither less nor more"
                        : $"{QuantityText.Format(rating.Value)} or more"
                );
            }
        }

        if (values.Kind.Value == PartKinds.Fuse)
        {
            yield return Line(
                FitAspects.Speed,
                values.Speed is { } speed
                    ? $"{speed.Text}, no other"
                    : "not known: slow or quick is not written, look at the cap of the original or at the drawing"
            );
            yield return Line(
                FitAspects.Breaking,
                values.Breaking is { } breaking ? $"{breaking.Text} or higher" : "not known: on the mains take H where it is not written"
            );
            if (values.Standard is { } standard)
            {
                yield return Line(FitAspects.Standard, $"rated by {standard.Text}, no other");
            }

            yield return Line(FitAspects.Size, values.Size?.Text ?? "what the holder takes");
        }

        if (values.Material is { } material && values.Kind.Value == PartKinds.Cell)
        {
            yield return Line(
                FitAspects.Kind,
                $"{material.Text}, no other chemistry" + (values.Cells is { } cells ? $"; {cells.Text} in series" : string.Empty)
            );
        }

        if (values.Type is { } type)
        {
            yield return Line(FitAspects.Type, type.Value);
        }
    }

    private static bool IsExact(PartKind kind, string aspect) =>
        aspect == FitAspects.Voltage ? kind.Voltage == VoltageMeaning.Given : kind == PartKinds.Fuse && aspect == FitAspects.Current;

    private static NeedLine Line(string aspect, string words) => new(aspect, words, Source.CommonPractice);
}
