using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Assessment.Fit;

/// <summary>What to look for in the build of a capacitor: form, lead spacing, size.</summary>
internal static class BuildNeed
{
    internal static IEnumerable<NeedLine> Lines(CapacitorPlace place)
    {
        if (place.Form is { } form)
        {
            yield return new(FitAspects.Form, Words(form), Source.CommonPractice);
        }

        if (place.Pitch is { } pitch)
        {
            yield return Pitch(place, pitch);
        }

        string?[] size =
        [
            place.OriginalDiameter is { } diameter ? $"diameter {Number(diameter)} mm" : null,
            place.OriginalHeight is { } height ? $"height {Number(height)} mm" : null,
        ];
        if (size.Any(words => words is not null))
        {
            yield return new(
                FitAspects.Size,
                $"{string.Join(", ", size.OfType<string>())} as the original; whether there is room for more is not written",
                Source.CommonPractice
            );
        }
    }

    private static NeedLine Pitch(CapacitorPlace place, decimal pitch)
    {
        var holes = $"holes {Number(pitch)} mm apart";
        var isCan = place.Form == CapacitorForm.Radial && place.Kind is CapacitorKind.AluminiumWet or CapacitorKind.Polymer;
        var cans = isCan ? RadialCan.ForHoles(pitch) : [];
        return cans.Count > 0
            ? new(
                FitAspects.Pitch,
                $"{holes}: cans of {CapacitorNeed.List([.. cans.Select(can => Number(can.Diameter))], " or ")} mm",
                RadialCan.Source
            )
            : new(
                FitAspects.Pitch,
                isCan ? $"{holes}: no usual can has that lead spacing, its leads must be formed" : holes,
                isCan ? RadialCan.Source : Source.CommonPractice
            );
    }

    private static string Words(CapacitorForm form) =>
        form switch
        {
            CapacitorForm.Radial => "radial, both leads at one end",
            CapacitorForm.Axial => "axial, a lead at each end",
            CapacitorForm.SnapIn => "snap-in",
            CapacitorForm.Screw => "screw terminals",
            CapacitorForm.TwistLock => "a can for a mounting of its own",
            _ => "surface mounted",
        };

    private static string Number(decimal value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
