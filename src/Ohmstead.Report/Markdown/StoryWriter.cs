using System.Globalization;
using Markdig.Extensions.Tables;
using Markdig.Helpers;
using Markdig.Syntax;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Markdown;

/// <summary>Writes the text of a record into a page. Only what is named here gets through; everything else is shown as text.</summary>
public sealed class StoryWriter
{
    private readonly HtmlWriter html;
    private readonly StoryHeadings headings;
    private readonly InlineWriter inlines;

    private StoryWriter(HtmlWriter html, Story story, MarkdownDocument tree, List<StoryNote> notes)
    {
        this.html = html;
        headings = new StoryHeadings(tree, story.HeadingRank);
        inlines = new InlineWriter(html, story, headings, notes);
    }

    /// <summary>Writes the text in a box of its own. Never throws for anything a text may hold.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="story">The text.</param>
    /// <returns>What is shown otherwise than it was meant, in order of line.</returns>
    public static IReadOnlyList<StoryNote> Write(HtmlWriter html, Story story)
    {
        var notes = new List<StoryNote>();
        using var box = html.Open(Tag.Div, ClassName.Story);
        if (StoryTree.Read(story.Body, out var refusal) is { } tree)
        {
            new StoryWriter(html, story, tree, notes).Blocks(tree);
        }
        else
        {
            html.Open(Tag.Pre, ClassName.AsWritten).Text(story.Body);
            notes.Add(refusal!);
        }

        return [.. notes.OrderBy(note => note.Line)];
    }

    private void Blocks(ContainerBlock container, bool isTight = false)
    {
        foreach (var block in container)
        {
            Write(block, isTight);
        }
    }

    private void Write(Block block, bool isTight)
    {
        switch (block)
        {
            case LinkReferenceDefinitionGroup or BlankLineBlock:
                break;
            case HeadingBlock heading:
                using (html.Open(headings.Tag(heading)).With(headings.Id(heading)))
                {
                    inlines.Write(heading.Inline);
                }

                break;
            case ParagraphBlock paragraph when isTight:
                inlines.Write(paragraph.Inline);
                break;
            case ParagraphBlock paragraph:
                using (html.Open(Tag.P))
                {
                    inlines.Write(paragraph.Inline);
                }

                break;
            case ThematicBreakBlock:
                html.Open(Tag.Hr).Close();
                break;
            case HtmlBlock raw:
                inlines.NoteHtml(raw.Line);
                Code(raw.Lines);
                break;
            case CodeBlock code:
                Code(code.Lines);
                break;
            case QuoteBlock quote:
                using (html.Open(Tag.BlockQuote))
                {
                    Blocks(quote);
                }

                break;
            case ListBlock list:
                List(list);
                break;
            case Table table:
                WriteTable(table);
                break;
            case ContainerBlock other:
                Blocks(other);
                break;
            case LeafBlock other:
                Code(other.Lines);
                break;
        }
    }

    private void Code(StringLineGroup lines)
    {
        using var pre = html.Open(Tag.Pre).With(FixedAttribute.TabStop);
        html.Open(Tag.Code).Text(lines.ToString());
    }

    private void List(ListBlock list)
    {
        var element = html.Open(list.IsOrdered ? Tag.Ol : Tag.Ul);
        if (list.IsOrdered && int.TryParse(list.OrderedStart, NumberStyles.None, CultureInfo.InvariantCulture, out var first) && first != 1)
        {
            element.With(NumberAttribute.FirstNumber, first);
        }

        foreach (var item in list.OfType<ListItemBlock>())
        {
            using var entry = html.Open(Tag.Li);
            Blocks(item, isTight: !list.IsLoose);
        }

        element.Close();
    }

    private void WriteTable(Table table)
    {
        // A wide table scrolls in its own box, which the keyboard must reach.
        using var box = html.Open(Tag.Div, ClassName.Scroll).With(FixedAttribute.TabStop);
        using var element = html.Open(Tag.Table);
        using (html.Open(Tag.THead))
        {
            Rows(table, isHead: true);
        }

        if (table.OfType<TableRow>().Any(row => !row.IsHeader))
        {
            using var body = html.Open(Tag.TBody);
            Rows(table, isHead: false);
        }
    }

    private void Rows(Table table, bool isHead)
    {
        foreach (var row in table.OfType<TableRow>().Where(row => row.IsHeader == isHead))
        {
            using var line = html.Open(Tag.Tr);
            for (var column = 0; column < row.Count; column++)
            {
                Cell(table, (TableCell)row[column], column, isHead);
            }
        }
    }

    private void Cell(Table table, TableCell cell, int column, bool isHead)
    {
        using var element = isHead ? html.Open(Tag.Th).With(FixedAttribute.ScopeColumn) : html.Open(Tag.Td);
        switch (column < table.ColumnDefinitions.Count ? table.ColumnDefinitions[column].Alignment : null)
        {
            case TableColumnAlign.Right:
                element.With(ClassName.Right);
                break;
            case TableColumnAlign.Center:
                element.With(ClassName.Centred);
                break;
        }

        Blocks(cell, isTight: true);
    }
}
