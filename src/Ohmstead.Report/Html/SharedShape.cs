using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>A shape that stands once in a page and is shown wherever it is wanted. The set is closed: no text of a record becomes the name
/// of one. A page names them some hundred times, so that a name is a letter or two.</summary>
public sealed class SharedShape
{
    private SharedShape(string name, int bit) => (Bytes, Bit) = (Encoding.ASCII.GetBytes(name), 1UL << bit);

    /// <summary>Room between two limits.</summary>
    public static SharedShape Between { get; } = new("b", 0);

    /// <summary>The same with the nominal value half-way.</summary>
    public static SharedShape AroundNominal { get; } = new("n", 1);

    /// <summary>The same with the nominal value where -10/+50 % have it.</summary>
    public static SharedShape AroundTenFifty { get; } = new("t", 2);

    /// <summary>The same with the nominal value where -20/+80 % have it.</summary>
    public static SharedShape AroundTwentyEighty { get; } = new("z", 3);

    /// <summary>Room below one limit.</summary>
    public static SharedShape AtMost { get; } = new("m", 4);

    /// <summary>Room above one limit.</summary>
    public static SharedShape AtLeast { get; } = new("l", 5);

    /// <summary>Room below one limit, with strokes a factor of ten apart.</summary>
    public static SharedShape AtMostInDecades { get; } = new("mt", 6);

    /// <summary>Room above one limit, with strokes a factor of ten apart.</summary>
    public static SharedShape AtLeastInDecades { get; } = new("lt", 7);

    /// <summary>A reading inside.</summary>
    public static SharedShape Inside { get; } = new("i", 8);

    /// <summary>A reading outside.</summary>
    public static SharedShape Outside { get; } = new("o", 9);

    /// <summary>A reading too close to call.</summary>
    public static SharedShape Undecided { get; } = new("c", 10);

    /// <summary>A reading that proves nothing.</summary>
    public static SharedShape Silent { get; } = new("p", 11);

    /// <summary>A reading that no limit is known for.</summary>
    public static SharedShape Alone { get; } = new("a", 12);

    /// <summary>A reading of the part that sat there before.</summary>
    public static SharedShape Before { get; } = new("x", 13);

    /// <summary>The break behind which something lies below the scale.</summary>
    public static SharedShape BrokenBelow { get; } = new("k", 14);

    /// <summary>The break behind which something lies above it.</summary>
    public static SharedShape BrokenAbove { get; } = new("h", 15);

    /// <summary>The name in a page.</summary>
    internal byte[] Bytes { get; }

    /// <summary>One bit for each shape.</summary>
    internal ulong Bit { get; }
}
