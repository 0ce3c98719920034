using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>Where the report will be found, as far as it is known. Only the feed needs it: ids that last, and links that work wherever it
/// is read.</summary>
internal sealed class Site
{
    // RFC 2606: no such host is ever found, so no such name is anybody else's.
    private const string Nowhere = "ohmstead.invalid";

    private readonly Uri? root;
    private readonly string collection;

    private Site(Uri? root, string collection)
    {
        this.root = root;
        this.collection = collection;
    }

    /// <summary>The address of the report's root, or null.</summary>
    public string? Root => root?.AbsoluteUri;

    /// <summary>A report whose address is known or not.</summary>
    /// <param name="root">The address, or null.</param>
    /// <param name="collection">The name of the collection, which tells one report from another where no address does.</param>
    public static Site For(Uri? root, string collection) => new(root, collection);

    /// <summary>Reads an address; null when it is not one of a folder on the web.</summary>
    public static Uri? Parse(string text) =>
        Uri.TryCreate(text.EndsWith('/') ? text : text + "/", UriKind.Absolute, out var address)
        && address.Scheme is "https" or "http"
        && address.UserInfo.Length == 0
        && address.Query.Length == 0
        && address.Fragment.Length == 0
        && address.Host.Length > 0
            ? address
            : null;

    /// <summary>The address of a file of the report: whole where the site is known, else from the folder of the feed.</summary>
    public string Link(LocalLink file) => root is null ? file.Encoded : new Uri(root, file.Encoded).AbsoluteUri;

    /// <summary>A name that lasts for a thing of the collection: its address, else a tag URI (RFC 4151) of the collection's name.</summary>
    /// <param name="file">The thing as a place in the report.</param>
    /// <param name="day">A day on which it already was.</param>
    public string Id(LocalLink file, DateOnly day) =>
        root is null
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"tag:{Nowhere},{IsoDate.Text(day)}:{Uri.EscapeDataString(collection)}/{file.Encoded.Replace('#', '/')}"
            )
            : Link(file);
}
