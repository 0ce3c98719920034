using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>The hazards of a board: its own and its design's, and which of them work has removed.</summary>
public static class BoardHazards
{
    /// <summary>All hazards, each with the visit that made it safe for good.</summary>
    public static ImmutableArray<AssessedHazard> Of(BoardFile board, DesignFile? design, ImmutableArray<BenchVisit> visits) =>
        [.. (design?.Hazards ?? []).Concat(board.Hazards).Select(hazard => new AssessedHazard(hazard, visits.FirstOrDefault(visit => visit.Work.Any(work => MakesSafe(work, hazard)))))];

    private static bool MakesSafe(WorkEntry work, Hazard hazard)
    {
        if (work.Did.Value == WorkKind.LeftAlone || ComesBackWithPower(hazard.Kind.Value))
        {
            return false;
        }

        if (work.Hazard is { } named)
        {
            var isSamePlace = hazard.At is not { } place || (work.At is null && work.Part is null) || IsAt(work, place.Value);
            return named.Value == hazard.Kind.Value && isSamePlace;
        }

        return hazard.At is { } at && IsAt(work, at.Value) && GoesWithThePart(hazard.Kind.Value) && (work.Did.Value is WorkKind.Removed or WorkKind.Replaced or WorkKind.MadeSafe);
    }

    // A capacitor that was let down charges again the next time the board runs: its caution never goes, whatever the record says was done.
    private static bool ComesBackWithPower(HazardKind kind) => kind is HazardKind.Mains or HazardKind.ChargedCapacitor or HazardKind.PictureTube or HazardKind.SwitchingSupply
        or HazardKind.HotParts or HazardKind.LeadAndFlux;

    // A new reservoir capacitor charges like the old one; a new suppressor is not crazed.
    private static bool GoesWithThePart(HazardKind kind) => kind is HazardKind.LeakingCell or HazardKind.CrazedSuppressor or HazardKind.LithiumCell or HazardKind.OilFilledPart
        or HazardKind.SeleniumRectifier or HazardKind.CellPack;

    private static bool IsAt(WorkEntry work, string at) => work.Part?.Value == at || work.At?.Value == at;
}
