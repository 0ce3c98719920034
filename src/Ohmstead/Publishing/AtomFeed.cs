using System.Text;
using System.Xml;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Html;
using Ohmstead.Running;

namespace Ohmstead.Publishing;

/// <summary>What changed at the bench, as an Atom feed (RFC 4287). Every date comes out of the records, so that the same records give the
/// same bytes on any day.</summary>
internal static class AtomFeed
{
    /// <summary>Its file, from the root of the report.</summary>
    public const string PathName = "feed.xml";

    /// <summary>How many visits it tells; a feed is for what is new.</summary>
    public const int Most = 100;

    private const string Atom = "http://www.w3.org/2005/Atom";

    // Every feed has a date; one of a collection that nobody has touched has the first that there is.
    private static readonly DateOnly Never = new(1970, 1, 1);

    /// <summary>Writes the feed.</summary>
    /// <param name="collection">The collection.</param>
    /// <param name="site">Where the report will be found.</param>
    /// <param name="changes">The visits, the latest first.</param>
    public static byte[] Write(CollectionFile collection, Site site, IReadOnlyList<Change> changes)
    {
        using var bytes = new MemoryStream();
        using (
            var xml = XmlWriter.Create(
                bytes,
                new XmlWriterSettings
                {
                    Encoding = new UTF8Encoding(false),
                    Indent = true,
                    NewLineChars = "\n",
                }
            )
        )
        {
            xml.WriteStartElement("feed", Atom);
            // An id must not move when a visit is added; the day of the tag only has to be one on which the name was ours.
            Element(xml, "id", site.Id(LocalLink.ToFile(PathName), Never));
            Element(xml, "title", collection.Name);
            Element(xml, "updated", Moment(changes.Count == 0 ? Never : changes[0].Date));
            Person(xml, collection.Keeper?.Value ?? collection.Name);
            Element(xml, "generator", "Ohmstead");
            Link(xml, "alternate", "text/html", site.Link(LocalLink.ToFile(SiteAddress.Collection)));
            if (site.Root is not null)
            {
                Link(xml, "self", "application/atom+xml", site.Link(LocalLink.ToFile(PathName)));
            }

            foreach (var change in changes)
            {
                Entry(xml, site, change);
            }

            xml.WriteEndElement();
        }

        bytes.Write("\n"u8);
        return bytes.ToArray();
    }

    private static void Entry(XmlWriter xml, Site site, Change change)
    {
        var place = LocalLink.ToFile(SiteAddress.Board(change.Board), 0, change.Anchor);
        xml.WriteStartElement("entry", Atom);
        Element(xml, "id", site.Id(place, change.Date));
        Element(xml, "title", change.Title);
        Element(xml, "updated", Moment(change.Date));
        if (change.By is { } by)
        {
            Person(xml, by);
        }

        Link(xml, "alternate", "text/html", site.Link(place));
        xml.WriteStartElement("content", Atom);
        xml.WriteAttributeString("type", "text");
        xml.WriteString(Text(change.Lines.Count == 0 ? change.Title : string.Join("; ", change.Lines)));
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static void Element(XmlWriter xml, string name, string text) => xml.WriteElementString(name, Atom, Text(text));

    private static void Person(XmlWriter xml, string name)
    {
        xml.WriteStartElement("author", Atom);
        Element(xml, "name", name);
        xml.WriteEndElement();
    }

    private static void Link(XmlWriter xml, string relation, string type, string address)
    {
        xml.WriteStartElement("link", Atom);
        xml.WriteAttributeString("rel", relation);
        xml.WriteAttributeString("type", type);
        xml.WriteAttributeString("href", address);
        xml.WriteEndElement();
    }

    // The records know days; midnight in UTC is the same moment for every reader.
    private static string Moment(DateOnly day) => IsoDate.Text(day) + "T00:00:00Z";

    // Half of a surrogate pair, and what is no character at all, has no place in XML.
    private static string Text(string text) =>
        string.Concat(Printable.Escape(text).EnumerateRunes().Select(rune => (rune.Value & 0xFFFE) == 0xFFFE ? "\uFFFD" : rune.ToString()));
}
