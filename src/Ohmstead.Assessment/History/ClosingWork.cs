using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>Which work can close which finding and make which hazard safe: the one table of it. Common practice; where it hurts, local
/// codes and licensed practice come first.</summary>
internal static class ClosingWork
{
    /// <summary>Whether work can close a finding that must be answered.</summary>
    /// <param name="work">What was done.</param>
    /// <param name="trouble">What sort of trouble was found.</param>
    /// <param name="severity">How much it matters.</param>
    /// <param name="canGo">Whether it was found at a thing that can go for good: a part, and no joint, track, socket or connector.</param>
    internal static bool Closes(WorkKind work, Trouble trouble, ObservedSeverity severity, bool canGo) =>
        (work, trouble) switch
        {
            (WorkKind.LeftAlone or WorkKind.PutBack, _) => false,
            // A new part is soldered to the track that was there.
            (WorkKind.Replaced, not Trouble.Track) => true,
            // What goes takes its own fault along, and neither a joint nor dirt. Metal is tested afterwards whatever was done.
            (WorkKind.Removed, Trouble.LiveMetal) => true,
            (WorkKind.Removed, Trouble.SpentPart or Trouble.Other) => canGo,
            // A new part in an empty place; what was wrong with the old one went with it.
            (WorkKind.Fitted, Trouble.SpentPart or Trouble.Other) => true,
            (WorkKind.Repaired or WorkKind.Modified, not Trouble.SpentPart) => true,
            (WorkKind.MadeSafe, Trouble.LiveMetal or Trouble.Joint or Trouble.Other) => true,
            (WorkKind.Resoldered, Trouble.Joint or Trouble.Track) => true,
            (WorkKind.Cleaned or WorkKind.Washed, Trouble.Dirt) => true,
            // A rough wiper and a stiff switch are cleaned or set; what can hurt is not.
            (WorkKind.Cleaned or WorkKind.Washed or WorkKind.Resoldered or WorkKind.Adjusted, Trouble.Contact) => severity
                != ObservedSeverity.Safety,
            // Nobody knows what was wrong, so a rub with a cloth shows nothing.
            (WorkKind.Resoldered or WorkKind.Adjusted or WorkKind.Reformed, Trouble.Other) => severity != ObservedSeverity.Safety,
            _ => false,
        };

    /// <summary>Whether work can close a finding of no known sort at a part that people rely on not to be hurt: only another part can.
    /// Common practice.</summary>
    internal static bool ClosesAtASafetyPart(WorkKind work) => work is WorkKind.Replaced or WorkKind.Removed or WorkKind.Fitted;

    /// <summary>Whether work at its place can make a hazard safe for good.</summary>
    internal static bool MakesSafe(WorkKind work, HazardKind hazard) =>
        hazard switch
        {
            // These come back each time the board runs, or stay whatever is done: their caution never goes.
            HazardKind.Mains
            or HazardKind.ChargedCapacitor
            or HazardKind.PictureTube
            or HazardKind.SwitchingSupply
            or HazardKind.HotParts
            or HazardKind.LeadAndFlux => false,
            // A new one is another thing: not crazed, not leaking, not filled with oil.
            HazardKind.LeakingCell or HazardKind.CrazedSuppressor or HazardKind.CellPack => work is WorkKind.Removed or WorkKind.Replaced,
            HazardKind.LeakedElectrolyte => work is WorkKind.Cleaned or WorkKind.Washed,
            HazardKind.LithiumCell
            or HazardKind.OilFilledPart
            or HazardKind.SeleniumRectifier
            or HazardKind.Asbestos
            or HazardKind.Beryllia
            or HazardKind.Mercury
            or HazardKind.Radium => work is WorkKind.Removed or WorkKind.Replaced or WorkKind.MadeSafe,
        };

    /// <summary>Whether a hazard must be gone before a board may run; the others stay and are cautioned against.</summary>
    internal static bool MustGo(HazardKind hazard) =>
        hazard is HazardKind.LeakingCell or HazardKind.CrazedSuppressor or HazardKind.LeakedElectrolyte or HazardKind.CellPack;

    /// <summary>Whether a hazard goes with the part that it stands at, so that taking the part out says enough.</summary>
    internal static bool GoesWithThePart(HazardKind hazard) =>
        hazard
            is HazardKind.LeakingCell
                or HazardKind.CrazedSuppressor
                or HazardKind.LithiumCell
                or HazardKind.OilFilledPart
                or HazardKind.SeleniumRectifier
                or HazardKind.CellPack;
}
