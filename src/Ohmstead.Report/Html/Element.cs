using System.Runtime.CompilerServices;

namespace Ohmstead.Report.Html;

/// <summary>An element that is being written. It ends with <see cref="Dispose"/>, <see cref="Close"/> or
/// <see cref="Text(ReadOnlySpan{char})"/>; attributes come before any content.</summary>
/// <remarks>It lives on the stack only, so that it cannot outlive the page, and costs no allocation.</remarks>
public readonly ref struct Element
{
    private readonly HtmlWriter writer;
    private readonly int depth;

    internal Element(HtmlWriter writer, int depth)
    {
        this.writer = writer;
        this.depth = depth;
    }

    internal HtmlWriter Writer => writer;

    /// <summary>Gives it a class.</summary>
    public Element With(ClassName name)
    {
        writer.Attribute(depth, AttributeBit.Class, " class="u8, name.Bytes);
        return this;
    }

    /// <summary>Gives it two classes.</summary>
    public Element With(ClassName first, ClassName second)
    {
        writer.Attribute(depth, AttributeBit.Class, " class="u8, first.Bytes, second.Bytes);
        return this;
    }

    /// <summary>Gives it an id.</summary>
    public Element With(ElementId id)
    {
        writer.Attribute(depth, AttributeBit.Id, " id="u8, id);
        return this;
    }

    /// <summary>Gives it an attribute with its value.</summary>
    public Element With(FixedAttribute attribute)
    {
        writer.Attribute(depth, attribute.Bit, attribute.Whole);
        return this;
    }

    /// <summary>Gives it an attribute that holds text.</summary>
    public Element With(TextAttribute attribute, ReadOnlySpan<char> value)
    {
        writer.Attribute(depth, attribute, value);
        return this;
    }

    /// <summary>Gives it an attribute that holds a number.</summary>
    public Element With(NumberAttribute attribute, int value)
    {
        writer.Attribute(depth, attribute.Bit, attribute.Start, value);
        return this;
    }

    /// <summary>Gives it an attribute that holds a number.</summary>
    public Element With(NumberAttribute attribute, decimal value)
    {
        writer.Attribute(depth, attribute.Bit, attribute.Start, value);
        return this;
    }

    /// <summary>Says which shape of the page is shown here (<see cref="Tag.Use"/> only).</summary>
    public Element Using(SharedShape shape)
    {
        writer.RequireTag(depth, Tag.Use);
        writer.Attribute(depth, AttributeBit.Href, " href=#"u8, shape.Bytes);
        writer.Note(shape);
        return this;
    }

    /// <summary>Makes it the shape of that name (<see cref="Tag.Symbol"/> only).</summary>
    public Element Named(SharedShape shape)
    {
        writer.RequireTag(depth, Tag.Symbol);
        writer.Attribute(depth, AttributeBit.Id, " id="u8, shape.Bytes);
        return this;
    }

    /// <summary>Names it by the text of another element.</summary>
    public Element LabelledBy(ElementId id)
    {
        writer.Attribute(depth, AttributeBit.LabelledBy, " aria-labelledby="u8, id);
        return this;
    }

    /// <summary>Explains it by the text of another element.</summary>
    public Element DescribedBy(ElementId id)
    {
        writer.Attribute(depth, AttributeBit.DescribedBy, " aria-describedby="u8, id);
        return this;
    }

    /// <summary>Says where a link leads (<see cref="Tag.A"/> only). A link out of the report gets what it needs to tell its target
    /// nothing.</summary>
    public Element To(Link link)
    {
        writer.RequireTag(depth, Tag.A);
        writer.Attribute(depth, AttributeBit.Href, " href="u8, link.Encoded);
        return link is ExternalLink ? With(FixedAttribute.Leaving) : this;
    }

    /// <summary>Leads a link to a place in the same page (<see cref="Tag.A"/> only).</summary>
    public Element To(ElementId place)
    {
        if (!place.IsAscii)
        {
            return To(LocalLink.ToFragment(place));
        }

        writer.RequireTag(depth, Tag.A);
        writer.Attribute(depth, AttributeBit.Href, " href=#"u8, place);
        return this;
    }

    /// <summary>Says which file of the report is the style sheet (<see cref="Tag.Link"/> only).</summary>
    public Element StyleSheet(LocalLink file)
    {
        writer.RequireTag(depth, Tag.Link);
        writer.Attribute(depth, AttributeBit.Href, " rel=\"stylesheet\" href="u8, file.Encoded);
        return this;
    }

    /// <summary>Writes a style of the program as its content and ends it (<see cref="Tag.Style"/> only).</summary>
    public void Rules(InlineStyle style)
    {
        writer.RequireTag(depth, Tag.Style);
        writer.Unescaped(style.Bytes);
        writer.Close(depth);
    }

    /// <summary>Says that the page loads nothing and follows that style alone (<see cref="Tag.Meta"/> only).</summary>
    public Element Allowing(InlineStyle style)
    {
        writer.RequireTag(depth, Tag.Meta);
        writer.Attribute(depth, AttributeBit.Policy, style.Policy);
        return this;
    }

    /// <summary>Leads on to another page of the report at once (<see cref="Tag.Meta"/> only).</summary>
    public Element LeadingTo(LocalLink file)
    {
        writer.RequireTag(depth, Tag.Meta);
        writer.Attribute(depth, AttributeBit.Refresh, " http-equiv=refresh content="u8, $"0; url={file.Encoded}");
        return this;
    }

    /// <summary>Says which picture of the report is shown (<see cref="Tag.Img"/> only).</summary>
    public Element Showing(LocalLink file)
    {
        writer.RequireTag(depth, Tag.Img);
        writer.Attribute(depth, AttributeBit.Source, " src="u8, file.Encoded);
        return this;
    }

    /// <summary>Writes text as its content and ends it.</summary>
    public void Text(ReadOnlySpan<char> text)
    {
        writer.Text(text);
        writer.Close(depth);
    }

    /// <summary>Writes text with words and figures in it as its content and ends it.</summary>
    /// <param name="text">Written when it is made.</param>
    public void Text([InterpolatedStringHandlerArgument("")] WovenText text) => writer.Close(depth);

    /// <summary>Writes a number as its content and ends it.</summary>
    public void Text(int number)
    {
        writer.Text(number);
        writer.Close(depth);
    }

    /// <summary>Ends it.</summary>
    public void Close() => writer.Close(depth);

    /// <summary>Ends it.</summary>
    public void Dispose() => writer.Close(depth);
}
