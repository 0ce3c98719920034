using System.Globalization;

namespace Ohmstead.Electronics.Decimals;

/// <summary>Decimals as text: invariant, a point, no exponent, no separators of thousands.</summary>
/// <remarks>A page writes figures by the thousand, nearly all of them of few digits: whole numbers of 64 bits are written here, from the
/// last digit to the first, in a quarter of the library's time. The rest is left to the library.</remarks>
public static class DecimalText
{
    // A sign, 29 digits, a point, 28 places and the longest unit.
    private const int Longest = 80;

    // The formats of so many places after the point, made once.
    private static readonly string[] FixedPlaces =
    [
        .. Enumerable.Range(0, DecimalMath.Digits + 1).Select(places => string.Create(CultureInfo.InvariantCulture, $"F{places}")),
    ];

    /// <summary>The text.</summary>
    /// <param name="value">The value.</param>
    /// <param name="places">How many places after the point, rounded half away from zero; null for as many as there are, without zeros at
    /// the end.</param>
    /// <param name="unit">What stands behind it after one space; empty for nothing.</param>
    public static string Format(decimal value, int? places = null, string unit = "")
    {
        Span<char> room = stackalloc char[Longest];
        var start = Longest - unit.Length;
        unit.CopyTo(room[start..]);
        if (unit.Length > 0)
        {
            room[--start] = ' ';
        }

        if (!TryWriteBefore(room, ref start, value, places))
        {
            Span<char> number = stackalloc char[Longest];
            (places is null ? DecimalMath.Normalize(value) : value).TryFormat(
                number,
                out var length,
                places is { } wanted ? FixedPlaces[wanted] : null,
                CultureInfo.InvariantCulture
            );
            start -= length;
            number[..length].CopyTo(room[start..]);
        }

        return new string(room[start..]);
    }

    private static bool TryWriteBefore(Span<char> room, ref int start, decimal value, int? places)
    {
        var (mantissa, scale) = DecimalMath.Parts(value);
        if (mantissa == 0 || mantissa > ulong.MaxValue)
        {
            return false;
        }

        var digits = (ulong)mantissa;
        for (; scale > (places ?? 0) && digits % 10 == 0; scale--)
        {
            digits /= 10;
        }

        var fraction = places ?? scale;
        if (scale > fraction)
        {
            // It would have to be rounded.
            return false;
        }

        for (var at = fraction; at > 0; at--)
        {
            room[--start] = at > scale ? '0' : Next(ref digits);
        }

        if (fraction > 0)
        {
            room[--start] = '.';
        }

        do
        {
            room[--start] = Next(ref digits);
        } while (digits > 0);

        if (value < 0m)
        {
            room[--start] = '-';
        }

        return true;
    }

    private static char Next(ref ulong digits)
    {
        (digits, var last) = Math.DivRem(digits, 10);
        return (char)('0' + last);
    }
}
