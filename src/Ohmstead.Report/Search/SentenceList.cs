using Ohmstead.Report.Html;

namespace Ohmstead.Report.Search;

/// <summary>Takes the sentences of a page: on one line each, none longer than a person reads in a list, and not more than a page of the
/// index can hold.</summary>
internal sealed class SentenceList
{
    /// <summary>The most sentences of a page; what presses most comes first, so that readings of a very long record are left out.</summary>
    public const int Most = 400;

    private const int Longest = 240;

    private readonly List<SearchSentence> sentences = [];

    /// <summary>What was taken.</summary>
    public IReadOnlyList<SearchSentence> Taken => sentences;

    /// <summary>Takes a text that is one sentence, or its pieces where it is very long.</summary>
    /// <param name="anchor">The place on the page, or null.</param>
    /// <param name="text">What a record or a rule says; null and empty texts are passed over.</param>
    /// <param name="head">What holds for it besides.</param>
    public void Add(ElementId? anchor, string? text, string head = "")
    {
        if (string.IsNullOrWhiteSpace(text) || sentences.Count >= Most)
        {
            return;
        }

        var line = OneLine(text);
        while (line.Length > Longest && sentences.Count < Most - 1)
        {
            var end = Cut(line);
            sentences.Add(new(head, anchor, line[..end]));
            line = line[end..].TrimStart();
        }

        sentences.Add(new(head, anchor, line.Length <= Longest ? line : line[..Cut(line)]));
    }

    /// <summary>Takes each sentence of a text in a person's words.</summary>
    public void AddStory(ElementId? anchor, string text)
    {
        var from = 0;
        for (var at = 1; at < text.Length - 1 && sentences.Count < Most; at++)
        {
            if (
                char.IsWhiteSpace(text[at])
                && text[at - 1] is '.' or '!' or '?'
                && (char.IsUpper(text[at + 1]) || !char.IsLetter(text[at + 1]))
            )
            {
                Add(anchor, text[from..at]);
                from = at + 1;
            }
        }

        Add(anchor, text[from..]);
    }

    /// <summary>A name or title as it stands in a list.</summary>
    public static string Short(string text) => OneLine(text) is { Length: > Longest } line ? line[..Cut(line)] : OneLine(text);

    // Of a text without end only what can be kept is looked at.
    private static string OneLine(string text) =>
        string.Join(
            ' ',
            VisibleText
                .Escape(text.Length > Most * Longest ? text[..(Most * Longest)] : text)
                .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
        );

    // Between two words where there are any, and never within a character.
    private static int Cut(string line)
    {
        var end = line.LastIndexOf(' ', Longest);
        return end > Longest / 2 ? end
            : char.IsLowSurrogate(line[Longest]) ? Longest - 1
            : Longest;
    }
}
