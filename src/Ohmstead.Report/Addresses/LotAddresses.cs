using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Addresses;

/// <summary>Where the lots of the drawer are told.</summary>
internal static class LotAddresses
{
    /// <summary>A small drawer is told whole on its page: as many lots as this.</summary>
    public const int MostOnPage = 25;

    /// <summary>The file of the first page of all lots, without its ending.</summary>
    public const string Path = "lots";

    /// <summary>How many lots each of those pages tells.</summary>
    public const int RowsAPage = 25;

    /// <summary>The lots in the order in which they are told.</summary>
    public static IEnumerable<Lot> InOrder(Workshop workshop) => workshop.Lots.Values.OrderBy(lot => lot.Id.Value, StringComparer.Ordinal);

    /// <summary>The address of each; null for a lot that there is not.</summary>
    /// <param name="workshop">The lots.</param>
    /// <param name="levelsUp">How many folders below the root the linking page stands.</param>
    public static Func<string, LocalLink?> For(Workshop workshop, int levelsUp = 0)
    {
        if (workshop.Lots.Count <= MostOnPage)
        {
            return lot =>
                workshop.Lots.ContainsKey(lot) ? LocalLink.ToFile(SiteAddress.Drawer, levelsUp, ElementId.For(IdPrefix.Lot, lot)) : null;
        }

        var places = InOrder(workshop).Index().ToDictionary(pair => pair.Item.Id.Value, pair => pair.Index, StringComparer.Ordinal);
        return lot =>
            places.TryGetValue(lot, out var place)
                ? LocalLink.ToFile(TablePages.PathOf(Path, place / RowsAPage), levelsUp, ElementId.For(IdPrefix.Lot, lot))
                : null;
    }
}
