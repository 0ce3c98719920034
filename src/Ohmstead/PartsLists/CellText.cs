using System.Globalization;

namespace Ohmstead.PartsLists;

/// <summary>What a cell may not hold, whatever its column means.</summary>
internal static class CellText
{
    private const int Longest = 500;

    /// <summary>The cell on one line, or what is wrong with it.</summary>
    public static (string Text, string? Fault, string? NextStep) Read(string cell)
    {
        var text = cell.ReplaceLineEndings(" ").Trim();
        if (text.Length > Longest)
        {
            return (
                string.Empty,
                string.Create(CultureInfo.InvariantCulture, $"the cell has {text.Length} characters, at most {Longest} are read"),
                "look for a quote that is not closed"
            );
        }

        var hidden = text.Where(IsHidden).Take(1).ToArray();
        return hidden.Length > 0
                ? (
                    string.Empty,
                    string.Create(CultureInfo.InvariantCulture, $"the cell has the hidden character U+{(int)hidden[0]:X4}"),
                    "take it out"
                )
            // A spreadsheet would compute it; here it could only be taken for a text.
            : IsFormula(text) ? (string.Empty, $"'{CsvTableReader.Excerpt(text)}' is a formula of a spreadsheet", "write its result")
            : (text, null, null);
    }

    private static bool IsHidden(char letter) =>
        char.GetUnicodeCategory(letter)
            is UnicodeCategory.Control
                or UnicodeCategory.Format
                or UnicodeCategory.PrivateUse
                or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator;

    private static bool IsFormula(string text) =>
        text.Length > 1 && (text[0] is '=' or '@' || (text[0] is '+' or '-' && (char.IsAsciiLetter(text[1]) || text[1] == '(')));
}
