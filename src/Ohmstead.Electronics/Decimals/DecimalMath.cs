using System.Numerics;

namespace Ohmstead.Electronics.Decimals;

/// <summary>Mathematics on decimals, for limits: a reading exactly on its limit must be seen to be on it, which binary fractions cannot
/// promise.</summary>
public static class DecimalMath
{
    /// <summary>The most decimal digits that a decimal always holds exactly, and the most decimal places it can have.</summary>
    public const int Digits = 28;

    /// <summary>The ratio of a circle's circumference to its diameter, rounded to 28 decimal places.</summary>
    public const decimal Pi = 3.1415926535897932384626433833m;

    private static readonly UInt128 Largest = (UInt128.One << 96) - 1;
    private static readonly UInt128 LargestTenth = Largest / 10;

    // From 10^-28 to 10^28: every quantity that is written looks for its prefix among them.
    private static readonly decimal[] Powers =
    [
        .. Enumerable
            .Range(-Digits, (2 * Digits) + 1)
            .Select(power => TryCompose(UInt128.One, power, out var value) ? value : throw new InvalidOperationException()),
    ];

    // From 1 to 10^28, the last that 96 bits hold.
    private static readonly UInt128[] WholePowers =
    [
        .. Enumerable.Range(0, Digits + 1).Select(power => (UInt128)BigInteger.Pow(10, power)),
    ];

    /// <summary>The square root, rounded half away from zero to as many decimal places as fit, 28 at most: an exact root comes out
    /// exact.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative.</exception>
    public static decimal Sqrt(decimal value)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        var (mantissa, scale) = Parts(value);

        // The root of m / 10^s to p places is the whole root of m * 10^(2p - s); one more place than is kept decides the rounding.
        for (var places = Digits; ; places--)
        {
            var root = WholeRoot((BigInteger)mantissa * BigInteger.Pow(10, (2 * (places + 1)) - scale));
            var rounded = (root + 5) / 10;
            if (rounded <= (BigInteger)Largest && TryCompose((UInt128)rounded, -places, out var result))
                return Normalize(result);
        }
    }

    /// <summary>The same value without zeros at the end of its fraction: 391.00 becomes 391.</summary>
    public static decimal Normalize(decimal value)
    {
        var (mantissa, scale) = Parts(value);
        if (scale == 0)
            return value;
        // Nearly all that is written has few digits, and whole numbers of 64 bits are divided many times faster than decimals.
        if (mantissa > ulong.MaxValue)
            return value / 1.000000000000000000000000000000000m;
        var digits = (ulong)mantissa;
        while (scale > 0 && digits % 10 == 0)
        {
            digits /= 10;
            scale--;
        }

        return new decimal(unchecked((int)digits), unchecked((int)(digits >> 32)), 0, value < 0m, (byte)scale);
    }

    /// <summary>The value rounded half away from zero to a number of significant digits, from 1 to 28.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number of digits is not 1 to 28.</exception>
    public static decimal RoundSignificant(decimal value, int digits)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(digits, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(digits, Digits);
        if (value == 0m)
            return 0m;
        var places = digits - 1 - Exponent(value);
        if (places is >= 0 and <= Digits)
            return Math.Round(value, places, MidpointRounding.AwayFromZero);
        if (places > Digits)
            return value;
        var unit = PowerOfTen(-places);
        return Math.Round(value / unit, 0, MidpointRounding.AwayFromZero) * unit;
    }

    /// <summary>The power of ten of the first significant digit: 0 for 4.7, 3 for 4700, -1 for 0.47, and 0 for zero.</summary>
    public static int Exponent(decimal value)
    {
        var (mantissa, scale) = Parts(value);
        return mantissa == 0 ? 0 : DigitCount(mantissa) - 1 - scale;
    }

    /// <summary>Ten to a whole power from -28 to 28, exactly.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The power is outside -28 to 28.</exception>
    public static decimal PowerOfTen(int power) =>
        power is >= -Digits and <= Digits
            ? Powers[power + Digits]
            : throw new ArgumentOutOfRangeException(nameof(power), power, "A decimal holds 10^-28 to 10^28.");

    /// <summary>The value times ten to a power, when that can be held exactly; only the decimal point moves.</summary>
    public static bool TryShift(decimal value, int power, out decimal shifted)
    {
        var (mantissa, scale) = Parts(value);
        if (!TryCompose(mantissa, power - scale, out shifted))
            return false;
        if (value < 0m)
            shifted = -shifted;
        return true;
    }

    /// <summary>Puts together digits times ten to a power, exactly; false when a decimal cannot hold all of it.</summary>
    /// <param name="digits">The digits as a whole number.</param>
    /// <param name="power">The power of ten. A negative one becomes the number of decimal places, so zeros at the end are kept.</param>
    /// <param name="value">The value, or 0 when it does not fit.</param>
    public static bool TryCompose(UInt128 digits, int power, out decimal value)
    {
        value = 0m;
        if (digits == 0)
            return true;

        // Nearly all that is written has few digits, and whole numbers of 64 bits are multiplied many times faster than wider ones.
        for (; power > 0 && digits <= ulong.MaxValue / 10; power--)
            digits = (ulong)digits * 10;
        for (; power > 0; power--)
        {
            if (digits > LargestTenth)
                return false;
            digits *= 10;
        }

        while (-power > Digits || digits > Largest)
        {
            if (power >= 0 || digits % 10 != 0)
                return false;
            digits /= 10;
            power++;
        }

        var low = unchecked((ulong)digits);
        value = new decimal(
            unchecked((int)low),
            unchecked((int)(low >> 32)),
            unchecked((int)(uint)(ulong)(digits >> 64)),
            false,
            (byte)-power
        );
        return true;
    }

    private static int DigitCount(UInt128 mantissa)
    {
        // 1233 / 4096 is the logarithm of two: bits become digits, one too few where the number has reached the next power of ten.
        var least = (128 - (int)UInt128.LeadingZeroCount(mantissa)) * 1233 / 4096;
        return least + (mantissa >= WholePowers[least] ? 1 : 0);
    }

    /// <summary>The digits of a value as a whole number without its sign, and how many of them are places.</summary>
    internal static (UInt128 Mantissa, int Scale) Parts(decimal value)
    {
        Span<int> bits = stackalloc int[4];
        decimal.GetBits(value, bits);
        var low = unchecked((ulong)(uint)bits[1] << 32 | (uint)bits[0]);
        return (new UInt128(unchecked((uint)bits[2]), low), (bits[3] >> 16) & 0xFF);
    }

    /// <summary>The largest whole number whose square is not above the value, by Newton's iteration from above.</summary>
    private static BigInteger WholeRoot(BigInteger value)
    {
        if (value.IsZero)
            return value;
        var root = BigInteger.One << (int)((value.GetBitLength() + 1) / 2);
        while (true)
        {
            var next = (root + (value / root)) >> 1;
            if (next >= root)
                return root;
            root = next;
        }
    }
}
