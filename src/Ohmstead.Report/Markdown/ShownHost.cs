namespace Ohmstead.Report.Markdown;

/// <summary>Finds out whether the words of a link name another host than the one it leads to.</summary>
internal static class ShownHost
{
    private static readonly char[] Breaks =
    [
        ' ',
        '\t',
        '\n',
        '(',
        ')',
        '<',
        '>',
        '"',
        '\'',
        ',',
        ';',
        '|',
        '/',
        '\\',
        '?',
        '#',
        ':',
        '@',
        '[',
        ']',
        '\u00A0',
    ];

    /// <summary>True when the words hold something that looks like a host name and is not the given one.</summary>
    public static bool Differs(string words, string host) =>
        words
            .Split(Breaks, StringSplitOptions.RemoveEmptyEntries)
            .Select(piece => piece.Trim('.'))
            .Any(piece => LooksLikeHost(piece) && !string.Equals(piece, host, StringComparison.OrdinalIgnoreCase));

    private static bool LooksLikeHost(string piece)
    {
        // Other full stops (ideographic, full width, one dot leader) are taken for dots by readers and by some browsers.
        var labels = piece.Split('.', '\u3002', '\uFF0E', '\uFF61', '\u2024');
        return labels.Length > 1
            && Array.TrueForAll(labels, label => label.Length > 0 && label.All(c => char.IsLetterOrDigit(c) || c == '-'))
            && labels[^1].Length > 1
            && labels[^1].All(char.IsLetter);
    }
}
