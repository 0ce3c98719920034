using System.Collections.Immutable;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Boards;

/// <summary>What the readings say of what sits on a board now, apart from what they said of parts that have gone or were read
/// again.</summary>
/// <param name="Outside">Places and points that are outside their limits or failed their test, in order of the parts list, and are not
/// kept by a decision.</param>
/// <param name="Kept">Places that are outside their limits and kept by a decision with a reason.</param>
/// <param name="Undecided">Places and points whose reading is too close to call.</param>
/// <param name="Inside">How many places have readings of which all are inside.</param>
/// <param name="NeverRead">Places of which nothing that sits there now was read or tested, in order of the parts list.</param>
/// <param name="OutsideBefore">How many readings were outside that no longer stand: of parts that have gone, or read again since.</param>
public sealed record HoldsNow(
    ImmutableArray<string> Outside,
    ImmutableArray<string> Kept,
    ImmutableArray<string> Undecided,
    int Inside,
    ImmutableArray<string> NeverRead,
    int OutsideBefore
)
{
    /// <summary>What holds where nothing is known.</summary>
    public static HoldsNow Nothing { get; } = new([], [], [], 0, [], 0);

    /// <summary>What holds of a board.</summary>
    public static HoldsNow Of(BoardAssessment board)
    {
        string[] failed = [.. board.Places.Where(place => place.HasFailed && !place.IsKeptByDecision).Select(Name), .. FailedPoints(board)];
        string[] kept = [.. board.Places.Where(place => place.HasFailed && place.IsKeptByDecision).Select(Name)];
        string[] undecided =
        [
            .. board.Places.Where(place => place.IsUndecided).Select(Name).Concat(board.MeasureAgain.Select(again => again.At)),
        ];
        return new(
            [.. failed.Distinct(StringComparer.Ordinal)],
            [.. kept],
            [.. undecided.Except(failed, StringComparer.Ordinal).Except(kept, StringComparer.Ordinal)],
            board.Places.Count(IsInside),
            [.. board.Places.Where(IsNeverRead).Select(Name)],
            OutsideNoMore(board)
        );
    }

    /// <summary>Whether nothing that sits in a place now was read or tested there.</summary>
    public static bool IsNeverRead(PlaceHistory place) => !place.IsEmpty && place.Standing.Length == 0 && place.PassedTest is null;

    /// <summary>What is outside, kept or too close to call now, in one line; what was so before stands apart.</summary>
    public string Told
    {
        get
        {
            var words = new List<string>(4)
            {
                Outside.Length > 0 ? $"outside now: {string.Join(", ", Outside)}"
                : Kept.Length > 0 ? "nothing else is outside now"
                : Inside > 0 ? "nothing that sits in it now reads outside its limits"
                : "nothing that sits in it now was read against a limit",
            };
            if (Kept.Length > 0)
            {
                words.Insert(0, $"outside and kept by a decision: {string.Join(", ", Kept)}");
            }

            if (Undecided.Length > 0)
            {
                words.Add($"too close to call: {string.Join(", ", Undecided)}");
            }

            return string.Join("; ", words);
        }
    }

    /// <summary>What readings were outside and stand no more, in one line; null when there were none.</summary>
    public string? ToldBefore =>
        OutsideBefore switch
        {
            0 => null,
            1 => "1 earlier reading was outside: its part was replaced or read again since",
            _ => string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"{OutsideBefore} earlier readings were outside: their parts were replaced or read again since"
            ),
        };

    private static bool IsInside(PlaceHistory place) =>
        place is { IsEmpty: false, HasFailed: false, IsUndecided: false }
        && (place.PassedTest == true || place.FirstOf(VerdictOutcome.Inside) is not null);

    private static IEnumerable<string> FailedPoints(BoardAssessment board)
    {
        var points = board.Points.ToLookup(static point => point.Name.Value, StringComparer.Ordinal);
        return board
            .Proofs.Select(proof => proof.Proof.Point.Value)
            .Distinct(StringComparer.Ordinal)
            .Where(name => ProofOfPoint.FailedAt(board, name, points[name].FirstOrDefault()) is not null)
            .Concat(board.PointsRead.Where(point => point.Fault is not null).Select(point => point.Name));
    }

    // A reading of a lot in the drawer says nothing of a place.
    private static int OutsideNoMore(BoardAssessment board)
    {
        if (!board.Readings.Any(static reading => reading.Overall == VerdictOutcome.Outside))
        {
            return 0;
        }

        var standing = board
            .Places.Where(place => !place.IsEmpty)
            .SelectMany(place => place.StoodBy)
            .Where(stands => stands.Verdict.Outcome == VerdictOutcome.Outside)
            .Select(stands => stands.By)
            .ToHashSet<AssessedReading>(ReferenceEqualityComparer.Instance);
        var points = board.PointsRead.Where(point => point.Fault is not null).Select(point => point.Name).ToHashSet(StringComparer.Ordinal);
        return board.Readings.Count(reading =>
            reading.Overall == VerdictOutcome.Outside
            && !standing.Contains(reading)
            && (reading.Place is not null || (reading.Reading.Point is { } point && !points.Contains(point.Value)))
        );
    }

    private static string Name(PlaceHistory place) => place.Part.Ref.Value;
}
