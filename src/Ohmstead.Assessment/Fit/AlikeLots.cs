using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>Lots in the drawer of which the same is to be said wherever they may go: parts of one kind are bought again and again, and are
/// judged once.</summary>
internal sealed class AlikeLots
{
    private readonly List<DrawerLot> lots;

    private AlikeLots(DrawerLot first, LotOffer offer) => (lots, Offer) = ([first], offer);

    /// <summary>The first of them as an offer.</summary>
    internal LotOffer Offer { get; }

    /// <summary>All of them, in order of name.</summary>
    internal IReadOnlyList<DrawerLot> Lots => lots;

    /// <summary>Puts together those that are alike.</summary>
    /// <param name="drawer">Lots in order of name, each as an offer too.</param>
    internal static IReadOnlyList<AlikeLots> Group(IEnumerable<(DrawerLot Lot, LotOffer Offer)> drawer)
    {
        var found = new List<AlikeLots>();
        var byFigures = new Dictionary<IFitPart, List<AlikeLots>>(FitComparer.Instance);
        foreach (var (lot, offer) in drawer)
        {
            if (!byFigures.TryGetValue(offer.Values, out var near))
            {
                byFigures.Add(offer.Values, near = []);
            }

            if (near.Find(known => known.Includes(lot, offer)) is { } alike)
            {
                alike.lots.Add(lot);
            }
            else
            {
                near.Add(new(lot, offer));
                found.Add(near[^1]);
            }
        }

        return found;
    }

    // Its figures are the same already. The words of a doubt tell the day of the lot; what it is about decides.
    private bool Includes(DrawerLot lot, LotOffer offer) =>
        Offer.MeasuredEsr.SequenceEqual(offer.MeasuredEsr)
        && Lots[0]
            .Doubts.Select(doubt => (doubt.Weight, doubt.Aspect, doubt.IsMissing))
            .SequenceEqual(lot.Doubts.Select(doubt => (doubt.Weight, doubt.Aspect, doubt.IsMissing)));
}
