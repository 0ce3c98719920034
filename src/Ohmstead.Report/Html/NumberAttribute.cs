using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>An attribute that holds a number.</summary>
public sealed class NumberAttribute
{
    private NumberAttribute(string name, int bit)
    {
        Start = Encoding.ASCII.GetBytes($" {name}=");
        Bit = 1UL << bit;
    }

    /// <summary>How many columns a cell spans.</summary>
    public static NumberAttribute ColSpan { get; } = new("colspan", 16);

    /// <summary>How many rows a cell spans.</summary>
    public static NumberAttribute RowSpan { get; } = new("rowspan", 17);

    /// <summary>The first number of a list.</summary>
    public static NumberAttribute FirstNumber { get; } = new("start", 18);

    /// <summary>The width, in pixels or in units of the drawing.</summary>
    public static NumberAttribute Width { get; } = new("width", 19);

    /// <summary>The height, in pixels or in units of the drawing.</summary>
    public static NumberAttribute Height { get; } = new("height", 20);

    /// <summary>The left edge or the anchor, in units of the drawing.</summary>
    public static NumberAttribute X { get; } = new("x", 21);

    /// <summary>The top edge or the base line, in units of the drawing.</summary>
    public static NumberAttribute Y { get; } = new("y", 22);

    /// <summary>Where a line starts, across.</summary>
    public static NumberAttribute X1 { get; } = new("x1", 23);

    /// <summary>Where a line starts, down.</summary>
    public static NumberAttribute Y1 { get; } = new("y1", 24);

    /// <summary>Where a line ends, across.</summary>
    public static NumberAttribute X2 { get; } = new("x2", 25);

    /// <summary>Where a line ends, down.</summary>
    public static NumberAttribute Y2 { get; } = new("y2", 26);

    /// <summary>How far the corners of a rectangle are rounded.</summary>
    public static NumberAttribute Rx { get; } = new("rx", 27);

    /// <summary>The centre of a circle, across.</summary>
    public static NumberAttribute Cx { get; } = new("cx", 28);

    /// <summary>The centre of a circle, down.</summary>
    public static NumberAttribute Cy { get; } = new("cy", 29);

    /// <summary>The radius of a circle.</summary>
    public static NumberAttribute R { get; } = new("r", 30);

    /// <summary>What a cell is sorted by, where neither its number nor its words tell.</summary>
    public static NumberAttribute Order { get; } = new("data-order", 31);

    /// <summary>The bytes put into the start tag.</summary>
    internal byte[] Start { get; }

    /// <summary>One bit for each attribute name, so that none is given twice.</summary>
    internal ulong Bit { get; }
}
