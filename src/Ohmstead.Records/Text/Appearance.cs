using System.Globalization;
using System.Text;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Records.Text;

/// <summary>Names that differ by letter and look the same to a reader: a Cyrillic С beside a Latin C, an O where a zero
/// belongs.</summary>
/// <remarks>Letters of other scripts by Unicode Technical Standard 39, from memory; a Latin letter for a digit: common practice.</remarks>
public static class Appearance
{
    /// <summary>How a name looks: two names of one appearance can be taken for each other.</summary>
    public static string Skeleton(string name) => Ascii.IsValid(name) && name.AsSpan().IndexOfAny("OoIl") < 0 ? name : Look(name);

    private static string Look(string name)
    {
        var look = new StringBuilder(name.Length);
        foreach (var letter in LookAlikes.Plain(name))
        {
            var isAfterDigit = look.Length > 0 && char.IsAsciiDigit(look[^1]);

            // C11 and CI1 may stand on one board, where CI is a chip; a zero after letters alone is nobody's numbering.
            look.Append(
                letter switch
                {
                    'O' => '0',
                    'o' when isAfterDigit => '0',
                    'I' or 'l' when isAfterDigit => '1',
                    _ => letter,
                }
            );
        }

        return look.ToString();
    }

    /// <summary>The first difference of two names that look alike, as code points: <c>U+0421 Cyrillic capital letter es where the other has
    /// U+0043</c>.</summary>
    public static string Difference(string name, string other)
    {
        var (one, two) = (name.EnumerateRunes().ToArray(), other.EnumerateRunes().ToArray());
        var at = one.Zip(two).TakeWhile(pair => pair.First == pair.Second).Count();
        return $"{CodeAt(one, at)} where the other has {CodeAt(two, at)}";
    }

    private static string CodeAt(Rune[] name, int at) =>
        at >= name.Length
            ? "nothing"
            : $"U+{name[at].Value.ToString("X4", CultureInfo.InvariantCulture)}"
                + (LookAlikes.TryFind(name[at], out _, out var called) ? " " + called : string.Empty);
}
