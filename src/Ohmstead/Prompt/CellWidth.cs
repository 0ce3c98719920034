using System.Globalization;
using Ohmstead.Running;
using Wcwidth;

namespace Ohmstead.Prompt;

/// <summary>How many cells of a terminal text takes: East Asian and pictures two, what combines none.</summary>
internal static class CellWidth
{
    private const char AsPicture = '\uFE0F';

    /// <summary>What a person takes for one character each, as it is shown, with its cells.</summary>
    public static IEnumerable<(string Shown, int Length, int Cells)> Characters(string text)
    {
        var at = 0;
        while (at < text.Length)
        {
            var length = StringInfo.GetNextTextElementLength(text, at);
            var one = text.Substring(at, length);
            // What joins the parts of a picture is hidden elsewhere, and shown here as what it makes.
            var shown = length > 1 && IsPicture(one) ? one : Printable.Escape(one);
            yield return (shown, length, shown == one ? Cells(one) : shown.EnumerateRunes().Sum(CellsOf));
            at += length;
        }
    }

    /// <summary>The cells of a text.</summary>
    public static int Measure(string text) => Characters(text).Sum(character => character.Cells);

    // Parts of one character share its cells.
    private static int Cells(string one) => one.Contains(AsPicture, StringComparison.Ordinal) ? 2 : one.EnumerateRunes().Max(CellsOf);

    private static int CellsOf(System.Text.Rune rune) => Math.Max(UnicodeCalculator.GetWidth(rune.Value), 0);

    private static bool IsPicture(string one) =>
        one.EnumerateRunes().First() is var first && CellsOf(first) == 2 && one.EnumerateRunes().All(IsOfPicture);

    private static bool IsOfPicture(System.Text.Rune rune) => rune.Value is 0x200D || Printable.Escape(rune.ToString()) == rune.ToString();
}
