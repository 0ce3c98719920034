using Ohmstead.Report.Html;

namespace Ohmstead.Report.Sheets;

/// <summary>The class names of a bench sheet.</summary>
internal static class SheetClass
{
    /// <summary>The code that leads to the record.</summary>
    public static ClassName Code { get; } = new("code");

    /// <summary>The number of the board.</summary>
    public static ClassName Number { get; } = new("number");

    /// <summary>A line of facts or of words to be written behind.</summary>
    public static ClassName Line { get; } = new("line");

    /// <summary>A place to write on.</summary>
    public static ClassName Blank { get; } = new("blank");

    /// <summary>A narrow place to write on.</summary>
    public static ClassName Short { get; } = new("short");

    /// <summary>A box to tick, with its word.</summary>
    public static ClassName Tick { get; } = new("tick");

    /// <summary>What can hurt.</summary>
    public static ClassName Caution { get; } = new("caution");

    /// <summary>A limit or a name that is never broken over lines.</summary>
    public static ClassName Whole { get; } = new("whole");

    /// <summary>A cell that is left for writing in.</summary>
    public static ClassName Write { get; } = new("write");

    /// <summary>Ruled room for notes.</summary>
    public static ClassName Ruled { get; } = new("ruled");

    /// <summary>What stands side by side.</summary>
    public static ClassName Beside { get; } = new("beside");

    /// <summary>The answer, in large letters.</summary>
    public static ClassName Lead { get; } = new("lead");

    /// <summary>Steps in order of time.</summary>
    public static ClassName Steps { get; } = new("steps");

    /// <summary>A figure of a table.</summary>
    public static ClassName Figure { get; } = new("figure");

    /// <summary>Small print.</summary>
    public static ClassName Fine { get; } = new("fine");
}
