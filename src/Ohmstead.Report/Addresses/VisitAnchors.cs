using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Addresses;

/// <summary>The places of visits on the page of their board: the day, and for a second visit of one day its number. A visit that is added
/// later moves none.</summary>
public static class VisitAnchors
{
    /// <summary>One id for each visit, in the same order.</summary>
    /// <param name="visits">The visits of a board in order of time.</param>
    public static IReadOnlyList<ElementId> For(ImmutableArray<BenchVisit> visits)
    {
        var ids = new ElementId[visits.Length];
        var same = 1;
        for (var order = 0; order < visits.Length; order++)
        {
            same = order > 0 && visits[order].Date.Value == visits[order - 1].Date.Value ? same + 1 : 1;
            var day = IsoDate.Text(visits[order].Date.Value);
            ids[order] = ElementId.For(IdPrefix.Visit, same == 1 ? day : string.Create(CultureInfo.InvariantCulture, $"{day}.{same}"));
        }

        return ids;
    }
}
