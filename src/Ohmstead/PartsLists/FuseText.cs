using Ohmstead.Electronics.Markings;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.PartsLists;

/// <summary>Reads what a list says of a fuse as it is printed on its cap: T1.6A, F 500 mA L 250 V 5x20.</summary>
internal static class FuseText
{
    /// <summary>The keys of a fuse; null where the words are no print of one.</summary>
    public static IReadOnlyList<(string Key, string Value)>? Read(IReadOnlyList<string> pieces)
    {
        string[] sizes = [.. pieces.Select(Size).OfType<string>()];
        if (sizes.Length > 1 || !FuseMark.Parse(string.Concat(pieces.Where(piece => Size(piece) is null))).Is(out var mark, out _))
        {
            return null;
        }

        (string Key, string? Value)[] values =
        [
            ("current", In(mark.Value.RatedAmperes, Dimension.Current)),
            ("speed", mark.Value.Speed?.ToString()),
            ("breaking", mark.Value.Breaking?.ToString()),
            ("rated_voltage", In(mark.Value.RatedVolts, Dimension.Voltage)),
            ("size", sizes.FirstOrDefault()),
        ];
        return [.. values.Where(value => value.Value is not null).Select(value => (value.Key, value.Value!))];
    }

    /// <summary>The size that a word names (5x20, 6.3x32mm), or null.</summary>
    public static string? Size(string word) =>
        Vocabulary.FuseSizes.FirstOrDefault(size => size.Contains('x', StringComparison.Ordinal) && Plain(word) == Plain(size));

    private static string Plain(string size) =>
        (size.EndsWith("mm", StringComparison.Ordinal) ? size[..^2] : size)
            .Replace(" ", string.Empty, StringComparison.Ordinal)
            .Replace('×', 'x');

    private static string? In(decimal? value, Dimension dimension) =>
        value is { } known ? QuantityText.Format(new Quantity(known, dimension)) : null;
}
