using System.Buffers;
using System.Text;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Ohmstead.Assessment.Ahead;

namespace Ohmstead.Output;

/// <summary>What falls due, as an iCalendar file (RFC 5545): one event of a whole day for each, on the first day that it may fall due.</summary>
/// <remarks>An event keeps its UID as long as its board, lot or instrument keeps its name, so that a calendar which reads the file again moves it instead of showing it twice.</remarks>
internal static class AheadCalendar
{
    // RFC 5545, 3.1: without the line end.
    private const int MostOctets = 75;
    private const int MostAtOnce = 250;

    /// <summary>The file.</summary>
    /// <param name="collection">The name of the collection.</param>
    /// <param name="items">What falls due.</param>
    /// <param name="today">The day of the run; the only clock there is.</param>
    public static byte[] Write(string collection, IReadOnlyList<DueItem> items, DateOnly today)
    {
        var home = Slug(collection);
        var used = new HashSet<string>(StringComparer.Ordinal);
        var file = new ArrayBufferWriter<byte>(16 << 10);
        var end = string.Empty;
        var stamp = new CalDateTime(today.Year, today.Month, today.Day, 0, 0, 0, CalDateTime.UtcTzId);
        // The library holds some kilobytes for each event: a few hundred at a time go through it, and what stands before and after them is kept once.
        foreach (var chunk in items.Count == 0 ? [[]] : items.Chunk(MostAtOnce))
        {
            var calendar = new Calendar { ProductId = "-//Ohmstead//The year ahead//EN" };
            calendar.Events.AddRange(chunk.Select(item => Event(item, Uid(item, home, used), stamp)));
            var text = new CalendarSerializer().SerializeToString(calendar) ?? string.Empty;
            var last = text.LastIndexOf("END:VCALENDAR", StringComparison.Ordinal);
            var first = text.IndexOf("BEGIN:VEVENT", StringComparison.Ordinal) is > 0 and var start ? start : last;
            Fold(file, end.Length == 0 ? text.AsSpan(0, last) : text.AsSpan(first..last));
            end = text[last..];
        }

        Fold(file, end);
        return file.WrittenSpan.ToArray();
    }

    // The library folds by UTF-16 units and may cut a character in two; here a fold stands between characters.
    private static void Fold(ArrayBufferWriter<byte> file, ReadOnlySpan<char> lines)
    {
        foreach (var line in lines.ToString().Replace("\r\n ", string.Empty, StringComparison.Ordinal).AsSpan().EnumerateLines())
        {
            // The last line end is followed by nothing.
            if (!line.IsEmpty)
            {
                FoldLine(file, line);
            }
        }
    }

    private static void FoldLine(ArrayBufferWriter<byte> file, ReadOnlySpan<char> line)
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

    private static CalendarEvent Event(DueItem item, string uid, CalDateTime stamp) => new()
    {
        Uid = uid,
        DtStamp = stamp,
        Start = new CalDateTime(item.First),
        End = new CalDateTime(item.First.AddDays(1)),
        Summary = Printable.Of($"{item.At}: {item.What}"),
        Description = Printable.Of(item.First == item.Last ? item.Why : $"{item.When}: {item.Why}"),
        Categories = [DueKinds.Words(item.Kind)],
        Transparency = TransparencyType.Transparent,
    };

    private static string Uid(DueItem item, string home, HashSet<string> used)
    {
        var name = string.Join('.', new[] { Slug(DueKinds.Words(item.Kind)), Slug(item.Whom), item.Place is null ? null : Slug(item.Place), item.Mark }.OfType<string>());
        var uid = $"{name}@{home}";
        for (var again = 2; !used.Add(uid); again++)
        {
            uid = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{name}.{again}@{home}");
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
                slug.Append('_').Append(rune.Value.ToString("X2", System.Globalization.CultureInfo.InvariantCulture)).Append('_');
            }
        }

        return slug.ToString();
    }
}
