using System.Text;

namespace Ohmstead.Tests.Support;

/// <summary>Reads iCalendar by the letter of RFC 5545, 3.1 and 3.3.11, knowing nothing of the library that wrote it.</summary>
internal static class CalendarText
{
    /// <summary>The physical lines, as octets without their line ends. Every one must end with CR LF.</summary>
    public static IReadOnlyList<byte[]> Lines(byte[] file)
    {
        var lines = new List<byte[]>();
        var start = 0;
        for (var at = 0; at < file.Length; at++)
        {
            if (file[at] == '\n')
            {
                Assert.True(at > start && file[at - 1] == '\r', $"the line that ends at octet {at} has no CR");
                lines.Add(file[start..(at - 1)]);
                start = at + 1;
            }
        }

        Assert.Equal(file.Length, start);
        return lines;
    }

    /// <summary>The events, each with its properties by name with parameters: "DTSTART;VALUE=DATE" is a name.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Events(byte[] file)
    {
        var events = new List<IReadOnlyDictionary<string, string>>();
        Dictionary<string, string>? now = null;
        foreach (var line in Unfolded(file))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            var (name, value) = (line[..colon], line[(colon + 1)..]);
            switch (name, value)
            {
                case ("BEGIN", "VEVENT"):
                    Assert.Null(now);
                    now = new(StringComparer.Ordinal);
                    break;
                case ("END", "VEVENT"):
                    events.Add(now!);
                    now = null;
                    break;
                default:
                    now?.Add(name, Text(value));
                    break;
            }
        }

        Assert.Null(now);
        return events;
    }

    private static List<string> Unfolded(byte[] file)
    {
        var folded = new List<List<byte>>();
        foreach (var line in Lines(file))
        {
            if (line.Length > 0 && line[0] is (byte)' ' or (byte)'\t')
            {
                folded[^1].AddRange(line[1..]);
            }
            else
            {
                folded.Add([.. line]);
            }
        }

        return [.. folded.Select(line => new UTF8Encoding(false, throwOnInvalidBytes: true).GetString([.. line]))];
    }

    private static string Text(string value)
    {
        var text = new StringBuilder(value.Length);
        for (var at = 0; at < value.Length; at++)
        {
            if (value[at] == '\\' && at + 1 < value.Length)
            {
                at++;
                text.Append(value[at] is 'n' or 'N' ? '\n' : value[at]);
            }
            else
            {
                text.Append(value[at]);
            }
        }

        return text.ToString();
    }
}
