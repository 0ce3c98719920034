using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>Power was applied before the drying time after a wash was over.</summary>
public sealed class PowerBeforeDry : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("power-before-dry", Severity.Error, "power was applied before the drying time after a wash was over");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var visit in board.IsInOrder ? board.Assessment.Visits : [])
        {
            foreach (var work in visit.Work.Where(work => work.Dry is not null))
            {
                var days = work.Dry!.Value.Value / 86_400m;
                var early = board.Assessment.Visits.FirstOrDefault(other => (other.Proofs.Length > 0 || other.Powered is not null) && other.Date.Value >= visit.Date.Value && IsTooEarly(visit, other, days));
                if (early is not null)
                {
                    yield return board.Finding(
                        Description,
                        early.Powered?.Spot ?? early.Date.Spot,
                        $"power was applied on {early.Date.Text}, but the wash of {visit.Date.Text} must dry for {work.Dry.Text}",
                        "wait until it is dry, or mend the dates")
                        with { Related = [new RelatedPlace(work.Spot.In(board.Board.Path), "the wash")] };
                }
            }
        }
    }

    // Days are all a record knows: 24 h of drying reach into the next day, and only then is power certainly too early or late enough.
    private static bool IsTooEarly(BenchVisit wash, BenchVisit power, decimal days) =>
        !ReferenceEquals(wash, power) ? power.Date.Value < wash.Date.Value.AddDays((int)Math.Min(days, 3_650m)) : days >= 1m || power.Powered is not null && days > 0.5m;
}
