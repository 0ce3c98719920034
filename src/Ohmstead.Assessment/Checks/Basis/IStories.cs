using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>What becomes of the stories below the records; how a page is written stays outside the checks.</summary>
public interface IStories
{
    /// <summary>The links of a story that lead nowhere a page may lead: its words stay, the link goes.</summary>
    /// <param name="body">The story, as written.</param>
    /// <param name="folder">The folder of its record, from the root of the collection.</param>
    IEnumerable<DroppedLink> Dropped(string body, string folder);
}

/// <summary>A link that a page does without.</summary>
/// <param name="Spot">Where it stands in the story, whose first line is 1.</param>
/// <param name="Address">The address as written.</param>
/// <param name="Why">What sort of address it is: "an address that is neither http, https nor mailto".</param>
public sealed record DroppedLink(Spot Spot, string Address, string Why);

/// <summary>The stories of a collection that has none, or of which nobody makes a page.</summary>
public sealed class NoStories : IStories
{
    /// <summary>The one there is.</summary>
    public static NoStories Instance { get; } = new();

    /// <inheritdoc/>
    public IEnumerable<DroppedLink> Dropped(string body, string folder) => [];
}
