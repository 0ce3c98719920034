namespace Ohmstead.Fuzz.Targets;

/// <summary>What may stand in a page or on a terminal.</summary>
internal static class Bytes
{
    /// <summary>Fails when output holds a control byte other than an end of a line or a tab, or a character that hides or turns
    /// text.</summary>
    public static void AreHarmless(ReadOnlySpan<char> text, string where)
    {
        foreach (var character in text)
        {
            var isHarmful = char.IsControl(character)
                ? character is not ('\n' or '\t')
                : character is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u200E' or '\u200F' or '\uFEFF';
            FaultFoundException.Unless(!isHarmful, $"U+{(int)character:X4} stands in {where}");
        }
    }
}
