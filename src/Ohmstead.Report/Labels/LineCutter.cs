using System.Globalization;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Labels;

/// <summary>Parts text into lines that surely fit, at whole words; what is left over becomes an ellipsis.</summary>
/// <remarks>The widths are those of the widest letters of their kind in Helvetica, bold (its published metrics, from memory), and a
/// twelfth more, since another font may stand in for it. What fits by them fits in print; now and then a word more would
/// have fitted.</remarks>
internal static class LineCutter
{
    private const string Spaces = " \u00A0";
    private const string Narrow = "!'(),-./:;I[\\]`fijlrt{|}";
    private const string Wide = "%@MWmw&\u2026";
    private const decimal OfPoint = 25.4m / 72m;

    /// <summary>What words take at most, in millimetres.</summary>
    public static decimal Width(string words, decimal points) => Letters(words).Sum(Ems) * points * OfPoint;

    /// <summary>The lines of a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">How wide a line is, in millimetres.</param>
    /// <param name="points">The size of the letters.</param>
    /// <param name="most">How many lines there may be.</param>
    /// <param name="isCut">Whether something was left out.</param>
    public static IReadOnlyList<string> Lines(string text, decimal width, decimal points, int most, out bool isCut)
    {
        var lines = new List<string>();
        isCut = most == 0;
        if (isCut)
        {
            return lines;
        }

        var line = string.Empty;
        foreach (var word in Words(VisibleText.Escape(text), width, points))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (Width(longer, points) <= width)
            {
                line = longer;
                continue;
            }

            if (lines.Count + 1 == most)
            {
                isCut = true;
                lines.Add(WithEllipsis(line, width, points));
                return lines;
            }

            lines.Add(line);
            line = word;
        }

        if (line.Length > 0)
        {
            lines.Add(line);
        }

        return lines;
    }

    // Words; one that is wider than a line is parted between letters.
    private static IEnumerable<string> Words(string text, decimal width, decimal points)
    {
        foreach (var word in Whole(text))
        {
            var piece = string.Empty;
            foreach (var letter in Letters(word))
            {
                if (piece.Length > 0 && Width(piece + letter, points) > width)
                {
                    yield return piece;
                    piece = string.Empty;
                }

                piece += letter;
            }

            yield return piece;
        }
    }

    // A figure and its unit are one word.
    private static List<string> Whole(string text)
    {
        var words = new List<string>();
        foreach (var word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            if (words.Count > 0 && char.IsAsciiDigit(words[^1][^1]) && UnbrokenText.UnitBehind($" {word}"))
            {
                words[^1] += $"\u00A0{word}";
            }
            else
            {
                words.Add(word);
            }
        }

        return words;
    }

    /// <summary>Whether each word stands whole on a line.</summary>
    public static bool AreWhole(string text, decimal width, decimal points) =>
        Whole(VisibleText.Escape(text)).TrueForAll(word => Width(word, points) <= width);

    private static string WithEllipsis(string line, decimal width, decimal points)
    {
        while (Width($"{line} …", points) > width)
        {
            var space = line.LastIndexOf(' ');
            if (space < 0)
            {
                string[] letters = [.. Letters(line)];
                return string.Concat(letters.Take(letters.Length - 2)) + "…";
            }

            line = line[..space];
        }

        return $"{line} …";
    }

    private static IEnumerable<string> Letters(string words)
    {
        var letters = StringInfo.GetTextElementEnumerator(words);
        while (letters.MoveNext())
        {
            yield return letters.GetTextElement();
        }
    }

    private static decimal Ems(string letter) =>
        letter[0] > '\u10FF' && letter[0] is not ('\u2026' or '\u2212' or '\u2126') ? 1.4m
        : Spaces.Contains(letter[0], StringComparison.Ordinal) ? 0.3m
        : Narrow.Contains(letter[0], StringComparison.Ordinal) ? 0.42m
        : Wide.Contains(letter[0], StringComparison.Ordinal) ? 1.05m
        : letter.Length > 1 ? 1.2m
        : char.IsAsciiDigit(letter[0]) ? 0.6m
        : char.IsAsciiLetterLower(letter[0]) ? 0.66m
        : 0.87m;
}
