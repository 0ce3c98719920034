using System.Buffers;
using System.Globalization;
using System.Text;
using Ohmstead.Assessment.Ahead;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>What falls due, as an iCalendar file (RFC 5545): one event of a whole day for each, on the first day that it may fall
/// due.</summary>
/// <remarks>An event keeps its UID as long as its board, lot or instrument keeps its name, so that a calendar which reads the file again
/// moves it instead of showing it twice.</remarks>
internal static class AheadCalendar
{
    // RFC 5545, 3.1: without the line end.
    private const int MostOctets = 75;

    private const string Product = "-//Ohmstead//The year ahead//EN";

    /// <summary>What stands in the head of every such file, by which it is known again.</summary>
    public static byte[] Mark => Encoding.ASCII.GetBytes($"PRODID:{Product}\r\n");

    /// <summary>Writes the file.</summary>
    /// <param name="file">Where to.</param>
    /// <param name="collection">The name of the collection.</param>
    /// <param name="items">What falls due.</param>
    /// <param name="today">The day of the run; the only clock there is.</param>
    public static void Write(IBufferWriter<byte> file, string collection, IReadOnlyList<DueItem> items, DateOnly today)
    {
        var home = Slug(collection);
        var used = new HashSet<string>(StringComparer.Ordinal);
        var last = new Dictionary<string, int>(StringComparer.Ordinal);
        Fold(file, "BEGIN:VCALENDAR");
        Fold(file, "PRODID:" + Product);
        Fold(file, "VERSION:2.0");
        foreach (var item in items)
        {
            foreach (var line in Event(item, Uid(item, home, used, last), today))
            {
                Fold(file, line);
            }
        }

        Fold(file, "END:VCALENDAR");
    }

    // A fold stands between characters, never inside one.
    private static void Fold(IBufferWriter<byte> file, ReadOnlySpan<char> line)
    {
        if (line.Length <= MostOctets && Ascii.IsValid(line))
        {
            Encoding.ASCII.GetBytes(line, file);
        }
        else
        {
            var octets = 0;
            foreach (var rune in line.EnumerateRunes())
            {
                if (octets + rune.Utf8SequenceLength > MostOctets)
                {
                    file.Write("\r\n "u8);
                    octets = 1;
                }

                file.Advance(rune.EncodeToUtf8(file.GetSpan(4)));
                octets += rune.Utf8SequenceLength;
            }
        }

        file.Write("\r\n"u8);
    }

    // RFC 5545, 3.6.1. What falls due takes the whole day and no time of it.
    private static string[] Event(DueItem item, string uid, DateOnly today) =>
        [
            "BEGIN:VEVENT",
            "CATEGORIES:" + Escaped(DueKinds.Words(item.Kind)),
            "DESCRIPTION:" + Escaped(item.First == item.Last ? item.Why : $"{item.When}: {item.Why}"),
            "DTEND;VALUE=DATE:" + Written(item.First.AddDays(1)),
            $"DTSTAMP:{Written(today)}T000000Z",
            "DTSTART;VALUE=DATE:" + Written(item.First),
            "SEQUENCE:0",
            "SUMMARY:" + Escaped($"{item.At}: {item.What}"),
            "TRANSP:TRANSPARENT",
            "UID:" + uid,
            "END:VEVENT",
        ];

    // RFC 5545, 3.3.11. No character that ends a line is left by then.
    private static string Escaped(string text) =>
        Printable
            .Escape(text)
            .Replace("\\", "\\\\", StringComparison.Ordinal)
            .Replace(";", "\\;", StringComparison.Ordinal)
            .Replace(",", "\\,", StringComparison.Ordinal);

    private static string Written(DateOnly day) => day.ToString("yyyyMMdd", CultureInfo.InvariantCulture);

    // A thousand dues of one name are counted on from the last of them.
    private static string Uid(DueItem item, string home, HashSet<string> used, Dictionary<string, int> last)
    {
        var name = string.Join(
            '.',
            new[]
            {
                Slug(DueKinds.Words(item.Kind)),
                Slug(item.Whom),
                item.Place is null ? null : Slug(item.Place),
                item.Mark,
            }.OfType<string>()
        );
        var uid = $"{name}@{home}";
        while (!used.Add(uid))
        {
            var again = last[name] = last.GetValueOrDefault(name, 1) + 1;
            uid = string.Create(CultureInfo.InvariantCulture, $"{name}.{again}@{home}");
        }

        return uid;
    }

    // Letters, digits and hyphens only; anything else as its code point, so that two names never become one.
    private static string Slug(string name)
    {
        var slug = new StringBuilder(name.Length);
        foreach (var rune in name.EnumerateRunes())
        {
            if (rune.IsAscii && (char.IsAsciiLetterOrDigit((char)rune.Value) || rune.Value == '-'))
            {
                slug.Append((char)rune.Value);
            }
            else if (rune.Value == ' ')
            {
                slug.Append('-');
            }
            else
            {
                slug.Append('_').Append(rune.Value.ToString("X2", CultureInfo.InvariantCulture)).Append('_');
            }
        }

        return slug.ToString();
    }
}
