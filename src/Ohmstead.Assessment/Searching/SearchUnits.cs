using System.Collections.Frozen;
using System.Globalization;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Searching;

/// <summary>Quantities as a search compares them: 47 µF, 47uF, 47u and 0.047 mF are one token.</summary>
/// <remarks>
/// A token is the value in the base unit as a whole number without zeros at its end, the power of ten, and a sign for what is measured:
/// <c>=47e-6F</c>. <see cref="QuantityText"/> reads every one. Who types in haste writes 25v and 47UF: capitals are minded only where the
/// letters as typed are a unit.
/// </remarks>
public static class SearchUnits
{
    private static readonly FrozenDictionary<string, SpelledUnit[]> AsWritten = By(unit => unit.Spelling);

    private static readonly FrozenDictionary<string, SpelledUnit[]> InAnyCase = By(unit => unit.Spelling.ToLowerInvariant());

    private static readonly FrozenDictionary<char, CodeLetter[]> Codes = UnitSpellings
        .Codes.GroupBy(code => code.Letter)
        .ToFrozenDictionary(group => group.Key, group => group.ToArray());

    /// <summary>The sign of what is measured.</summary>
    public static string Sign(Dimension dimension) =>
        dimension switch
        {
            Dimension.Number => string.Empty,
            Dimension.Capacitance => "F",
            Dimension.Resistance => "\u03A9",
            Dimension.Inductance => "H",
            Dimension.Voltage => "V",
            Dimension.Current => "A",
            Dimension.Power => "W",
            Dimension.Energy => "J",
            Dimension.Charge => "C",
            Dimension.Frequency => "Hz",
            Dimension.Duration => "s",
            Dimension.Temperature => "\u00B0",
            Dimension.Length => "m",
            Dimension.Ratio => "%",
        };

    /// <summary>Whether letters behind a number may be a unit.</summary>
    public static bool IsUnit(string letters) => AsWritten.ContainsKey(letters) || InAnyCase.ContainsKey(letters.ToLowerInvariant());

    /// <summary>Every quantity that a number and a unit may be; none where the letters are no unit.</summary>
    /// <param name="number">Digits, with a point or not.</param>
    /// <param name="letters">The unit, in plain letters.</param>
    public static IEnumerable<string> Tokens(string number, string letters)
    {
        if (!AsWritten.TryGetValue(letters, out var units) && !InAnyCase.TryGetValue(letters.ToLowerInvariant(), out units))
        {
            yield break;
        }

        foreach (var unit in units)
        {
            if (QuantityText.TryRead(number + unit.Spelling, unit.Dimension, unit.Print, out var quantity))
            {
                yield return Token(quantity);
            }
        }
    }

    /// <summary>Every quantity that a code such as 4k7 may be.</summary>
    /// <param name="whole">The digits before the letter.</param>
    /// <param name="letter">The letter.</param>
    /// <param name="rest">The digits behind it.</param>
    /// <param name="letters">The unit behind the code; empty where there is none.</param>
    public static IEnumerable<string> CodeTokens(string whole, char letter, string rest, string letters)
    {
        foreach (var code in Codes.GetValueOrDefault(letter, []))
        {
            if (QuantityText.TryRead($"{whole}{letter}{rest}{letters}", code.Dimension, UnitPrint.Unstated, out var quantity))
            {
                yield return Token(quantity);
            }
        }
    }

    /// <summary>The token of a quantity.</summary>
    public static string Token(Quantity quantity)
    {
        // A decimal is written without an exponent and with all places that it holds.
        var digits = Math.Abs(quantity.Value).ToString(CultureInfo.InvariantCulture);
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        var power = point < 0 ? 0 : point + 1 - digits.Length;
        var whole = digits.Replace(".", string.Empty, StringComparison.Ordinal).TrimStart('0');
        var trimmed = whole.TrimEnd('0');
        var sign = Sign(quantity.Dimension);
        return trimmed.Length == 0
            ? $"=0{sign}"
            : string.Create(CultureInfo.InvariantCulture, $"={trimmed}e{power + whole.Length - trimmed.Length}{sign}");
    }

    private static FrozenDictionary<string, SpelledUnit[]> By(Func<SpelledUnit, string> key) =>
        UnitSpellings
            .Units.Where(unit => PlainLetters.Of(unit.Spelling) == unit.Spelling)
            .GroupBy(key, StringComparer.Ordinal)
            .ToFrozenDictionary(
                group => group.Key,
                group => group.DistinctBy(unit => (unit.Dimension, unit.Power, unit.Multiplier)).ToArray(),
                StringComparer.Ordinal
            );
}
