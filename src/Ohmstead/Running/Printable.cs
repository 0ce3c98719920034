using System.Buffers;
using System.Globalization;
using System.Text;

namespace Ohmstead.Running;

/// <summary>Makes text from records safe to print: no control or bidirectional character leaves this program raw.</summary>
internal static class Printable
{
    private static readonly SearchValues<char> Hidden = SearchValues.Create([
        .. Enumerable.Range(0, 0x10000).Select(c => (char)c).Where(IsHidden),
    ]);

    /// <summary>The text with every control, bidirectional and invisible character written out.</summary>
    public static string Escape(string text)
    {
        if (text.AsSpan().IndexOfAny(Hidden) < 0)
        {
            return text;
        }

        var safe = new StringBuilder(text.Length + 16);
        foreach (var c in text)
        {
            if (IsHidden(c))
            {
                safe.Append(CultureInfo.InvariantCulture, $"<U+{(int)c:X4}>");
            }
            else
            {
                safe.Append(c);
            }
        }

        return safe.ToString();
    }

    private static bool IsHidden(char c) =>
        char.IsControl(c)
        || c is (>= '\u200B' and <= '\u200F') or (>= '\u2028' and <= '\u202E') or (>= '\u2060' and <= '\u206F') or '\uFEFF' or '\u061C';
}
