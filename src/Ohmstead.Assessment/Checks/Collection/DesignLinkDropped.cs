using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A link in the story of a design leads where no page leads, so the page does without it.</summary>
public sealed class DesignLinkDropped : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "design-link-dropped",
            Severity.Warning,
            "a link in the story of a design leads where no page leads, so the page does without it"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection) =>
        collection.Workshop.DesignFiles.SelectMany(design =>
            DroppedLinks.Find(collection.Stories, Description, design.Path, design.Body, design.BodyLine)
        );
}
