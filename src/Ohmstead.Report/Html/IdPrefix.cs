using System.Buffers;
using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>The first part of every id in a page: what kind of thing it marks. With it, no text of a record can take the name of anything
/// else. What a page names some hundred times has a letter.</summary>
public sealed class IdPrefix
{
    private IdPrefix(string name)
    {
        Name = name;
        Bytes = Encoding.ASCII.GetBytes(name);
    }

    /// <summary>A section of the page.</summary>
    public static IdPrefix Section { get; } = new("s-");

    /// <summary>A board in a list of boards.</summary>
    public static IdPrefix Board { get; } = new("board-");

    /// <summary>A part of a board, by its reference designator.</summary>
    public static IdPrefix Part { get; } = new("p-");

    /// <summary>A reading.</summary>
    public static IdPrefix Reading { get; } = new("r-");

    /// <summary>A test point.</summary>
    public static IdPrefix Point { get; } = new("point-");

    /// <summary>A visit to the bench, by its day.</summary>
    public static IdPrefix Visit { get; } = new("v-");

    /// <summary>A step of work.</summary>
    public static IdPrefix Work { get; } = new("work-");

    /// <summary>A lot of spare parts.</summary>
    public static IdPrefix Lot { get; } = new("lot-");

    /// <summary>An order.</summary>
    public static IdPrefix Order { get; } = new("order-");

    /// <summary>A family of parts.</summary>
    public static IdPrefix Family { get; } = new("family-");

    /// <summary>A photograph.</summary>
    public static IdPrefix Photo { get; } = new("photo-");

    /// <summary>A standard, handbook or practice that the page leans on.</summary>
    public static IdPrefix Source { get; } = new("q-");

    /// <summary>What limits of the page are and where they come from.</summary>
    public static IdPrefix Rule { get; } = new("l-");

    /// <summary>A measuring instrument.</summary>
    public static IdPrefix Instrument { get; } = new("instrument-");

    /// <summary>A check.</summary>
    public static IdPrefix Check { get; } = new("check-");

    /// <summary>A heading in a story.</summary>
    public static IdPrefix Story { get; } = new("story-");

    /// <summary>The text put before.</summary>
    public string Name { get; }

    /// <summary>The characters of most names, which stand in an id as they are.</summary>
    internal static SearchValues<char> Plain { get; } =
        SearchValues.Create("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz-.");

    internal byte[] Bytes { get; }
}
