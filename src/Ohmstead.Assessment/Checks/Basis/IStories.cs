using Ohmstead.Records.Findings;
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

/// <summary>How links that a page does without are told.</summary>
internal static class DroppedLinks
{
    /// <summary>A finding for each.</summary>
    /// <param name="stories">What becomes of stories.</param>
    /// <param name="check">The check.</param>
    /// <param name="path">The file.</param>
    /// <param name="body">Its story.</param>
    /// <param name="bodyLine">The line of the file on which the story begins.</param>
    internal static IEnumerable<Finding> Find(IStories stories, CheckDescription check, string path, string body, int bodyLine) =>
        stories
            .Dropped(body, path[..Math.Max(path.LastIndexOf('/'), 0)])
            .Select(link => new Finding(
                check.Name,
                check.Severity,
                (link.Spot with { Line = link.Spot.Line + bodyLine - 1 }).In(path),
                $"the page shows the words of this link and leaves out where it leads: {Quotation.Of(link.Address)} is {link.Why}",
                "write an address that begins with https:// or http://, or the path of a file of the collection, or the words alone"
            ));
}
