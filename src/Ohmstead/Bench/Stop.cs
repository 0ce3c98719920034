using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Writing;

namespace Ohmstead.Bench;

/// <summary>One place where the walk over a board stops: a part to measure, or a test point to prove.</summary>
/// <param name="Name">The reference of the part or the name of the point.</param>
/// <param name="IsPoint">True for a test point.</param>
/// <param name="Expected">What to measure there, with its limits.</param>
/// <param name="Units">What numbers without a unit mean there.</param>
internal sealed record Stop(string Name, bool IsPoint, IReadOnlyList<Expected> Expected, UnsaidUnits Units)
{
    /// <summary>The stops of a board in order of its parts list, then its points; places with nothing to measure are passed over.</summary>
    /// <param name="board">The board.</param>
    /// <param name="classes">The letters of the references wanted, or none for all.</param>
    public static IReadOnlyList<Stop> List(BoardAssessment board, IReadOnlyCollection<string> classes)
    {
        var parts = board
            .Places.Where(place => !place.IsEmpty && (classes.Count == 0 || classes.Contains(Letters(place.Part.Ref.Value))))
            .Select(place => For(place.Part.Ref.Value, isPoint: false, ToMeasure.At(place), MarkingLimits.Nominal(place.Values)));
        var points =
            classes.Count > 0 ? [] : board.Points.Select(point => For(point.Name.Value, isPoint: true, ToMeasure.At(point), nominal: null));
        return [.. parts.Concat(points).Where(stop => stop.Expected.Count > 0)];
    }

    private static Stop For(string name, bool isPoint, IReadOnlyList<Expected> expected, Quantity? nominal) =>
        new(name, isPoint, expected, UnsaidUnits.For(expected, nominal));

    /// <summary>True when the part that sits in the place was read, or the point proved, on a day: what was fitted since is to be read
    /// again.</summary>
    public bool IsDone(BoardAssessment board, DateOnly day) =>
        IsPoint
            ? board.Proofs.Any(proof => proof.Visit.Date.Value == day && proof.Proof.Point.Value == Name)
            : board.Place(Name)!.OfThisPart.Any(reading => reading.Visit.Date.Value == day);

    /// <summary>What is asked for, in two lines at most.</summary>
    public string Ask(BoardAssessment board)
    {
        var place = IsPoint ? null : board.Place(Name)!;
        var what = place is null ? string.Empty : "  " + PartWords.AsPrinted(place.Values);
        var limits = string.Join(
            "; ",
            Expected.Select(expected =>
                expected.Limit is { } limit
                    ? $"{VerdictWords.Describe(expected.Measured)} {VerdictWords.Range(limit.Interval)}"
                    : VerdictWords.Describe(expected.Measured)
            )
        );
        // What another piece of its lot read, or the part that sat there before, is no reading of this part.
        var last = place?.OfThisPart.LastOrDefault();
        var before = last is null
            ? string.Empty
            : $"\n  last: {string.Join(", ", last.Verdicts.Select(verdict => verdict.Reading.Text))} on {last.Visit.Date.Text}";
        return $"{Name}{what}\n  {limits}{before}";
    }

    private static string Letters(string reference)
    {
        var figures = reference.AsSpan().IndexOfAnyInRange('0', '9');
        return figures > 0 ? reference[..figures] : reference;
    }
}
