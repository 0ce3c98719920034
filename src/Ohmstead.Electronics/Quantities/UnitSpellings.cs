namespace Ohmstead.Electronics.Quantities;

/// <summary>One way to write a unit, and what it is in the base unit of its dimension.</summary>
/// <param name="Spelling">The letters as they are written behind a number.</param>
/// <param name="Dimension">What is measured.</param>
/// <param name="Power">The power of ten to the base unit, prefix included.</param>
/// <param name="Multiplier">A whole factor besides: 60 for the minute.</param>
/// <param name="Print">How the letters are meant, where old print and SI differ; unstated where they do not.</param>
public readonly record struct SpelledUnit(string Spelling, Dimension Dimension, int Power, int Multiplier, UnitPrint Print);

/// <summary>A letter that stands where the decimal point would be: the k of 4k7.</summary>
/// <param name="Letter">The letter.</param>
/// <param name="Dimension">What is measured.</param>
/// <param name="Power">The power of ten to the base unit.</param>
public readonly record struct CodeLetter(char Letter, Dimension Dimension, int Power);

/// <summary>Every spelling that <see cref="QuantityText"/> reads, for what must read quantities elsewhere in the same way.</summary>
public static class UnitSpellings
{
    private const string Prefixes = "pnu\u00B5\u03BCmkKMGT";

    private const string Letters = "LRr\u03A9\u2126KkMGTpnu\u00B5\u03BCmFVA";

    /// <summary>All units in the order of the dimensions. One of two meanings stands once for each; one that is more than can be meant,
    /// such as a gigametre, does not.</summary>
    public static IReadOnlyList<SpelledUnit> Units { get; } = [.. Enum.GetValues<Dimension>().SelectMany(OfDimension)];

    /// <summary>All letters in the place of a decimal point, in the order of the dimensions.</summary>
    public static IReadOnlyList<CodeLetter> Codes { get; } =
    [
        .. Enum.GetValues<Dimension>()
            .SelectMany(dimension =>
                Letters
                    .Where(letter => DimensionFacts.TryCodeLetter(dimension, letter, out _))
                    .Select(letter =>
                        DimensionFacts.TryCodeLetter(dimension, letter, out var power) ? new CodeLetter(letter, dimension, power) : default
                    )
            ),
    ];

    /// <summary>The greatest value of a dimension that can be meant, in its base unit.</summary>
    public static decimal Most(Dimension dimension) => DimensionFacts.Most(dimension);

    private static IEnumerable<SpelledUnit> OfDimension(Dimension dimension)
    {
        foreach (var spelling in Spellings(dimension).Distinct(StringComparer.Ordinal))
        {
            if (UnitLookup.IsTwoFacedFarad(dimension, spelling))
            {
                yield return new(spelling, dimension, -6, 1, UnitPrint.Old);
                if (QuantityText.TryRead("1" + spelling, dimension, UnitPrint.International, out _))
                {
                    yield return new(spelling, dimension, -3, 1, UnitPrint.International);
                }
            }
            else if (
                UnitLookup.TryFind(dimension, spelling, out var power, out var multiplier)
                && QuantityText.TryRead("1" + spelling, dimension, UnitPrint.Unstated, out _)
            )
            {
                yield return new(spelling, dimension, power, multiplier, UnitPrint.Unstated);
            }
        }
    }

    private static IEnumerable<string> Spellings(Dimension dimension)
    {
        foreach (var unit in UnitTable.UnitsFor(dimension).ToArray())
        {
            yield return unit.Spelling;
            if (unit.Form is UnitForm.Prefixed or UnitForm.PrefixedAnyCase)
            {
                foreach (var prefix in Prefixes)
                {
                    yield return prefix + unit.Spelling;
                }
            }
        }
    }
}
