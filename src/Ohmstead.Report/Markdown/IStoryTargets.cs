using Ohmstead.Report.Html;

namespace Ohmstead.Report.Markdown;

/// <summary>What the text of a record can refer to. Answers must depend on the collection only, never on the moment.</summary>
public interface IStoryTargets
{
    /// <summary>The place of a thing that the text names in passing, such as <c>C12</c> or <c>SP-0007</c>; null when there is no such
    /// thing.</summary>
    /// <param name="name">The name as written.</param>
    Link? Reference(string name);

    /// <summary>The page or file that stands for a file of the collection; null when there is no such file.</summary>
    /// <param name="path">The path from the root of the collection: forward slashes, decoded, no <c>.</c> and no <c>..</c> in it.</param>
    /// <param name="place">What is named after <c>#</c>, decoded, or null.</param>
    LocalLink? File(string path, string? place);

    /// <summary>The picture of the report that stands for a file of the collection; null when there is no such picture.</summary>
    /// <param name="path">The path from the root of the collection, as for <see cref="File"/>.</param>
    LocalLink? Picture(string path);
}
