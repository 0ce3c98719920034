namespace Ohmstead.Report.Html;

/// <content>The names, one for each thing the style sheet tells apart.</content>
public sealed partial class ClassName
{
    /// <summary>A cell with a number: figures of one width, to the right.</summary>
    public static ClassName Number { get; } = new("number");
}
