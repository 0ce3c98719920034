using System.CommandLine;
using System.CommandLine.Parsing;
using Ohmstead.Publishing;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>The address of the pages: said on the command line, else in collection.yaml.</summary>
internal static class SiteOption
{
    public static Option<Uri?> Make() =>
        new("--site")
        {
            Description =
                "The address at which the pages will be found, for codes and for the links of the feed; else that of site in "
                + "collection.yaml.",
            HelpName = "ADDRESS",
            CustomParser = Address,
        };

    /// <summary>Where the pages are found, or null when nobody says it.</summary>
    public static PublishedAt? Read(ParseResult parsed, Option<Uri?> option, CollectionFile collection) =>
        (parsed.GetValue(option) ?? collection.Site?.Value) is { } root ? new(root) : null;

    private static Uri? Address(ArgumentResult result)
    {
        var text = result.Tokens.Count > 0 ? result.Tokens[0].Value : string.Empty;
        if (Site.Parse(text) is { } site)
        {
            return site;
        }

        result.AddError($"'{Printable.Escape(text)}' is no address of a site: give one such as https://example.org/boards/");
        return null;
    }
}
