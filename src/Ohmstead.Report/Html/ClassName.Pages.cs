namespace Ohmstead.Report.Html;

/// <summary>Classes of the pages' own parts.</summary>
public sealed partial class ClassName
{
    /// <summary>The line of links above a page.</summary>
    public static ClassName Trail { get; } = new("trail");

    /// <summary>The state of a board.</summary>
    public static ClassName State { get; } = new("state");

    /// <summary>A mark: a small drawing that tells a state or a verdict by its shape.</summary>
    public static ClassName Mark { get; } = new("mark");

    /// <summary>Lines of a mark.</summary>
    public static ClassName MarkLine { get; } = new("mark-line");

    /// <summary>Filled areas of a mark.</summary>
    public static ClassName MarkFill { get; } = new("mark-fill");

    /// <summary>Something good: inside, fit.</summary>
    public static ClassName Good { get; } = new("good");

    /// <summary>Something that calls for work.</summary>
    public static ClassName Bad { get; } = new("bad");

    /// <summary>Something that does not decide, or waits.</summary>
    public static ClassName Open { get; } = new("open");

    /// <summary>Something that says nothing.</summary>
    public static ClassName Quiet { get; } = new("quiet");

    /// <summary>Cautions.</summary>
    public static ClassName Caution { get; } = new("caution");

    /// <summary>A list of facts.</summary>
    public static ClassName Facts { get; } = new("facts");

    /// <summary>The counts at the head of the collection.</summary>
    public static ClassName Tally { get; } = new("tally");

    /// <summary>A verdict.</summary>
    public static ClassName Verdict { get; } = new("verdict");

    /// <summary>The working of a verdict.</summary>
    public static ClassName Working { get; } = new("working");

    /// <summary>A visit to the bench.</summary>
    public static ClassName Visit { get; } = new("visit");

    /// <summary>Photographs.</summary>
    public static ClassName Photos { get; } = new("photos");

    /// <summary>A table that is read by rows.</summary>
    public static ClassName Ledger { get; } = new("ledger");

    /// <summary>The foot of a page.</summary>
    public static ClassName Colophon { get; } = new("colophon");

    /// <summary>A note that everything on the page is invented.</summary>
    public static ClassName Invented { get; } = new("invented");

    /// <summary>Small print.</summary>
    public static ClassName Fine { get; } = new("fine");
}
