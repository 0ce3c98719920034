using System.Globalization;
using System.Runtime.CompilerServices;

namespace Ohmstead.Report.Html;

/// <summary>The only way a page is made: elements and attributes from closed sets, text always escaped, every element ended.</summary>
/// <remarks>
/// <code>
/// using (html.Open(Tag.Tr).With(ElementId.Of(IdPrefix.Part, "C12")))
/// {
///     html.Open(Tag.Th).With(FixedAttribute.ScopeRow).Text("C12");
///     html.Open(Tag.Td).With(ClassName.Number).Text("391 µF");
/// }
/// </code>
/// Wrong use (an attribute after content, content in a void element, elements ended in the wrong order, a page with an open
/// element) is a fault of the calling code and throws <see cref="InvalidOperationException"/>; nothing that a record holds can cause it.
/// </remarks>
public sealed class HtmlWriter
{
    private readonly PageBuffer buffer;
    private Tag[] open = new Tag[32];
    private int depth;
    private bool inStartTag;
    private ulong given;
    private ulong shown;

    // The attribute that was written last has no quotes, or there is none.
    private bool isBareLast;

    // A paragraph has ended, and what comes next decides whether that has to be said.
    private bool isParagraphEnding;

    // What was written last, where it is text: a unit may come behind a figure that was written before it.
    private char before;

    /// <summary>A writer that appends to the buffer.</summary>
    public HtmlWriter(PageBuffer buffer) => this.buffer = buffer;

    /// <summary>How many elements are open.</summary>
    public int Depth => depth;

    /// <summary>How many bytes come before what is written next; content, no attribute, may follow.</summary>
    internal long Here()
    {
        BeginContent();
        return buffer.Length;
    }

    /// <summary>Starts an element.</summary>
    public Element Open(Tag tag)
    {
        isParagraphEnding &= !tag.EndsParagraph;
        BeginContent();
        if (depth == open.Length)
        {
            Array.Resize(ref open, depth * 2);
        }

        open[depth++] = tag;
        before = '\0';
        buffer.Append(tag.Start);
        inStartTag = true;
        (given, isBareLast) = (0, false);
        return new Element(this, depth);
    }

    /// <summary>Starts an element of a class.</summary>
    public Element Open(Tag tag, ClassName name) => Open(tag).With(name);

    /// <summary>Writes text.</summary>
    public void Text(ReadOnlySpan<char> text)
    {
        BeginContent();
        if (text.IsEmpty)
        {
            return;
        }

        if (depth > 0 && open[depth - 1].IsVerbatim)
        {
            VisibleText.Write(buffer, text);
        }
        else
        {
            UnbrokenText.Write(buffer, text, before);
        }

        before = text[^1];
    }

    /// <summary>Writes text with words and figures in it, each where it stands.</summary>
    /// <param name="text">Written when it is made.</param>
    public void Text([InterpolatedStringHandlerArgument("")] WovenText text) => BeginContent();

    /// <summary>Writes a number, with a full stop as decimal sign and no separators.</summary>
    public void Text(int number)
    {
        BeginContent();
        if (number < 0)
        {
            buffer.Append("\u2212"u8);
        }

        Number(Math.Abs((long)number));
        before = '0';
    }

    /// <summary>Writes a number, with a full stop as decimal sign, a minus that is one, and no separators.</summary>
    public void Text(decimal number)
    {
        BeginContent();
        if (number < 0)
        {
            buffer.Append("\u2212"u8);
        }

        Number(Math.Abs(number));
        before = '0';
    }

    /// <summary>Says that the page is HTML. Comes first.</summary>
    public void DocumentType()
    {
        Require(depth == 0 && buffer.Length == 0, "The document type is the first thing of a page.");
        buffer.Append("<!DOCTYPE html>\n"u8);
    }

    /// <summary>Runs a script that lies beside the pages, once the page is there. No element can hold one.</summary>
    internal void Script(LocalLink file)
    {
        BeginContent();
        buffer.Append("<script src="u8);
        Value(file.Encoded);
        buffer.Append(" defer></script>\n"u8);
    }

    /// <summary>Names the small picture that stands for the pages.</summary>
    internal void Icon(LocalLink file)
    {
        BeginContent();
        buffer.Append("<link rel=icon type=image/svg+xml href="u8);
        Value(file.Encoded);
        buffer.Append(">\n"u8);
    }

    /// <summary>Says what the page says, to whoever lists it or shows it in a message: the description of HTML and the words of the Open
    /// Graph protocol in one.</summary>
    internal void About(string says, string title, string? address, string? picture)
    {
        Meta("name=description property=og:description"u8, says);
        Meta("property=og:title"u8, title);
        Meta("property=og:type"u8, "website");
        if (address is not null)
        {
            Meta("property=og:url"u8, address);
        }

        if (picture is not null)
        {
            Meta("property=og:image"u8, picture);
        }
    }

    private void Meta(ReadOnlySpan<byte> name, ReadOnlySpan<char> content)
    {
        BeginContent();
        buffer.Append("<meta "u8);
        buffer.Append(name);
        buffer.Append(" content="u8);
        Value(content);
        buffer.Append(">\n"u8);
    }

    /// <summary>Leads to a file that holds the same for programs.</summary>
    internal void Alternate(Alternate other, int levelsUp)
    {
        BeginContent();
        buffer.Append("<link rel=alternate type="u8);
        Value(other.MediaType);
        buffer.Append(" title="u8);
        Value(other.Title);
        buffer.Append(" href="u8);
        Value(LocalLink.ToFile(other.Path, levelsUp).Encoded);
        buffer.Append(">\n"u8);
    }

    /// <summary>Says that the page is complete.</summary>
    public void Finish()
    {
        Require(depth == 0, "An element is still open.");
        EndParagraph();
    }

    internal void Unescaped(ReadOnlySpan<byte> bytes)
    {
        BeginContent();
        buffer.Append(bytes);
        before = '\0';
    }

    /// <summary>Whether a shape was shown so far.</summary>
    internal bool HasShown(SharedShape shape) => (shown & shape.Bit) != 0;

    internal void Note(SharedShape shape) => shown |= shape.Bit;

    internal void RequireTag(int element, Tag tag) =>
        Require(
            depth == element && ReferenceEquals(open[depth - 1], tag),
            "Only a link leads somewhere, only a picture shows a file, only a symbol is a shape and only a use shows one."
        );

    internal void Attribute(int element, ulong bit, ReadOnlySpan<byte> whole)
    {
        Require(inStartTag && depth == element, "Attributes come before the content of their element.");
        Require((given & bit) == 0, "An attribute is given once.");
        given |= bit;
        buffer.Append(whole);
        isBareLast = whole[^1] != (byte)'"';
    }

    internal void Attribute(int element, ulong bit, ReadOnlySpan<byte> start, ReadOnlySpan<char> value)
    {
        Attribute(element, bit, start);
        Value(value);
    }

    internal void Attribute(int element, TextAttribute attribute, ReadOnlySpan<char> value)
    {
        Attribute(element, attribute.Bit, attribute.Start);
        if (attribute.IsNumbers && AttributeText.IsNumbers(value))
        {
            Numbers(value);
        }
        else
        {
            Value(value);
        }
    }

    internal void Attribute(int element, ulong bit, ReadOnlySpan<byte> start, ElementId id)
    {
        Attribute(element, bit, start);
        id.Write(buffer);
    }

    internal void Attribute<T>(int element, ulong bit, ReadOnlySpan<byte> start, T value)
        where T : IUtf8SpanFormattable
    {
        Attribute(element, bit, start);
        Number(value);
    }

    internal void Attribute(int element, ulong bit, ReadOnlySpan<byte> start, ReadOnlySpan<byte> name)
    {
        Attribute(element, bit, start);
        buffer.Append(name);
    }

    internal void Attribute(int element, ulong bit, ReadOnlySpan<byte> start, ReadOnlySpan<byte> first, ReadOnlySpan<byte> second)
    {
        Attribute(element, bit, start);
        buffer.Append("\""u8);
        buffer.Append(first);
        buffer.Append(" "u8);
        buffer.Append(second);
        buffer.Append("\""u8);
        isBareLast = false;
    }

    internal void Close(int element)
    {
        Require(depth == element, "Elements end in the order opposite to their start, each once.");
        var tag = open[--depth];
        before = '\0';
        // What a paragraph stands in ends it, too, unless that is a link or may be ended behind it.
        var isParagraphEnded = isParagraphEnding && !ReferenceEquals(tag, Tag.A) && !ReferenceEquals(tag, Tag.Body);
        isParagraphEnding &= !isParagraphEnded;
        EndParagraph();
        if (inStartTag && tag.IsDrawn)
        {
            // Behind a bare value a slash would be part of it.
            buffer.Append(isBareLast ? " />"u8 : "/>"u8);
            inStartTag = false;
            return;
        }

        if (inStartTag)
        {
            EndStartTag(tag);
        }

        if (ReferenceEquals(tag, Tag.P))
        {
            isParagraphEnding = true;
        }
        else if (!tag.IsVoid)
        {
            // A line break behind an item would be one in its paragraph.
            buffer.Append(isParagraphEnded && tag.IsEndImplied ? default : tag.End);
        }
        else if (tag.IsBlock)
        {
            buffer.Append("\n"u8);
        }
    }

    private void EndParagraph()
    {
        if (isParagraphEnding)
        {
            buffer.Append(Tag.P.End);
            isParagraphEnding = false;
        }
    }

    private void BeginContent()
    {
        EndParagraph();
        if (inStartTag)
        {
            Require(!open[depth - 1].IsVoid, "A void element has no content.");
            EndStartTag(open[depth - 1]);
        }
    }

    private void EndStartTag(Tag tag)
    {
        // A parser drops one line break after <pre>: with one given away, those of the text are safe.
        buffer.Append(ReferenceEquals(tag, Tag.Pre) ? ">\n"u8 : ">"u8);
        inStartTag = false;
    }

    private void Value(ReadOnlySpan<char> value)
    {
        isBareLast = AttributeText.IsBare(value);
        buffer.Append(isBareLast ? default : "\""u8);
        VisibleText.Write(buffer, value);
        buffer.Append(isBareLast ? default : "\""u8);
    }

    // A comma parts numbers as well as a blank, and needs no quotes.
    private void Numbers(ReadOnlySpan<char> value)
    {
        var target = buffer.GetSpan(value.Length);
        for (var at = 0; at < value.Length; at++)
        {
            target[at] = value[at] == ' ' ? (byte)',' : (byte)value[at];
        }

        buffer.Advance(value.Length);
    }

    private void Number<T>(T number)
        where T : IUtf8SpanFormattable
    {
        const int longest = 40;
        number.TryFormat(buffer.GetSpan(longest), out var written, default, CultureInfo.InvariantCulture);
        buffer.Advance(written);
    }

    private static void Require(bool condition, string rule)
    {
        if (!condition)
        {
            throw new InvalidOperationException(rule);
        }
    }
}
