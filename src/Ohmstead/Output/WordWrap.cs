namespace Ohmstead.Output;

/// <summary>Breaks a line between words to fit a window.</summary>
internal static class WordWrap
{
    /// <summary>The text in lines of at most so many characters; a word that is longer stands whole in a line of its own, for somebody may
    /// copy it.</summary>
    /// <param name="text">One line of text.</param>
    /// <param name="width">How many characters a line has.</param>
    /// <param name="indent">What each line but the first begins with.</param>
    public static IEnumerable<string> Lines(string text, int width, string indent)
    {
        var start = 0;
        var room = width;
        while (text.Length - start > room)
        {
            // The last space that the line has room for, or the first behind it.
            var end = text.LastIndexOf(' ', start + room, room + 1);
            end = end > start + Leading(text, start) ? end : text.IndexOf(' ', start + room);
            if (end < 0)
            {
                break;
            }

            yield return Line(text[start..end].TrimEnd());
            start = end + 1 + Leading(text, end + 1);
            room = width - indent.Length;
        }

        if (start < text.Length)
        {
            yield return Line(text[start..]);
        }

        string Line(string words) => room == width ? words : indent + words;
    }

    private static int Leading(string text, int start) => text.AsSpan(start).Length - text.AsSpan(start).TrimStart(' ').Length;
}
