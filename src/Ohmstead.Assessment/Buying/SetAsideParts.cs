using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Fit;

namespace Ohmstead.Assessment.Buying;

/// <summary>Parts of which some are set aside for what needs them, each once.</summary>
/// <param name="parts">The parts, those to be taken first in front.</param>
internal sealed class SetAsideParts(IReadOnlyList<Stocked> parts)
{
    /// <summary>The parts, with what is left of each.</summary>
    public IReadOnlyList<Stocked> Parts => parts;

    /// <summary>Sets parts aside for places of equal words, what is nearest to the original first.</summary>
    /// <remarks>Places of equal words can ask for different things of their circuits; a part counts when it fits all of them without a
    /// doubt.</remarks>
    /// <param name="needs">The places.</param>
    /// <param name="wanted">How many are wanted.</param>
    /// <returns>What was set aside of which.</returns>
    public List<(string Name, int Count)> Take(PartNeed[] needs, int wanted)
    {
        var taken = new List<(string, int)>();
        if (wanted <= 0 || parts.Count == 0)
        {
            return taken;
        }

        FitPlace[] places = [.. needs.Select(need => need.Place).Distinct()];
        var fitting = parts
            .Where(stocked => stocked.Left > 0 && FitJudge.MayFit(places[0].Values, stocked.Offer.Values))
            .Select(stocked => (Stocked: stocked, Verdicts: places.Select(place => FitJudge.Judge(place, stocked.Offer)).ToArray()))
            .Where(fit => fit.Verdicts.All(verdict => verdict.IsSure));
        foreach (var (stocked, _) in FitJudge.Rank(places[0], fitting, fit => fit.Verdicts[0], fit => fit.Stocked.Offer.Values))
        {
            var count = Math.Min(wanted, stocked.Left);
            if (count > 0)
            {
                taken.Add((stocked.Offer.Name, count));
                stocked.Left -= count;
                wanted -= count;
            }
        }

        return taken;
    }
}

/// <summary>Parts that lie in the drawer or may come, with how many of them nobody has set aside yet.</summary>
/// <param name="offer">What they are.</param>
/// <param name="left">How many there are.</param>
internal sealed class Stocked(LotOffer offer, int left)
{
    /// <summary>What they are.</summary>
    public LotOffer Offer => offer;

    /// <summary>How many are left.</summary>
    public int Left { get; set; } = left;
}
