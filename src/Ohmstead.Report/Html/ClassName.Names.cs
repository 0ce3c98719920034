namespace Ohmstead.Report.Html;

/// <content>Classes of the words of a record.</content>
public sealed partial class ClassName
{
    /// <summary>The text of a record, in its own frame.</summary>
    public static ClassName Story { get; } = new("story");

    /// <summary>A text that is shown as it was written.</summary>
    public static ClassName AsWritten { get; } = new("as-written");

    /// <summary>A box that scrolls sideways when its table is wider than the page.</summary>
    public static ClassName Scroll { get; } = new("scroll");

    /// <summary>A cell that its writer set to the right.</summary>
    public static ClassName Right { get; } = new("right");

    /// <summary>A cell that its writer centred.</summary>
    public static ClassName Centred { get; } = new("centred");

    /// <summary>A link from the name of a part or a board.</summary>
    public static ClassName Reference { get; } = new("reference");

    /// <summary>A link out of the report whose words are not its address; on paper the address follows.</summary>
    public static ClassName External { get; } = new("external");

    /// <summary>The host that a link leads to, said because its words name another.</summary>
    public static ClassName Host { get; } = new("host");
}
