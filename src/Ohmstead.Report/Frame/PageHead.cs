using System.Globalization;

namespace Ohmstead.Report.Frame;

/// <summary>What a page says of itself to whoever does not see it: a browser, a search, a message in which its address stands.</summary>
/// <param name="Path">Its file, from the root of the report.</param>
/// <param name="Title">Its title.</param>
/// <param name="Says">One plain sentence of what it says, and no more than that: what can hurt comes first.</param>
public sealed record PageHead(string Path, string Title, string Says)
{
    // What a list of results or a message shows of it.
    private const int LongestTitle = 120;
    private const int LongestSentence = 240;

    /// <summary>A picture of the report that shows what the page is about, from its root; or null.</summary>
    public string? Picture { get; init; }

    /// <summary>How many folders below the root of the report the page stands.</summary>
    public int LevelsUp => Path.Count(c => c == '/');

    /// <summary>The title where there is little room.</summary>
    public string ShortTitle => Short(Title, LongestTitle);

    /// <summary>The sentence where there is little room.</summary>
    public string ShortSentence => Short(Says, LongestSentence);

    private static string Short(string text, int most)
    {
        var line = text.ReplaceLineEndings(" ");
        if (line.Length <= most)
        {
            return line;
        }

        var letters = new StringInfo(line);
        return letters.LengthInTextElements <= most ? line : letters.SubstringByTextElements(0, most - 1) + "…";
    }
}
