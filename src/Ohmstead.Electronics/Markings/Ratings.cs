using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>Ratings as they are printed in words: 3 A, 2 W, 1 H, 12 V. Two characters of them look like a code of voltage.</summary>
internal static class Ratings
{
    private static readonly (Dimension Dimension, char Unit, string What, PrintedOn On)[] Known =
    [
        (Dimension.Current, 'A', "current, as printed", PrintedOn.Fuse | PrintedOn.Inductor | PrintedOn.Other),
        (Dimension.Power, 'W', "power, as printed", PrintedOn.Resistor | PrintedOn.Other),
        (Dimension.Inductance, 'H', "inductance, as printed", PrintedOn.Inductor),
        (Dimension.Voltage, 'V', "voltage, as printed", PrintedOn.Any),
        (Dimension.Frequency, 'z', "frequency, as printed", PrintedOn.Other),
    ];

    internal static IEnumerable<PrintMeaning> Read(string print)
    {
        foreach (var (dimension, unit, what, on) in Known)
        {
            if (print[^1] == unit && QuantityText.Parse(print, dimension).Is(out var rating, out _))
            {
                yield return new(what, QuantityText.Format(rating), null, "figure and unit", Source.CommonPractice) { On = on };
            }
        }

        if (FuseMark.Parse(print).Is(out var fuse, out _))
        {
            yield return new("fuse", Words(fuse.Value), null, fuse.Rule, fuse.Source) { On = PrintedOn.Fuse };
        }
    }

    private static string Words(Fuse fuse)
    {
        string?[] words =
        [
            fuse.Speed?.ToString(),
            fuse.RatedAmperes is { } amperes ? QuantityText.Format(new Quantity(amperes, Dimension.Current)) : null,
            fuse.Breaking?.ToString(),
            fuse.RatedVolts is { } volts ? QuantityText.Format(new Quantity(volts, Dimension.Voltage)) : null,
        ];
        return string.Join(' ', words.OfType<string>());
    }
}
