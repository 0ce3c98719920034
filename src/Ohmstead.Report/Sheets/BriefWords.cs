namespace Ohmstead.Report.Sheets;

/// <summary>Words that must share one sheet with others: a long text ends at a whole word, with an ellipsis.</summary>
internal static class BriefWords
{
    /// <summary>The text, of so many characters at most.</summary>
    public static string Of(string text, int most)
    {
        if (text.Length <= most)
        {
            return text;
        }

        var space = text.LastIndexOf(' ', most - 2);
        var end = space > most / 2 ? space : most - 2;
        if (char.IsHighSurrogate(text[end - 1]))
        {
            end--;
        }

        return text[..end].TrimEnd(' ', ',', ';', ':', '.', '…') + " …";
    }

    /// <summary>The text as a sentence: with a full stop, where it does not end in an ellipsis.</summary>
    public static string Sentence(string text, int most)
    {
        var brief = Of(text, most);
        return brief.EndsWith('…') ? brief : brief + ".";
    }
}
