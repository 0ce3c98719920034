namespace Ohmstead.Report.Html;

/// <summary>A file beside the pages that tells programs what the pages tell people.</summary>
/// <param name="Path">Its path from the root of the report.</param>
/// <param name="MediaType">Its media type, such as <c>text/csv</c>.</param>
/// <param name="Title">What it holds.</param>
/// <param name="IsOnEveryPage">Whether the head of every page leads to it.</param>
public sealed record Alternate(string Path, string MediaType, string Title, bool IsOnEveryPage = false);
