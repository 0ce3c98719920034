using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Shelf;

/// <summary>Where a part of a lot was fitted.</summary>
/// <param name="Board">The board.</param>
/// <param name="Reference">The place.</param>
/// <param name="Date">The day.</param>
/// <param name="IsThere">True when it still sits there.</param>
public readonly record struct LotFitting(string Board, string Reference, DateOnly Date, bool IsThere)
{
    /// <summary>True when this very piece was read for the place before it was fitted, and did not fail.</summary>
    public bool WasReadGood { get; init; }

    /// <summary>Initials of who fitted it, or null.</summary>
    public string? By { get; init; }

    /// <summary>All fittings of a lot on one board, in order of time.</summary>
    public static IEnumerable<LotFitting> FromLot(BoardHistory board, string lot) =>
        All(board).Where(fitted => fitted.Lot == lot).Select(fitted => fitted.Fitting);

    /// <summary>All fittings of known lots on one board, in order of time, each with the name of its lot.</summary>
    public static IEnumerable<(string Lot, LotFitting Fitting)> All(BoardHistory board)
    {
        Dictionary<(string Lot, string Reference), bool>? read = null;
        foreach (var visit in board.Visits)
        {
            foreach (var work in visit.Work)
            {
                if (work is { PutsAPartIn: true, Lot: { } lot })
                {
                    var reference = work.Part?.Value ?? work.At?.Value ?? string.Empty;
                    yield return (
                        lot.Value,
                        new(board.Board.Id.Value, reference, visit.Date.Value, ReferenceEquals(board.Place(reference)?.FittedBy, work))
                        {
                            By = visit.By?.Value,
                            WasReadGood = (read ??= ReadNew(board)).GetValueOrDefault((lot.Value, reference)),
                        }
                    );
                }
            }
        }
    }

    // What was read as a new part of a lot for a place, by both; true when the last reading did not fail.
    private static Dictionary<(string Lot, string Reference), bool> ReadNew(BoardHistory board)
    {
        var read = new Dictionary<(string Lot, string Reference), bool>();
        for (var at = 0; at < board.Readings.Length; at++)
        {
            if (board.Readings[at] is { IsNew: true, Reading: { Lot: { } lot, Part: { } part } } reading)
            {
                read[(lot.Value, part.Value)] = reading.Overall != VerdictOutcome.Outside;
            }
        }

        return read;
    }
}
