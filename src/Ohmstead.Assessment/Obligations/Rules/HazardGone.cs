using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>What must go before a board may run has gone: a leaking cell, a crazed suppressor, leaked electrolyte, a pack of old cells.
/// Common practice; local codes come first.</summary>
public sealed class HazardGone : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "hazard-gone";

    /// <inheritdoc/>
    public string Asks => "what must go before the board may run was taken out, or the board was cleaned of it";

    // What leaked goes on eating copper in a drawer.
    /// <inheritdoc/>
    public bool CountsAsTold(BoardUnderObligation board, Obligation open) => true;

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        foreach (var hazard in board.Board.Hazards)
        {
            var (at, what) = (hazard.Hazard.At?.Value, hazard.Hazard.Kind.Text);
            if (!hazard.MustGo)
            {
                yield return Obligation.DoesNotApply(Kind, at, $"{what}: it stays and is cautioned against");
            }
            else if (
                hazard is { MadeSafe: not null, Hazard.Kind.Value: HazardKind.LeakedElectrolyte }
                && at is not null
                && board.Board.Place(at) is { Change: null, Part.Values.Kind.Value: var kind }
                && (kind.IsElectrolytic || kind == PartKinds.Cell)
            )
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.FaultStands,
                    at,
                    $"{what} washed off, and what leaked still sits there",
                    "replace it, and record the work",
                    $"replace {at}, from which {what} ran"
                ) with
                {
                    NeedsPart = true,
                };
            }
            else if (hazard is { MadeSafe: { } visit, By: { } work })
            {
                yield return Obligation.Met(Kind, at, $"{what} made safe", board.By(work, visit));
            }
            else if (hazard.Hazard.Kind.Value == HazardKind.CellPack && Kept(board, at) is { } kept)
            {
                yield return Obligation.Met(Kind, at, $"{what} read and kept", kept);
            }
            else
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.MakeSafe,
                    at,
                    $"{what} not made safe",
                    NextStep(hazard.Hazard.Kind.Value),
                    Act(hazard.Hazard.Kind.Value, at, what)
                );
            }
        }
    }

    // A sound pack may stay: it was read inside its limits, and somebody who knew the reading decided so.
    private static Evidence? Kept(BoardUnderObligation board, string? at) =>
        at is not null
        && board.Board.Place(at) is { HasFailed: false, IsUndecided: false, IsKeptByDecision: true, Decision: { } decision } place
        && place.FirstOf(Verdicts.VerdictOutcome.Inside) is not null
            ? board.By(decision, board.Board.Visits[place.DecidedAt.Visit].Date.Value)
            : null;

    private static string NextStep(HazardKind kind) =>
        kind == HazardKind.LeakedElectrolyte ? "wash it off, let it dry, and record the work" : "remove it, and record the work";

    // What nothing but another part answers is not left in for anything.
    private static string Act(HazardKind kind, string? at, string what) =>
        kind == HazardKind.LeakedElectrolyte
            ? $"wash off the {what}{(at is null ? string.Empty : $" at {at}")}"
            : $"remove {(at is null ? what : $"{at}, {what}")}";
}
