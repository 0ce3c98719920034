namespace Ohmstead.Records.Text;

/// <summary>Text of a record, set into a message.</summary>
public static class Quotation
{
    private const int Longest = 40;

    /// <summary>The text in double quotes, its line ends as spaces, cut behind 40 characters with an ellipsis.</summary>
    /// <remarks>Nothing is escaped here: whoever prints a message escapes the whole of it.</remarks>
    public static string Quote(ReadOnlySpan<char> text)
    {
        var cut =
            text.Length <= Longest ? text.Length
            : char.IsHighSurrogate(text[Longest - 1]) ? Longest - 1
            : Longest;
        var shown = text[..cut].ToString().ReplaceLineEndings(" ");
        return cut < text.Length ? $"\"{shown}…\"" : $"\"{shown}\"";
    }
}
