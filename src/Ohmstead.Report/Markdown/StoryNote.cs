namespace Ohmstead.Report.Markdown;

/// <summary>Something in the text of a record that is shown otherwise than it was meant.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Line">Its line in the body, from 1.</param>
/// <param name="Message">One line, lower case, no full stop: what was found and what was expected.</param>
public sealed record StoryNote(StoryNoteKind Kind, int Line, string Message);

/// <summary>The kinds of notes on a text.</summary>
public enum StoryNoteKind
{
    /// <summary>A link whose target is not acceptable; its text stays.</summary>
    LinkRefused,

    /// <summary>A link or picture whose file is not in the collection; its text stays.</summary>
    FileMissing,

    /// <summary>A picture from elsewhere; it is a link now.</summary>
    PictureElsewhere,

    /// <summary>A picture without a description for those who do not see it.</summary>
    PictureWithoutDescription,

    /// <summary>HTML, which is shown as text. Told once for a text.</summary>
    HtmlShownAsText,

    /// <summary>A text that is too deep or too much work to lay out; all of it is shown as written.</summary>
    ShownAsWritten,
}
