using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>Words that become sentences of one paragraph: each begins with a capital letter and ends with a full stop.</summary>
/// <param name="html">Where they go.</param>
internal struct Sentences(HtmlWriter html)
{
    private bool isLater;

    /// <summary>Starts a sentence that another part of the page begins.</summary>
    public HtmlWriter Next()
    {
        html.Text(isLater ? ". " : string.Empty);
        isLater = true;
        return html;
    }

    /// <summary>Starts a sentence with these words.</summary>
    public HtmlWriter Next(ReadOnlySpan<char> words)
    {
        Next();
        if (words.Length > 0 && char.IsAsciiLetterLower(words[0]))
        {
            html.Text([char.ToUpperInvariant(words[0])]);
            words = words[1..];
        }

        html.Text(words);
        return html;
    }

    /// <summary>Goes on in the same sentence.</summary>
    public readonly void Go(ReadOnlySpan<char> words) => html.Text(words);

    /// <summary>Ends the last one.</summary>
    public readonly void End() => html.Text(isLater ? "." : string.Empty);
}
