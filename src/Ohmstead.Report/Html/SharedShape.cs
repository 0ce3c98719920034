using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>A shape that stands once in a page and is shown wherever it is wanted. The set is closed: no text of a record becomes the name
/// of one. A page names them some hundred times, so that a name is a letter or two.</summary>
public sealed class SharedShape
{
    private SharedShape(string name) => Bytes = Encoding.ASCII.GetBytes("s-" + name);

    /// <summary>Room between two limits.</summary>
    public static SharedShape Between { get; } = new("b");

    /// <summary>Room below one limit.</summary>
    public static SharedShape AtMost { get; } = new("m");

    /// <summary>Room above one limit.</summary>
    public static SharedShape AtLeast { get; } = new("l");

    /// <summary>Room below one limit, with strokes a factor of ten apart.</summary>
    public static SharedShape AtMostInDecades { get; } = new("mt");

    /// <summary>Room above one limit, with strokes a factor of ten apart.</summary>
    public static SharedShape AtLeastInDecades { get; } = new("lt");

    /// <summary>A reading inside.</summary>
    public static SharedShape Inside { get; } = new("i");

    /// <summary>A reading outside.</summary>
    public static SharedShape Outside { get; } = new("o");

    /// <summary>A reading too close to call.</summary>
    public static SharedShape Undecided { get; } = new("c");

    /// <summary>A reading that proves nothing.</summary>
    public static SharedShape Silent { get; } = new("p");

    /// <summary>A reading that no limit is known for.</summary>
    public static SharedShape Alone { get; } = new("a");

    /// <summary>A reading of the part that sat there before.</summary>
    public static SharedShape Before { get; } = new("x");

    /// <summary>The name in a page.</summary>
    internal byte[] Bytes { get; }
}
