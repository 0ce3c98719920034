using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>Lots in the drawer of which the same is to be said wherever they may go: parts of one kind are bought again and again, and are judged once.</summary>
/// <param name="Offer">Any of them as an offer.</param>
/// <param name="Lots">All of them, in order of name.</param>
internal sealed record AlikeLots(LotOffer Offer, IReadOnlyList<DrawerLot> Lots)
{
    /// <summary>Puts together those that are alike.</summary>
    /// <param name="lots">Lots in order of name, each as an offer too.</param>
    internal static IReadOnlyList<AlikeLots> Of(IEnumerable<(DrawerLot Lot, LotOffer Offer)> lots)
    {
        var found = new List<AlikeLots>();
        var byFigures = new Dictionary<IFitPart, List<AlikeLots>>(FitComparer.Instance);
        foreach (var (lot, offer) in lots)
        {
            if (!byFigures.TryGetValue(offer.Values, out var near))
            {
                byFigures.Add(offer.Values, near = []);
            }

            if (near.Find(known => known.Includes(lot, offer)) is { } alike)
            {
                ((List<DrawerLot>)alike.Lots).Add(lot);
            }
            else
            {
                near.Add(new(offer, new List<DrawerLot> { lot }));
                found.Add(near[^1]);
            }
        }

        return found;
    }

    // Its figures are the same already. The words of a doubt tell the day of the lot; what it is about decides.
    private bool Includes(DrawerLot lot, LotOffer offer) =>
        Offer.MeasuredEsr.SequenceEqual(offer.MeasuredEsr)
        && Lots[0].Doubts.Select(doubt => (doubt.Weight, doubt.Aspect, doubt.IsMissing)).SequenceEqual(lot.Doubts.Select(doubt => (doubt.Weight, doubt.Aspect, doubt.IsMissing)));
}
