using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A visit, reading or proof names an instrument that the collection does not have.</summary>
public sealed class InstrumentUnknown : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("instrument-unknown", Severity.Error, "a visit, reading or proof names an instrument that the collection does not have");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        KnownNames? known = null;
        foreach (var visit in board.Assessment.Visits)
        {
            foreach (var instrument in Named(visit))
            {
                if (IsKnown(board, instrument.Value))
                {
                    continue;
                }

                yield return new UnknownName("instrument", $"add {instrument.Value} to instruments.yaml").In(
                    board,
                    Description,
                    instrument,
                    $"there is no instrument '{instrument.Value}'",
                    known ??= new(board.Workshop.Instruments.Keys.Order(StringComparer.Ordinal))
                );
            }
        }
    }

    private static List<Written<string>> Named(BenchVisit visit) =>
        (visit.Instrument is { } ofAll ? new List<Written<string>>(1) { ofAll } : [])
            .And(visit.Readings, static reading => reading.Instrument)
            .And(visit.Proofs, static proof => proof.Instrument);

    private static bool IsKnown(BoardUnderCheck board, string name) =>
        board.Workshop.Instruments.ContainsKey(name) || (board.Workshop.InstrumentsFile?.Unread.MayHold(name) ?? false);
}
