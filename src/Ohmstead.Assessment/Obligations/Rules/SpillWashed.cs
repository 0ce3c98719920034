using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>
/// What ran out of a cell or an electrolytic onto the board was washed or cleaned off. Taking the part away leaves the crust, which goes on
/// eating copper and conducts when it is damp. Common practice.
/// </summary>
public sealed class SpillWashed : IObligationRule
{
    private const string WholeBoard = "board";

    /// <inheritdoc/>
    public string Kind => "spill-washed";

    /// <inheritdoc/>
    public string Asks => "what ran out of a cell or an electrolytic onto the board was washed or cleaned off";

    // What leaked goes on eating copper in a drawer.
    /// <inheritdoc/>
    public bool CountsAsTold(BoardUnderObligation board, Obligation open) => true;

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        foreach (var finding in board.Board.Findings)
        {
            // What is not answered yet is told as that.
            if (
                finding is { MustBeAnswered: true, IsOpen: false }
                && FindingWeight.TellsOfASpill(finding.Finding.What.Value, finding.Part?.Values.Kind.Value)
            )
            {
                yield return Washed(board, finding.Finding.At.Value, finding.At, finding.Finding.What.Value);
            }
        }
    }

    private Obligation Washed(BoardUnderObligation board, string at, Moment seen, string what)
    {
        for (var order = 0; order < board.Board.Visits.Length; order++)
        {
            var visit = board.Board.Visits[order];
            foreach (var work in visit.Work)
            {
                if (Moment.At(order, work.Spot) > seen && TakesOff(work, at))
                {
                    return Obligation.Met(Kind, at, $"{what}: what ran out was taken off", board.By(work, visit));
                }
            }
        }

        return Obligation.Open(
            Kind,
            BoardState.FaultStands,
            at,
            $"{what}; nobody wrote that what ran out was washed or cleaned off",
            "wash it off with gloves on, let it dry, and record the work",
            $"wash off with gloves on what ran out{(at == WholeBoard ? string.Empty : $" at {at}")}"
        );
    }

    // A wash of the whole board reaches every place of it; wiping reaches the place that it names, and none where it names none.
    private static bool TakesOff(WorkEntry work, string at) =>
        ClosingWork.MakesSafe(work.Did.Value, HazardKind.LeakedElectrolyte)
        && (
            work.Clears?.Value == at
            || ((work.Part ?? work.At)?.Value is { } place ? place == at || place == WholeBoard : work.Did.Value == WorkKind.Washed)
        );
}
