using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Checks.Files;

/// <summary>A link in a story leads where no page leads, so the page does without it.</summary>
public sealed class LinkDropped : IFileCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "link-dropped",
            Severity.Warning,
            "a link in a story leads where no page leads, so the page does without it",
            CheckEffect.Told,
            "nothing is judged by a link"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(FileUnderCheck file) =>
        file
            .Stories.Dropped(file.Story, file.Path[..Math.Max(file.Path.LastIndexOf('/'), 0)])
            .Select(link =>
                file.Finding(
                    Description,
                    link.Spot with
                    {
                        Line = link.Spot.Line + file.StoryLine - 1,
                    },
                    $"the page shows the words of this link and leaves out where it leads: {Quotation.Quote(link.Address)} is {link.Why}",
                    "write an address that begins with https:// or http://, or the path of a file of the collection, or the words alone"
                )
            );
}
