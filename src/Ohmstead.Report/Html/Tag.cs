namespace Ohmstead.Report.Html;

/// <summary>An element of HTML or SVG that a page may hold. The set is closed and holds nothing that can run, load or embed.</summary>
public sealed class Tag
{
    private Tag(
        string name,
        bool isBlock = false,
        bool isVoid = false,
        bool isDrawn = false,
        bool isEndImplied = false,
        bool isVerbatim = false,
        bool endsParagraph = false
    )
    {
        Name = name;
        Start = System.Text.Encoding.ASCII.GetBytes($"<{name}");
        // HTML ends an item, a cell, a row or a body where the next one starts or what it stands in ends; a page has hundreds of them. A
        // line break after a cell would be inside it, and an empty cell no longer empty.
        End = System.Text.Encoding.ASCII.GetBytes(
            isEndImplied
                ? isBlock
                    ? "\n"
                    : string.Empty
                : isBlock
                    ? $"</{name}>\n"
                    : $"</{name}>"
        );
        IsBlock = isBlock;
        IsEndImplied = isEndImplied;
        IsVoid = isVoid;
        IsVerbatim = isVerbatim;
        IsDrawn = isDrawn;
        EndsParagraph = endsParagraph;
    }

    /// <summary>The whole page.</summary>
    public static Tag Html { get; } = new("html", isBlock: true);

    /// <summary>What the page says about itself.</summary>
    public static Tag Head { get; } = new("head", isBlock: true);

    /// <summary>One fact about the page.</summary>
    public static Tag Meta { get; } = new("meta", isBlock: true, isVoid: true);

    /// <summary>The style sheet.</summary>
    public static Tag Link { get; } = new("link", isBlock: true, isVoid: true);

    /// <summary>The style of a page that stands alone; only fixed bytes of the program go in, see <see cref="InlineStyle"/>.</summary>
    internal static Tag Style { get; } = new("style", isBlock: true);

    /// <summary>The title of the page, or of a drawing.</summary>
    public static Tag Title { get; } = new("title", isVerbatim: true);

    /// <summary>What is shown.</summary>
    public static Tag Body { get; } = new("body", isBlock: true);

    /// <summary>The head of the page or of a section.</summary>
    public static Tag Header { get; } = new("header", endsParagraph: true);

    /// <summary>The foot of the page or of a section.</summary>
    public static Tag Footer { get; } = new("footer", isBlock: true, endsParagraph: true);

    /// <summary>The content of the page.</summary>
    public static Tag Main { get; } = new("main", isBlock: true, endsParagraph: true);

    /// <summary>Links to other places.</summary>
    public static Tag Nav { get; } = new("nav", isBlock: true, endsParagraph: true);

    /// <summary>A part of the page with its own heading.</summary>
    public static Tag Section { get; } = new("section", isBlock: true, endsParagraph: true);

    /// <summary>A piece that stands alone.</summary>
    public static Tag Article { get; } = new("article", isBlock: true, endsParagraph: true);

    /// <summary>A remark beside the content.</summary>
    public static Tag Aside { get; } = new("aside", isBlock: true, endsParagraph: true);

    /// <summary>A box without meaning.</summary>
    public static Tag Div { get; } = new("div", endsParagraph: true);

    /// <summary>The heading of the page.</summary>
    public static Tag H1 { get; } = new("h1", isBlock: true, endsParagraph: true);

    /// <summary>A heading of the second rank.</summary>
    public static Tag H2 { get; } = new("h2", isBlock: true, endsParagraph: true);

    /// <summary>A heading of the third rank.</summary>
    public static Tag H3 { get; } = new("h3", isBlock: true, endsParagraph: true);

    /// <summary>A heading of the fourth rank.</summary>
    public static Tag H4 { get; } = new("h4", isBlock: true, endsParagraph: true);

    /// <summary>A heading of the fifth rank.</summary>
    public static Tag H5 { get; } = new("h5", isBlock: true, endsParagraph: true);

    /// <summary>A heading of the sixth rank.</summary>
    public static Tag H6 { get; } = new("h6", isBlock: true, endsParagraph: true);

    /// <summary>A paragraph.</summary>
    public static Tag P { get; } = new("p", isBlock: true, endsParagraph: true);

    /// <summary>A break between subjects.</summary>
    public static Tag Hr { get; } = new("hr", isBlock: true, endsParagraph: true, isVoid: true);

    /// <summary>Text with its own line breaks.</summary>
    public static Tag Pre { get; } = new("pre", isBlock: true, endsParagraph: true, isVerbatim: true);

    /// <summary>Words of somebody else.</summary>
    public static Tag BlockQuote { get; } = new("blockquote", isBlock: true, endsParagraph: true);

    /// <summary>A numbered list.</summary>
    public static Tag Ol { get; } = new("ol", endsParagraph: true);

    /// <summary>A list.</summary>
    public static Tag Ul { get; } = new("ul", endsParagraph: true);

    /// <summary>An item of a list.</summary>
    public static Tag Li { get; } = new("li", isBlock: true, isEndImplied: true);

    /// <summary>A list of terms with what is said of them.</summary>
    public static Tag Dl { get; } = new("dl", endsParagraph: true);

    /// <summary>A term.</summary>
    public static Tag Dt { get; } = new("dt", isEndImplied: true);

    /// <summary>What is said of a term.</summary>
    public static Tag Dd { get; } = new("dd", isEndImplied: true);

    /// <summary>A picture with its caption.</summary>
    public static Tag Figure { get; } = new("figure", endsParagraph: true);

    /// <summary>The caption of a picture.</summary>
    public static Tag FigCaption { get; } = new("figcaption", isBlock: true, endsParagraph: true);

    /// <summary>A table.</summary>
    public static Tag Table { get; } = new("table", endsParagraph: true);

    /// <summary>What a table holds.</summary>
    public static Tag Caption { get; } = new("caption", isBlock: true);

    /// <summary>The head of a table.</summary>
    public static Tag THead { get; } = new("thead", isEndImplied: true);

    /// <summary>The rows of a table.</summary>
    public static Tag TBody { get; } = new("tbody", isEndImplied: true);

    /// <summary>The foot of a table.</summary>
    public static Tag TFoot { get; } = new("tfoot", isBlock: true);

    /// <summary>A row.</summary>
    public static Tag Tr { get; } = new("tr", isEndImplied: true);

    /// <summary>A heading cell.</summary>
    public static Tag Th { get; } = new("th", isEndImplied: true);

    /// <summary>A cell.</summary>
    public static Tag Td { get; } = new("td", isEndImplied: true);

    /// <summary>Something that opens on request.</summary>
    public static Tag Details { get; } = new("details", endsParagraph: true);

    /// <summary>The line that opens the details.</summary>
    public static Tag Summary { get; } = new("summary");

    /// <summary>A link.</summary>
    public static Tag A { get; } = new("a");

    /// <summary>A short form.</summary>
    public static Tag Abbr { get; } = new("abbr");

    /// <summary>A word to notice.</summary>
    public static Tag B { get; } = new("b");

    /// <summary>Some words that stay on one line, or that have a column of their own in it.</summary>
    public static Tag I { get; } = new("i");

    /// <summary>A line break.</summary>
    public static Tag Br { get; } = new("br", isVoid: true);

    /// <summary>Text for or from a machine.</summary>
    public static Tag Code { get; } = new("code", isVerbatim: true);

    /// <summary>Emphasis.</summary>
    public static Tag Em { get; } = new("em");

    /// <summary>Strong emphasis.</summary>
    public static Tag Strong { get; } = new("strong");

    /// <summary>A side note.</summary>
    public static Tag Small { get; } = new("small");

    /// <summary>Some words without meaning of their own.</summary>
    public static Tag Span { get; } = new("span");

    /// <summary>A value with its machine form.</summary>
    public static Tag Data { get; } = new("data");

    /// <summary>A picture.</summary>
    public static Tag Img { get; } = new("img", isVoid: true);

    /// <summary>Lowered.</summary>
    public static Tag Sub { get; } = new("sub");

    /// <summary>Raised.</summary>
    public static Tag Sup { get; } = new("sup");

    /// <summary>A drawing in the page.</summary>
    public static Tag Svg { get; } = new("svg");

    /// <summary>A group of a drawing.</summary>
    public static Tag G { get; } = new("g");

    /// <summary>A drawing in words.</summary>
    public static Tag Desc { get; } = new("desc", isVerbatim: true);

    /// <summary>A rectangle of a drawing.</summary>
    public static Tag Rect { get; } = new("rect", isDrawn: true);

    /// <summary>A line of a drawing.</summary>
    public static Tag Line { get; } = new("line", isDrawn: true);

    /// <summary>A path of a drawing.</summary>
    public static Tag Path { get; } = new("path", isDrawn: true);

    /// <summary>A circle of a drawing.</summary>
    public static Tag Circle { get; } = new("circle", isDrawn: true);

    /// <summary>A shape that is drawn once and shown in many places.</summary>
    public static Tag Symbol { get; } = new("symbol");

    /// <summary>A place where such a shape is shown.</summary>
    public static Tag Use { get; } = new("use", isDrawn: true);

    /// <summary>A label of a drawing.</summary>
    public static Tag Text { get; } = new("text", isVerbatim: true);

    /// <summary>The name as written in the page.</summary>
    public string Name { get; }

    /// <summary>True when the source breaks the line after the element; that never shows.</summary>
    internal bool IsBlock { get; }

    /// <summary>True for an element that has no content and no end tag.</summary>
    internal bool IsVoid { get; }

    /// <summary>True for an element whose text is shown character by character: code, and what may hold no element.</summary>
    internal bool IsVerbatim { get; }

    /// <summary>True for an element that HTML ends by itself.</summary>
    internal bool IsEndImplied { get; }

    /// <summary>True for an element before which HTML ends a paragraph by itself.</summary>
    internal bool EndsParagraph { get; }

    /// <summary>True for a shape of a drawing, which closes itself when nothing is in it.</summary>
    internal bool IsDrawn { get; }

    /// <summary>The start tag up to the attributes.</summary>
    internal byte[] Start { get; }

    /// <summary>The end tag, with its line break when there is one.</summary>
    internal byte[] End { get; }
}
