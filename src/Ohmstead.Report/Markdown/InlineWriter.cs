using System.Text;
using Markdig.Syntax.Inlines;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Markdown;

/// <summary>Writes the inline nodes of a text.</summary>
internal sealed class InlineWriter(HtmlWriter html, Story story, StoryHeadings headings, List<StoryNote> notes)
{
    private readonly StringBuilder literals = new();
    private bool htmlWasNoted;

    /// <summary>Writes what a block contains.</summary>
    public void Write(ContainerInline? container) => Children(container, inLink: false);

    /// <summary>Notes HTML in the text, the first time only.</summary>
    /// <param name="line">The line, from 0.</param>
    public void NoteHtml(int line)
    {
        if (!htmlWasNoted)
        {
            htmlWasNoted = true;
            Note(
                StoryNoteKind.HtmlShownAsText,
                line,
                "HTML in the text is shown as text; write it in Markdown, or put `code` in backticks"
            );
        }
    }

    private void Children(ContainerInline? container, bool inLink)
    {
        for (var inline = container?.FirstChild; inline is not null; inline = inline.NextSibling)
        {
            if (inline is LiteralInline literal)
            {
                inline = Literals(literal, inLink);
            }
            else
            {
                Write(inline, inLink);
            }
        }
    }

    /// <summary>Writes neighbouring literals as one, because a name may begin in one and end in the next; gives the last of them.</summary>
    private LiteralInline Literals(LiteralInline literal, bool inLink)
    {
        literals.Clear().Append(literal.Content.AsSpan());
        while (literal.NextSibling is LiteralInline next)
        {
            literals.Append(next.Content.AsSpan());
            literal = next;
        }

        if (inLink)
        {
            html.Text(literals.ToString());
        }
        else
        {
            LinkedNames.Write(html, literals.ToString(), story.Targets);
        }

        return literal;
    }

    private void Write(Inline inline, bool inLink)
    {
        switch (inline)
        {
            case CodeInline code:
                html.Open(Tag.Code).Text(code.Content);
                break;
            case HtmlEntityInline entity:
                html.Text(entity.Transcoded.AsSpan());
                break;
            case HtmlInline raw:
                NoteHtml(raw.Line);
                html.Text(raw.Tag);
                break;
            case LineBreakInline { IsHard: true }:
                html.Open(Tag.Br).Close();
                html.Text("\n");
                break;
            case LineBreakInline:
                html.Text("\n");
                break;
            case EmphasisInline emphasis:
                using (html.Open(emphasis.DelimiterCount == 2 ? Tag.Strong : Tag.Em))
                {
                    Children(emphasis, inLink);
                }

                break;
            case AutolinkInline link:
                WriteLink(link, link.IsEmail ? "mailto:" + link.Url : link.Url, title: null, inLink);
                break;
            case LinkInline { IsImage: true } picture:
                WritePicture(picture, inLink);
                break;
            case LinkInline link:
                WriteLink(link, link.Url ?? "", link.Title, inLink);
                break;
            case DelimiterInline left:
                // A mark that found no partner, such as a lone bracket.
                html.Text(left.ToLiteral());
                Children(left, inLink);
                break;
            case ContainerInline other:
                Children(other, inLink);
                break;
        }
    }

    private void WriteLink(Inline link, string address, string? title, bool inLink)
    {
        if (inLink || Resolve(address, link.Line) is not { } target)
        {
            Words(link, inLink);
            return;
        }

        using (var element = html.Open(Tag.A).To(target))
        {
            if (target is ExternalLink && link is not AutolinkInline)
            {
                element.With(ClassName.External);
            }

            if (!string.IsNullOrEmpty(title))
            {
                element.With(TextAttribute.Title, title);
            }

            Words(link, inLink: true);
        }

        if (target is ExternalLink { Host: var host } && ShownHost.Differs(InlineText.Read(link), host))
        {
            html.Text(" ");
            html.Open(Tag.Span, ClassName.Host).Text($"({host})");
        }
    }

    private void Words(Inline link, bool inLink)
    {
        if (link is ContainerInline container)
        {
            Children(container, inLink);
        }
        else
        {
            html.Text(InlineText.Read(link));
        }
    }

    private void WritePicture(LinkInline picture, bool inLink)
    {
        var description = InlineText.Read(picture);
        switch (StoryAddress.Read(picture.Url ?? "", story.Folder))
        {
            case StoryAddress.Inside inside when story.Targets.Picture(inside.Path) is { } file:
                WritePicture(picture, description, file);
                break;
            case StoryAddress.Inside inside:
                Note(StoryNoteKind.FileMissing, picture.Line, $"no picture '{inside.Path}' in the collection");
                html.Text(description);
                break;
            case StoryAddress.Elsewhere elsewhere:
                Note(
                    StoryNoteKind.PictureElsewhere,
                    picture.Line,
                    $"a picture from {elsewhere.Link.Host} is not loaded, only linked; keep a copy in the collection"
                );
                WritePictureLink(elsewhere.Link, description, inLink);
                break;
            case StoryAddress.SamePage:
                Refuse(picture.Line, "an address that names no picture");
                html.Text(description);
                break;
            case StoryAddress.Refused refused:
                Refuse(picture.Line, refused.Reason);
                html.Text(description);
                break;
        }
    }

    private void WritePicture(LinkInline picture, string description, LocalLink file)
    {
        if (description.Length == 0)
        {
            Note(
                StoryNoteKind.PictureWithoutDescription,
                picture.Line,
                "a picture without a description; write what it shows between ![ and ]"
            );
        }

        var element = html.Open(Tag.Img).Showing(file).With(TextAttribute.Alt, description).With(FixedAttribute.LazyLoading);
        if (!string.IsNullOrEmpty(picture.Title))
        {
            element.With(TextAttribute.Title, picture.Title);
        }

        element.Close();
    }

    private void WritePictureLink(ExternalLink link, string description, bool inLink)
    {
        var words = description.Length == 0 ? link.Host : description;
        if (inLink)
        {
            html.Text(words);
            return;
        }

        html.Open(Tag.A, ClassName.External).To(link).Text(words);
        if (ShownHost.Differs(words, link.Host))
        {
            html.Text(" ");
            html.Open(Tag.Span, ClassName.Host).Text($"({link.Host})");
        }
    }

    private Link? Resolve(string address, int line)
    {
        switch (StoryAddress.Read(address, story.Folder))
        {
            case StoryAddress.Elsewhere elsewhere:
                return elsewhere.Link;
            case StoryAddress.Inside inside:
                var file = story.Targets.File(inside.Path, inside.Place);
                if (file is null)
                {
                    Note(StoryNoteKind.FileMissing, line, $"no file '{inside.Path}' in the collection");
                }

                return file;
            case StoryAddress.SamePage same:
                Link? place = headings.Find(same.Place) is { } id ? LocalLink.ToFragment(id) : story.Targets.Reference(same.Place);
                if (place is null)
                {
                    Refuse(line, $"no heading and no part '{same.Place}' in this record");
                }

                return place;
            case StoryAddress.Refused refused:
                Refuse(line, refused.Reason);
                return null;
            default:
                return null;
        }
    }

    private void Refuse(int line, string reason) => Note(StoryNoteKind.LinkRefused, line, $"link dropped, its text kept: {reason}");

    private void Note(StoryNoteKind kind, int line, string message) => notes.Add(new StoryNote(kind, line + 1, message));
}
