using Ohmstead.Assessment.History;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>Work on a part, with its moment and day.</summary>
internal readonly record struct WorkMoment(int Moment, DateOnly Day, WorkEntry Work)
{
    /// <summary>True when something else sits in the place afterwards, or nothing.</summary>
    internal bool EndsWhatWasThere => Work.PutsAPartIn || Work.Did.Value == WorkKind.Removed;
}

/// <summary>The order in time within and between visits: readings, then work, then readings as left.</summary>
internal static class Moments
{
    private const int PerVisit = 3;

    internal static int OfReading(AssessedReading reading) =>
        (reading.VisitOrder * PerVisit) + (reading.Reading.State is { Value: ReadingState.AsLeft } ? 2 : 0);

    internal static int OfWork(int visitOrder) => (visitOrder * PerVisit) + 1;
}
