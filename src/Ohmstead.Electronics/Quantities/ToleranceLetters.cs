using System.Collections.Immutable;

namespace Ohmstead.Electronics.Quantities;

/// <summary>The letters that stand for a tolerance. Letters that makers and standards use differently keep all their meanings.</summary>
/// <remarks>Source: IEC 60062:2016 clause 5 and EIA-198 (from memory); the other meanings are trade lists, named beside each.</remarks>
public static class ToleranceLetters
{
    private static readonly Source Standard = Source.FromMemory("IEC 60062:2016", "clause 5");
    private static readonly Source Trade = Source.Practice("trade lists");
    private const decimal TenPicofarad = 1e-11m;

    /// <summary>All meanings of a letter for a dimension, the standard's first; empty when it has none.</summary>
    /// <param name="letter">The letter, in upper case.</param>
    /// <param name="dimension">Capacitance, resistance or inductance.</param>
    /// <param name="nominal">The value when known: below 10 pF some letters are picofarads, not per cent.</param>
    public static ImmutableArray<ToleranceMeaning> Meanings(char letter, Dimension dimension, Quantity? nominal = null) =>
        dimension switch
        {
            Dimension.Capacitance => Capacitor(letter, nominal),
            Dimension.Resistance or Dimension.Inductance => Symmetric(letter),
            _ => [],
        };

    /// <summary>The one meaning of a letter, or the fault that says why there is not one.</summary>
    public static Parsed<Tolerance> Read(char letter, Dimension dimension, Quantity? nominal = null)
    {
        var meanings = Meanings(letter, dimension, nominal);
        if (meanings.IsEmpty)
        {
            var upper = char.ToUpperInvariant(letter);
            var known = upper != letter && !Meanings(upper, dimension, nominal).IsEmpty;
            return Failed(
                ParseFaultKind.NotUnderstood,
                $"'{letter}' is no tolerance letter of {DimensionFacts.One(dimension)}, expected one of IEC 60062 or a figure such as "
                    + "±20 %",
                known ? upper.ToString() : null
            );
        }

        if (meanings.Length == 1)
            return Parsed<Tolerance>.From(meanings[0].Tolerance);
        var list = string.Join(" or ", meanings.Select(meaning => $"{meaning.Tolerance} by {meaning.Source}"));
        return Failed(
            ParseFaultKind.Ambiguous,
            $"tolerance '{letter}' can mean {list}",
            string.Join(" or ", meanings.Select(meaning => meaning.Tolerance.ToString()))
        );
    }

    private static ImmutableArray<ToleranceMeaning> Capacitor(char letter, Quantity? nominal)
    {
        var small = nominal is { } value && Math.Abs(value.Value) < TenPicofarad;
        var absolute = letter switch
        {
            'B' => 0.1m,
            'C' => 0.25m,
            'D' => 0.5m,
            'F' => 1m,
            'G' => 2m,
            _ => 0m,
        };
        if (absolute > 0m)
        {
            var picofarads = Picofarads(absolute, Source.FromMemory("IEC 60062:2016", "clause 5, below 10 pF"));
            if (small)
                return [picofarads];
            var percent = Symmetric(letter)[0];

            // F and G from 10 pF up are read as per cent everywhere but on some lists; B, C and D are printed both ways on real parts.
            return nominal is not null && letter is 'F' or 'G'
                ? [percent]
                : [percent, picofarads with { Source = Source.Practice("ceramic lists, at any value") }];
        }

        return letter switch
        {
            'Q' => [Percent(-10m, 30m, Standard)],
            'T' => [Percent(-10m, 50m, Standard)],
            'S' => [Percent(-20m, 50m, Standard)],
            'Z' => [Percent(-20m, 80m, Standard)],
            'Y' => [Percent(-20m, 50m, Trade), Percent(-10m, 100m, Source.Practice("Soviet and Russian lists"))],
            'X' => [Percent(-20m, 40m, Trade)],
            'P' => [.. Symmetric(letter), Percent(0m, 100m, Source.Practice("ceramics and electrolytics"))],
            'W' => [.. Symmetric(letter), Percent(-20m, 40m, Trade), Percent(0m, 200m, Trade)],
            'A' => [Picofarads(0.05m, Source.FromMemory("EIA-198")), Percent(-0.05m, 0.05m, Source.Practice("old colour tables"))],
            'L' => [.. Symmetric(letter), Percent(-15m, 15m, Source.Practice("ceramics"))],
            _ => Symmetric(letter),
        };
    }

    private static ImmutableArray<ToleranceMeaning> Symmetric(char letter) =>
        letter switch
        {
            'A' => [Percent(-0.05m, 0.05m, Source.Practice("old colour tables"))],
            'B' => [Both(0.1m)],
            'C' => [Both(0.25m)],
            'D' => [Both(0.5m)],
            'E' => [Both(0.005m), Percent(-0.25m, 0.25m, Trade), Percent(-0.5m, 0.5m, Trade)],
            'F' => [Both(1m)],
            'G' => [Both(2m)],
            'H' => [Both(3m), Percent(-2.5m, 2.5m, Source.Practice("older film parts"))],
            'J' => [Both(5m)],
            'K' => [Both(10m)],
            'L' => [Both(0.01m)],
            'M' => [Both(20m)],
            'N' => [Both(30m), Percent(-0.05m, 0.05m, Trade)],
            'P' => [Both(0.02m)],
            'W' => [Both(0.05m)],
            _ => [],
        };

    private static ToleranceMeaning Both(decimal percent) => Percent(-percent, percent, Standard);

    private static ToleranceMeaning Percent(decimal lower, decimal upper, Source source) =>
        new(Tolerance.Relative(lower / 100m, upper / 100m), source);

    private static ToleranceMeaning Picofarads(decimal width, Source source) =>
        new(Tolerance.Absolute(-width * 1e-12m, width * 1e-12m, Dimension.Capacitance), source);

    private static Parsed<Tolerance> Failed(ParseFaultKind kind, string message, string? next) =>
        Parsed<Tolerance>.Failed(new ParseFault(kind, 0, 1, message, next));
}
