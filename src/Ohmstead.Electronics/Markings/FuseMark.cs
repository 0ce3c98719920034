using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The print on the cap of a fuse: speed, current, breaking capacity, voltage: T1.6A L 250V, F 500 mA, T315mAH250V.</summary>
/// <remarks>
/// The letter of speed stands before the current, that of breaking capacity behind it. A figure with a point and no unit is in ampere.
/// Source:
/// OPC 40400-1, table 148, for the speeds; makers' data sheets for the rest.
/// </remarks>
public static class FuseMark
{
    private static readonly Source Standard = Source.Published(
        "OPC 40400-1, table 148; data sheets Schurter FST and SPT",
        "letters of speed; L and H behind the current"
    );

    /// <summary>Reads the print: a current with a letter of speed before it, a letter of breaking capacity behind it, or both.</summary>
    public static Parsed<MarkingReading<Fuse>> Parse(ReadOnlySpan<char> text)
    {
        var rest = WithoutBlanks(text).AsSpan();
        var speed = Speed(ref rest);
        var end = 0;
        while (end < rest.Length && (char.IsAsciiDigit(rest[end]) || rest[end] == '.'))
            end++;
        var figure = rest[..end];
        rest = rest[end..];
        var unit =
            rest.StartsWith("mA") ? "mA"
            : rest.StartsWith("A") ? "A"
            : "";
        rest = rest[unit.Length..];
        var breaking = rest.IsEmpty ? null : FuseLetters.Breaking(rest[..1].ToString());
        rest = breaking is null ? rest : rest[1..];
        if (
            (speed is null && breaking is null)
            || (unit.Length == 0 && (speed is null || !figure.Contains('.')))
            || !QuantityText.Parse($"{figure} {(unit.Length == 0 ? "A" : unit)}", Dimension.Current).Is(out var current, out _)
            || current.Value is <= 0m or > 100m
        )
            return Failed(text);
        decimal? volts = null;
        if (!rest.IsEmpty)
        {
            if (!QuantityText.Parse(rest.TrimEnd('~'), Dimension.Voltage).Is(out var rated, out _))
                return Failed(text);
            volts = rated.Value;
        }

        var said = (speed is { } s ? FuseLetters.Words(s) : null, breaking is { } b ? FuseLetters.Words(b) : null);
        var rule = said switch
        {
            ({ } first, { } second) => $"{first}, {second}",
            var (first, second) => first ?? second ?? string.Empty,
        };
        return Parsed<MarkingReading<Fuse>>.From(
            new MarkingReading<Fuse>(
                new Fuse
                {
                    Speed = speed,
                    RatedAmperes = current.Value,
                    Breaking = breaking,
                    RatedVolts = volts,
                },
                rule,
                Standard
            )
        );
    }

    private static FuseSpeed? Speed(ref ReadOnlySpan<char> rest)
    {
        var letters = rest.Length > 2 && rest[0] == rest[1] && rest[0] is 'F' or 'T' ? 2 : 1;
        if (rest.Length <= letters || FuseLetters.Speed(rest[..letters].ToString()) is not { } speed)
            return null;
        rest = rest[letters..];
        return speed;
    }

    private static string WithoutBlanks(ReadOnlySpan<char> text) => text.ToString().Replace(" ", string.Empty, StringComparison.Ordinal);

    private static Parsed<MarkingReading<Fuse>> Failed(ReadOnlySpan<char> text) =>
        Parsed<MarkingReading<Fuse>>.Failed(
            new ParseFault(
                text.IsEmpty ? ParseFaultKind.Empty : ParseFaultKind.NotUnderstood,
                0,
                text.Length,
                $"'{Excerpt.From(text)}' is no print of a fuse, expected such as T1.6A L 250V",
                null
            )
        );
}
