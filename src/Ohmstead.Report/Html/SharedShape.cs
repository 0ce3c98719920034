using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>A shape that stands once in a page and is shown wherever it is wanted. The set is closed: no text of a record becomes the name
/// of one.</summary>
public sealed class SharedShape
{
    private SharedShape(string name) => Bytes = Encoding.ASCII.GetBytes("s-" + name);

    /// <summary>Room between two limits.</summary>
    public static SharedShape Between { get; } = new("between");

    /// <summary>Room below one limit.</summary>
    public static SharedShape AtMost { get; } = new("most");

    /// <summary>Room above one limit.</summary>
    public static SharedShape AtLeast { get; } = new("least");

    /// <summary>Strokes a factor of ten apart.</summary>
    public static SharedShape Decades { get; } = new("tens");

    /// <summary>A reading inside.</summary>
    public static SharedShape Inside { get; } = new("in");

    /// <summary>A reading outside.</summary>
    public static SharedShape Outside { get; } = new("out");

    /// <summary>A reading too close to call.</summary>
    public static SharedShape Undecided { get; } = new("close");

    /// <summary>A reading that proves nothing.</summary>
    public static SharedShape Silent { get; } = new("silent");

    /// <summary>A reading that no limit is known for.</summary>
    public static SharedShape Alone { get; } = new("alone");

    /// <summary>A reading of the part that sat there before.</summary>
    public static SharedShape Before { get; } = new("before");

    /// <summary>The name in a page.</summary>
    internal byte[] Bytes { get; }
}
