using Ohmstead.Report.Html;

namespace Ohmstead.Report.Addresses;

/// <summary>Where the pages of a collection are found on the web. Without it nothing that is printed says an address.</summary>
/// <param name="Root">The folder of the pages.</param>
public sealed record PublishedAt(Uri Root)
{
    /// <summary>The whole address of a place in the pages.</summary>
    public string Of(LocalLink place) => new Uri(Root, place.Encoded).AbsoluteUri;

    /// <summary>The address of the page of a board.</summary>
    public string Board(string board) => Of(LocalLink.ToFile(SiteAddress.Board(board)));
}
