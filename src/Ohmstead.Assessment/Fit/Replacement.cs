using System.Collections.Immutable;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>A part that was put into a known place, from a known lot or as the work describes it, and whether it fits there.</summary>
/// <param name="Visit">The visit to the bench.</param>
/// <param name="Work">The work that put it in.</param>
/// <param name="Place">The place.</param>
/// <param name="Lot">The lot, or null when it came from none.</param>
/// <param name="Values">What the part is.</param>
/// <param name="Fit">The reasons for and against.</param>
public sealed record Replacement(BenchVisit Visit, WorkEntry Work, PlaceHistory Place, Lot? Lot, PartValues Values, FitVerdict Fit)
{
    /// <summary>Where the part came from, as words that follow what was done.</summary>
    public string From => Lot is { } lot ? $"from lot {lot.Id.Value}" : "with a part from no lot";

    /// <summary>The part as a word that something follows.</summary>
    public string Named => Lot is { } lot ? $"lot {lot.Id.Value}" : "the new part";

    /// <summary>True when it sits there still.</summary>
    public bool IsThere => ReferenceEquals(Place.FittedBy, Work);

    /// <summary>All replacements of a board, in order of time.</summary>
    public static ImmutableArray<Replacement> Collect(BoardHistory board, Workshop workshop)
    {
        var found = new List<Replacement>();
        foreach (var visit in board.Visits)
        {
            foreach (var work in visit.Work.Where(work => work.PutsAPartIn))
            {
                if ((work.Part ?? work.At) is { } part && board.Place(part.Value) is { } place && Put(work, place, workshop) is { } put)
                {
                    found.Add(new(visit, work, place, put.Lot, put.Offer.Values, FitJudge.Judge(FitPlace.From(board, place), put.Offer)));
                }
            }
        }

        return [.. found];
    }

    /// <summary>The reason of an aspect that speaks against the replacement, or null.</summary>
    public FitReason? Against(string aspect)
    {
        for (var at = 0; at < Fit.Reasons.Count; at++)
        {
            if (Fit.Reasons[at].Weight == ReasonWeight.Against && Fit.Reasons[at].Aspect == aspect)
            {
                return Fit.Reasons[at];
            }
        }

        return null;
    }

    private static (Lot? Lot, LotOffer Offer)? Put(WorkEntry work, PlaceHistory place, Workshop workshop) =>
        work.Lot is { } name
            ? workshop.Lots.TryGetValue(name.Value, out var lot)
                ? (lot, MeasuredLots.Offer(workshop, lot, place))
                : null
            : work.NewPart is { } values
                ? (null, MeasuredLots.Offer(values, place))
                : null;
}
