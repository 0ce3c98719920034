using Ohmstead.Electronics.Decimals;

namespace Ohmstead.Electronics.Quantities;

/// <summary>The digits of a number as they are read one by one: no rounding, no allocation, and an end to counting that is never
/// passed.</summary>
internal struct DigitRun
{
    // So many digits fit into 64 bits, whatever they are.
    private const int NarrowDigits = 19;

    private UInt128 digits;

    /// <summary>How many digits stand after the decimal point.</summary>
    internal int Fraction { get; private set; }

    /// <summary>How many digits stand from the first one that is not 0.</summary>
    internal int Significant { get; private set; }

    /// <summary>How many digits were read in all.</summary>
    internal int Count { get; private set; }

    /// <summary>True when every digit is 0.</summary>
    internal readonly bool IsZero => Significant == 0;

    /// <summary>True when there are more digits than a decimal always holds.</summary>
    internal readonly bool IsTooExact => Significant > DecimalMath.Digits;

    /// <summary>Reads the digits that stand at the index and moves it behind them.</summary>
    internal void Read(ReadOnlySpan<char> text, ref int index, bool fraction)
    {
        for (; index < text.Length && char.IsAsciiDigit(text[index]); index++)
        {
            Count++;
            if (fraction)
                Fraction++;
            if (Significant == 0 && text[index] == '0')
                continue;
            Significant++;
            // Nearly all that is written has few digits, and whole numbers of 64 bits are multiplied many times faster than wider ones.
            if (Significant <= NarrowDigits)
                digits = ((ulong)digits * 10) + (uint)(text[index] - '0');
            else if (!IsTooExact)
                digits = (digits * 10) + (uint)(text[index] - '0');
        }
    }

    /// <summary>The number times a unit, exactly; false when a decimal cannot hold it.</summary>
    internal readonly bool TryScale(int multiplier, int power, out decimal value)
    {
        value = 0m;
        return !IsTooExact && DecimalMath.TryCompose(digits * (uint)multiplier, power - Fraction, out value);
    }
}
