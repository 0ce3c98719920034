using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>An attribute that holds text. None of them is a place for a script, a style or an address.</summary>
public sealed class TextAttribute
{
    private TextAttribute(string name, int bit, bool isNumbers = false)
    {
        IsNumbers = isNumbers;
        Start = Encoding.ASCII.GetBytes($" {name}=");
        Bit = 1UL << bit;
    }

    /// <summary>A picture in words; empty for one that only decorates.</summary>
    public static TextAttribute Alt { get; } = new("alt", 0);

    /// <summary>More about the element, shown on request.</summary>
    public static TextAttribute Title { get; } = new("title", 1);

    /// <summary>The language of the content, such as <c>en</c>.</summary>
    public static TextAttribute Lang { get; } = new("lang", 2);

    /// <summary>The name of the element for those who do not see it.</summary>
    public static TextAttribute AriaLabel { get; } = new("aria-label", 3);

    /// <summary>A date in ISO 8601.</summary>
    public static TextAttribute DateTime { get; } = new("datetime", 4);

    /// <summary>The machine form of what is shown.</summary>
    public static TextAttribute Value { get; } = new("value", 5);

    /// <summary>The run of a path of a drawing.</summary>
    public static TextAttribute PathData { get; } = new("d", 6, isNumbers: true);

    /// <summary>The coordinates that a drawing covers.</summary>
    public static TextAttribute ViewBox { get; } = new("viewBox", 7, isNumbers: true);

    /// <summary>How a part of a drawing is moved or turned.</summary>
    public static TextAttribute Transform { get; } = new("transform", 8);

    /// <summary>The name of the column that a cell stands in, shown before it where the table is too narrow for columns.</summary>
    public static TextAttribute Column { get; } = new("data-column", 9);

    /// <summary>The file beside the page that holds all rows of a table that has more than one page.</summary>
    public static TextAttribute Rows { get; } = new("data-rows", 10);

    /// <summary>What every sheet of the page says when it is printed, in the margin.</summary>
    public static TextAttribute Sheet { get; } = new("data-sheet", 11);

    /// <summary>The bytes put into the start tag.</summary>
    internal byte[] Start { get; }

    /// <summary>True for numbers of a drawing, parted by blanks or commas.</summary>
    internal bool IsNumbers { get; }

    /// <summary>One bit for each attribute name, so that none is given twice.</summary>
    internal ulong Bit { get; }
}
