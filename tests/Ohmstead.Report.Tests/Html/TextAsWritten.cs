using AngleSharp.Dom;

namespace Ohmstead.Report.Tests.Html;

/// <summary>The words of a page as a record and a test have them.</summary>
internal static class TextAsWritten
{
    /// <summary>The text without what only the printer's eye sees: a space is a space and a hyphen stands for a minus.</summary>
    public static string Words(this INode node) => node.TextContent.Replace('\u00A0', ' ').Replace('\u2212', '-');
}
