namespace Ohmstead.Bench;

/// <summary>Tells the name of a place from a value.</summary>
internal static class PlaceName
{
    private const string Multipliers = "pnumkµMR";

    /// <summary>Whether a word looks like a reference designator: letters, figures, at most one letter more. What begins with the letter
    /// of a
    /// unit in small, such as <c>n47</c>, may be a value; <c>R47</c> is a place here, since a value can be said otherwise.</summary>
    public static bool LooksLike(string word)
    {
        var letters = word.AsSpan().IndexOfAnyExceptInRange('A', 'Z');
        if (letters == 0 && char.IsAsciiLetterLower(word[0]) && !Multipliers.Contains(word[0], StringComparison.Ordinal))
        {
            letters = word.AsSpan().IndexOfAnyExceptInRange('a', 'z');
        }

        if (letters is < 1 or > 4)
        {
            return false;
        }

        var rest = word.AsSpan(letters);
        var figures = rest.IndexOfAnyExceptInRange('0', '9');
        return figures < 0 || (figures is > 0 && figures == rest.Length - 1 && char.IsAsciiLetter(rest[^1]));
    }
}
