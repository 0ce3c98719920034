namespace Ohmstead.Report.Markdown;

/// <summary>The Markdown body of a record with what is needed to show it.</summary>
/// <param name="Body">The Markdown: CommonMark with pipe tables.</param>
/// <param name="Folder">The folder of the record, from the root of the collection, such as <c>boards</c>; empty for the root
/// itself.</param>
/// <param name="Targets">What the text can refer to.</param>
public sealed record Story(string Body, string Folder, IStoryTargets Targets)
{
    /// <summary>The rank of the first heading of the text in the page, 2 to 6: it stands below the headings of the page itself.</summary>
    public int HeadingRank { get; init; } = 3;
}
