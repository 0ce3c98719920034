using System.Globalization;
using System.Text;

namespace Ohmstead.Records.Text;

/// <summary>Names that differ by letter and look the same to a reader: a Cyrillic С beside a Latin C, an O where a nought belongs.</summary>
/// <remarks>The letters are those of Unicode Technical Standard 39 that have the shape of a Latin capital or small letter; from memory. A Latin letter for a digit: common practice.</remarks>
public static class LookAlikes
{
    // The two lines go together, sign by sign. Escapes, so that a diff shows which is which.
    private const string Strangers =
        "\u0410\u0412\u0415\u041A\u041C\u041D\u041E\u0420\u0421\u0422\u0423\u0425\u0405\u0406\u0408\u0430\u0435\u043E\u0440\u0441\u0443\u0445\u0455\u0456\u0458"
        + "\u0391\u0392\u0395\u0396\u0397\u0399\u039A\u039C\u039D\u039F\u03A1\u03A4\u03A5\u03A7\u03BF";

    private const string Latin = "ABEKMHOPCTYXSIJaeopcyxsij" + "ABEZHIKMNOPTYXo";

    private const int FirstFullWidth = 0xFF01;
    private const int LastFullWidth = 0xFF5E;
    private const int FullWidthOffset = 0xFEE0;

    /// <summary>How a name looks: two names with one look can be taken for each other.</summary>
    public static string LookOf(string name)
    {
        var look = new StringBuilder(name.Length);
        foreach (var letter in name)
        {
            var plain = Plain(letter);
            var isAfterDigit = look.Length > 0 && char.IsAsciiDigit(look[^1]);

            // C11 and CI1 may stand on one board, where CI is a chip; a nought after letters alone is nobody's numbering.
            look.Append(plain switch
            {
                'O' => '0',
                'o' when isAfterDigit => '0',
                'I' or 'l' when isAfterDigit => '1',
                _ => plain,
            });
        }

        return look.ToString();
    }

    /// <summary>The first difference of two names that look alike, as code points: <c>U+0421 where the other has U+0043</c>.</summary>
    public static string Difference(string name, string other)
    {
        var at = 0;
        while (at < Math.Min(name.Length, other.Length) && name[at] == other[at])
        {
            at++;
        }

        return $"{CodeAt(name, at)} where the other has {CodeAt(other, at)}";
    }

    private static char Plain(char letter) =>
        Strangers.IndexOf(letter, StringComparison.Ordinal) is var at and >= 0 ? Latin[at]
        : letter is >= (char)FirstFullWidth and <= (char)LastFullWidth ? (char)(letter - FullWidthOffset)
        : letter;

    private static string CodeAt(string name, int at) => at < name.Length ? $"U+{((int)name[at]).ToString("X4", CultureInfo.InvariantCulture)}" : "nothing";
}
