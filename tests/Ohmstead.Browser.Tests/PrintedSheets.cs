using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Ohmstead.Browser.Tests;

/// <summary>What stands on the sheets of a printed page, read out of the PDF that the browser makes of it.</summary>
internal static class PrintedSheets
{
    /// <summary>The lines of each sheet, from its top to its bottom.</summary>
    /// <param name="view">The window with the page.</param>
    /// <param name="paper">What it is printed on, such as A4.</param>
    public static async Task<IReadOnlyList<IReadOnlyList<string>>> OfAsync(View view, string paper)
    {
        using var printed = PdfDocument.Open(await view.Page.PdfAsync(new() { Format = paper }));
        return [.. printed.GetPages().Select(Lines)];
    }

    // Letters that stand at one height are a line; what is a quarter of a letter or more apart has a space between.
    private static IReadOnlyList<string> Lines(Page sheet) =>
        [
            .. sheet
                .Letters.GroupBy(letter => Math.Round(letter.StartBaseLine.Y))
                .OrderByDescending(line => line.Key)
                .Select(line => Line(line.OrderBy(letter => letter.StartBaseLine.X))),
        ];

    private static string Line(IEnumerable<Letter> letters)
    {
        var line = new StringBuilder();
        var end = double.NaN;
        foreach (var letter in letters)
        {
            if (letter.StartBaseLine.X - end > letter.PointSize / 4 && line.Length > 0 && line[^1] != ' ')
            {
                line.Append(' ');
            }

            line.Append(letter.Value);
            end = letter.EndBaseLine.X;
        }

        return line.ToString().Trim();
    }
}
