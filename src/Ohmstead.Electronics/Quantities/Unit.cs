namespace Ohmstead.Electronics.Quantities;

/// <summary>One way to spell a unit.</summary>
/// <param name="Spelling">The letters.</param>
/// <param name="Power">The power of ten from this unit to the base unit.</param>
/// <param name="Form">Whether prefixes and other letter cases belong to it.</param>
/// <param name="Multiplier">A whole factor besides the power of ten: 60 for the minute.</param>
internal readonly record struct Unit(string Spelling, int Power = 0, UnitForm Form = UnitForm.Exact, int Multiplier = 1)
{
    /// <summary>Whether the text spells this unit, and by which power of ten its prefix shifts it.</summary>
    internal bool Spells(ReadOnlySpan<char> text, out int prefixPower)
    {
        prefixPower = 0;
        if (Same(text))
            return true;
        return Form is UnitForm.Prefixed or UnitForm.PrefixedAnyCase
            && text.Length == Spelling.Length + 1
            && TryPrefix(text[0], out prefixPower)
            && Same(text[1..]);
    }

    /// <summary>The power of ten of an SI prefix; K is taken for k, as drawings print it.</summary>
    internal static bool TryPrefix(char letter, out int power)
    {
        power = letter switch
        {
            'p' => -12,
            'n' => -9,
            'u' or '\u00B5' or '\u03BC' => -6,
            'm' => -3,
            'k' or 'K' => 3,
            'M' => 6,
            'G' => 9,
            'T' => 12,
            _ => 0,
        };
        return power != 0;
    }

    private bool Same(ReadOnlySpan<char> text) =>
        Form is UnitForm.AnyCase or UnitForm.PrefixedAnyCase
            ? System.Text.Ascii.EqualsIgnoreCase(text, Spelling)
            : text.SequenceEqual(Spelling);
}
