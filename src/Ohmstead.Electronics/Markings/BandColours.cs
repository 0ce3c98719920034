using System.Collections.Immutable;
using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>Reads the names of colours and knows what each is worth as a digit and as a multiplier (IEC 60062).</summary>
public static class BandColours
{
    /// <summary>The colours named in a text, between spaces, hyphens, commas or slashes: "yellow violet red gold",
    /// "brown-black-red".</summary>
    public static Parsed<ImmutableArray<BandColour>> Parse(ReadOnlySpan<char> text)
    {
        var colours = ImmutableArray.CreateBuilder<BandColour>();
        foreach (var range in text.SplitAny(' ', '-', ',', '/'))
        {
            var name = text[range];
            if (name.IsEmpty)
                continue;
            if (Named(name) is not { } colour)
                return Parsed<ImmutableArray<BandColour>>.Failed(
                    new ParseFault(
                        ParseFaultKind.NotUnderstood,
                        range.Start.Value,
                        name.Length,
                        $"'{Excerpt.From(name)}' is no band colour, expected black to white, gold, silver or pink",
                        null
                    )
                );
            colours.Add(colour);
        }

        return colours.Count > 0
            ? Parsed<ImmutableArray<BandColour>>.From(colours.ToImmutable())
            : Parsed<ImmutableArray<BandColour>>.Failed(
                new ParseFault(ParseFaultKind.Empty, 0, text.Length, "no colour is written, expected such as yellow violet red gold", null)
            );
    }

    /// <summary>The digit of a colour, or null for gold, silver and pink.</summary>
    public static int? Digit(BandColour colour) => colour <= BandColour.White ? (int)colour : null;

    /// <summary>The power of ten of a colour as a multiplier: 0 for black, -1 gold, -2 silver, -3 pink.</summary>
    public static int Power(BandColour colour) =>
        colour switch
        {
            BandColour.Gold => -1,
            BandColour.Silver => -2,
            BandColour.Pink => -3,
            _ => (int)colour,
        };

    /// <summary>The name of a colour in lower case.</summary>
    public static string Name(BandColour colour) =>
        colour switch
        {
            BandColour.Black => "black",
            BandColour.Brown => "brown",
            BandColour.Red => "red",
            BandColour.Orange => "orange",
            BandColour.Yellow => "yellow",
            BandColour.Green => "green",
            BandColour.Blue => "blue",
            BandColour.Violet => "violet",
            BandColour.Grey => "grey",
            BandColour.White => "white",
            BandColour.Gold => "gold",
            BandColour.Silver => "silver",
            _ => "pink",
        };

    /// <summary>The value of digits and a multiplier, or null when a colour has no digit or the first digit is 0.</summary>
    internal static decimal? Value(ReadOnlySpan<BandColour> digits, BandColour multiplier)
    {
        var number = 0m;
        foreach (var colour in digits)
        {
            if (Digit(colour) is not { } digit || (digit == 0 && number == 0m))
                return null;
            number = (number * 10m) + digit;
        }

        return number * DecimalMath.PowerOfTen(Power(multiplier));
    }

    private static BandColour? Named(ReadOnlySpan<char> name)
    {
        if (System.Text.Ascii.EqualsIgnoreCase(name, "gray"))
            return BandColour.Grey;
        if (System.Text.Ascii.EqualsIgnoreCase(name, "purple"))
            return BandColour.Violet;
        for (var colour = BandColour.Black; colour <= BandColour.Pink; colour++)
        {
            if (System.Text.Ascii.EqualsIgnoreCase(name, Name(colour)))
                return colour;
        }

        return null;
    }
}
