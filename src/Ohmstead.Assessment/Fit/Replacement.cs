using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;
using Reason = Ohmstead.Electronics.Substitution.Reason;

namespace Ohmstead.Assessment.Fit;

/// <summary>A part of a known lot that was put into a known place, and whether it fits there.</summary>
/// <param name="Visit">The visit to the bench.</param>
/// <param name="Work">The work that put it in.</param>
/// <param name="Place">The place.</param>
/// <param name="Lot">The lot.</param>
/// <param name="Fit">The reasons for and against.</param>
public sealed record Replacement(BenchVisit Visit, WorkEntry Work, PlaceHistory Place, Lot Lot, FitVerdict Fit)
{
    /// <summary>All replacements of a board, in order of time.</summary>
    public static ImmutableArray<Replacement> Of(BoardAssessment board, Workshop workshop)
    {
        var found = new List<Replacement>();
        foreach (var visit in board.Visits)
        {
            foreach (var work in visit.Work.Where(work => work.PutsAPartIn))
            {
                if (work.Part is { } part && work.Lot is { } name && board.Place(part.Value) is { } place && workshop.Lots.TryGetValue(name.Value, out var lot))
                {
                    found.Add(new(visit, work, place, lot, FitJudge.Judge(FitPlace.Of(board, place), MeasuredLots.Offer(workshop, lot, place))));
                }
            }
        }

        return [.. found];
    }

    /// <summary>The reason of an aspect that speaks against the replacement, or null.</summary>
    public Reason? Against(string aspect)
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
}
