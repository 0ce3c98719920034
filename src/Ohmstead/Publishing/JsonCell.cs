using System.Globalization;
using System.Text;
using Ohmstead.Records.Shapes;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>Writes one cell of a table as JSON.</summary>
internal static class JsonCell
{
    // What the library escapes for the sake of pages. These files are never part of one, and half of all tolerances has a plus; what opens
    // a tag stays escaped, for whoever puts a file into a page after all.
    private const string HarmlessHere = "+'&>`";

    // Nearly every cell is written as it is, and then is looked at once.
    private static readonly PlainCharacters Plain = new(c =>
        !DataForm.Escapes.WillEncode(c) || HarmlessHere.Contains(c, StringComparison.Ordinal)
    );

    /// <summary>Whether there is something to say.</summary>
    public static bool IsThere(string? cell) => !string.IsNullOrWhiteSpace(cell);

    /// <summary>Writes it.</summary>
    public static void Append(PageBuffer bytes, ValueKind kind, string cell)
    {
        if (kind is ValueKind.Count or ValueKind.Number)
        {
            // Written by this program a moment ago, as JSON wants it.
            Encoding.UTF8.GetBytes(cell, bytes);
            return;
        }

        Text(bytes, cell);
    }

    /// <summary>Writes it, a number as ten to a power where that is shorter and as exact: 544e-11 for 0.00000000544. Programs read either;
    /// in a table for spreadsheets it never stands.</summary>
    public static void AppendShort(PageBuffer bytes, ValueKind kind, string cell) =>
        Append(bytes, kind, kind == ValueKind.Number ? Short(cell) : cell);

    /// <summary>Writes text.</summary>
    public static void Text(PageBuffer bytes, string text)
    {
        bytes.Append("\""u8);
        var rest = text.AsSpan();
        while ((rest = rest[bytes.AppendPlain(rest, Plain)..]).Length > 0)
        {
            rest = rest[Escaped(bytes, rest)..];
        }

        bytes.Append("\""u8);
    }

    private static string Short(string number)
    {
        var places = number.Length - 1 - number.IndexOf('.', StringComparison.Ordinal);
        if (places == number.Length)
        {
            return number;
        }

        var digits = number.Replace(".", string.Empty, StringComparison.Ordinal).TrimStart('-').TrimStart('0');
        var power = string.Create(CultureInfo.InvariantCulture, $"{(number[0] == '-' ? "-" : string.Empty)}{digits}e-{places}");
        return digits.Length > 0 && power.Length < number.Length ? power : number;
    }

    // Escapes the character at the start and says how many UTF-16 units it took.
    private static int Escaped(PageBuffer bytes, ReadOnlySpan<char> text)
    {
        const int longest = 16;
        Span<char> escape = stackalloc char[longest];
        DataForm.Escapes.Encode(
            text[..(char.IsHighSurrogate(text[0]) && text.Length > 1 && char.IsLowSurrogate(text[1]) ? 2 : 1)],
            escape,
            out var taken,
            out var length
        );
        Encoding.UTF8.GetBytes(escape[..length], bytes);
        return taken;
    }
}
