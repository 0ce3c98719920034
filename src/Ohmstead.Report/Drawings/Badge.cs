using System.Globalization;
using Ohmstead.Assessment.History;
using Ohmstead.Report.Html;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Drawings;

/// <summary>A small picture of a state for other pages: a name plate, the mark of the state and its words. The words are text; no style,
/// font or script is needed.</summary>
/// <remarks>Where another font is used than the usual one, the text is drawn in the room that it was given.</remarks>
public static class Badge
{
    private const int LongestName = 40;

    // The advance of a monospaced letter of 12 pixels is 0.6 em, from memory.
    private const decimal Letter = 7.2m;
    private const int Gap = 8;
    private const int MarkWidth = 24;

    /// <summary>Writes the picture, a whole SVG file.</summary>
    /// <param name="buffer">Where to; it is emptied first.</param>
    /// <param name="name">What stands on the plate.</param>
    /// <param name="state">The state whose mark is drawn.</param>
    /// <param name="words">What stands beside the mark.</param>
    public static void Write(PageBuffer buffer, string name, BoardState state, string words)
    {
        buffer.Clear();
        var plate = Shortened(VisibleText.Escape(name));
        var plateText = Width(plate);
        var plateWidth = plateText + (2 * Gap);
        var wordsAt = plateWidth + Gap + MarkWidth + Gap;
        var wordsText = Width(words);
        var whole = wordsAt + wordsText + Gap;
        Raw(
            buffer,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{whole}\" height=\"22\" viewBox=\"0 0 {whole} 22\" role=\"img\">\n<title>"
        );
        VisibleText.Write(buffer, $"{plate}: {words}");
        Raw(
            buffer,
            $"</title>\n<rect x=\"0.5\" y=\"0.5\" width=\"{whole - 1}\" height=\"21\" rx=\"3\" fill=\"#fafbf8\" stroke=\"#78847c\"/>\n"
        );
        Raw(buffer, $"<rect x=\"2.5\" y=\"2.5\" width=\"{plateWidth - 4}\" height=\"17\" rx=\"2\" fill=\"none\" stroke=\"#1a2226\"/>\n");
        Text(buffer, plate, Gap, plateText, "#1a2226");
        var colour = Colour(state);
        Raw(buffer, $"<g transform=\"translate({plateWidth + Gap} 5)\" fill=\"none\" stroke=\"{colour}\" stroke-width=\"1.5\">\n");
        foreach (var (path, stroke) in StateMark.Strokes(state))
        {
            var drawn = stroke switch
            {
                MarkStroke.Full => $" fill=\"{colour}\"",
                MarkStroke.Dotted => " stroke-dasharray=\"1.6 2\"",
                _ => string.Empty,
            };
            Raw(buffer, $"<path d=\"{path}\"{drawn}/>\n");
        }

        Raw(buffer, $"</g>\n");
        Text(buffer, words, wordsAt, wordsText, colour);
        Raw(buffer, $"</svg>\n");
    }

    private static void Text(PageBuffer buffer, string text, decimal at, decimal width, string colour)
    {
        Raw(buffer, $"<text x=\"{at}\" y=\"15\" font-family=\"ui-monospace, DejaVu Sans Mono, Consolas, monospace\" font-size=\"12\" ");
        Raw(buffer, $"font-weight=\"700\" textLength=\"{width}\" lengthAdjust=\"spacingAndGlyphs\" fill=\"{colour}\">");
        VisibleText.Write(buffer, text);
        Raw(buffer, $"</text>\n");
    }

    private static decimal Width(string text) => new StringInfo(text).LengthInTextElements * Letter;

    private static string Shortened(string name)
    {
        var letters = new StringInfo(name.ReplaceLineEndings(" "));
        return letters.LengthInTextElements <= LongestName ? letters.String : letters.SubstringByTextElements(0, LongestName - 1) + "…";
    }

    // The same colours as in the style sheet, on its light paper.
    private static string Colour(BoardState state) =>
        state switch
        {
            BoardState.FitToRun => "#1d5a94",
            BoardState.FaultStands or BoardState.MakeSafe => "#9a3b06",
            BoardState.NotLookedAt or BoardState.AsTold or BoardState.Retired or BoardState.Gone or BoardState.BrokenUp => "#545d61",
            _ => "#6a4585",
        };

    private static void Raw(PageBuffer buffer, FormattableString known) => buffer.AppendUtf16(known.ToString(CultureInfo.InvariantCulture));
}
