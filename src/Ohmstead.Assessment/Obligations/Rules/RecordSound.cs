using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>The record of the board, and what it says of lots, designs and instruments that count here, can be read and does not contradict
/// itself.</summary>
public sealed class RecordSound : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "record-sound";

    /// <inheritdoc/>
    public string Asks => "the record can be read and does not contradict itself, nor do its design, its lots and its instruments";

    /// <inheritdoc/>
    public string AsMet => "no error in the record";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        var isSound = true;
        HashSet<(int Line, int Column)>? counting = null;
        foreach (var finding in board.Findings)
        {
            if (CheckEffects.HoldsBack(finding) && Counts(finding, board, ref counting))
            {
                isSound = false;
                yield return Open(finding, board.PlaceAt(finding.Place));
            }
        }

        var instruments = InstrumentsThatCount(board);
        foreach (var (of, finding) in Shared(board, instruments))
        {
            isSound = false;
            yield return Open(finding, of);
        }

        foreach (var unread in Unread(board, instruments))
        {
            isSound = false;
            yield return unread;
        }

        if (isSound)
        {
            yield return Obligation.Met(Kind, null, AsMet, board.ByTheRecord("all checks passed or only told", board.Board.Board.Id.Spot));
        }
    }

    private Obligation Open(Finding finding, string? of) =>
        Obligation.Open(
            Kind,
            BoardState.ProofDue,
            of,
            LazyText.For(finding, static one =>
                $"{one.Message} [{one.Check}, {one.Place.Path} line "
                + $"{one.Place.Line.ToString(System.Globalization.CultureInfo.InvariantCulture)}]"
            ),
            finding.NextStep ?? "mend the record"
        );

    private static IEnumerable<(string Of, Finding Finding)> Shared(BoardUnderObligation board, List<string> instruments)
    {
        foreach (var finding in board.Shared.OfBoard(board.Board.Board.Path))
        {
            yield return (board.Board.Board.Id.Value, finding);
        }

        if (board.Board.Board.Design is { } design)
        {
            foreach (var finding in board.Shared.OfDesign(design.Value))
            {
                yield return (design.Value, finding);
            }
        }

        foreach (var (at, lot) in LotsThatSit(board))
        {
            foreach (var finding in board.Shared.OfLot(lot))
            {
                yield return (at, finding);
            }
        }

        foreach (var instrument in instruments)
        {
            foreach (var finding in board.Shared.OfInstrument(instrument))
            {
                yield return (instrument, finding);
            }
        }
    }

    // What stands in a file that could not be read is not unknown, and yet nothing is known of it.
    private IEnumerable<Obligation> Unread(BoardUnderObligation board, List<string> instruments)
    {
        if (board.Board is { Board.Design: { } design, Design: null })
        {
            yield return Missing(
                design.Value,
                $"the design {design.Value} could not be read: what the board must prove is not known",
                $"mend designs/{design.Value}.md"
            );
        }

        foreach (var (at, lot) in LotsThatSit(board))
        {
            if (!board.Workshop.Lots.ContainsKey(lot))
            {
                yield return Missing(
                    at,
                    $"nothing is known of lot {lot}, a part of which sits here",
                    $"add lot {lot} to stock.yaml, or mend it there"
                );
            }
        }

        foreach (var instrument in instruments)
        {
            if (!board.Workshop.Instruments.ContainsKey(instrument))
            {
                yield return Missing(
                    instrument,
                    $"nothing is known of instrument {instrument}, whose readings count here",
                    $"add {instrument} to instruments.yaml, or mend it there"
                );
            }
        }
    }

    private Obligation Missing(string of, string text, string next) => Obligation.Open(Kind, BoardState.ProofDue, of, text, next);

    private static IEnumerable<(string At, string Lot)> LotsThatSit(BoardUnderObligation board)
    {
        foreach (var place in board.Board.Places)
        {
            if (place.FittedBy?.Lot is { } lot)
            {
                yield return (place.Part.Ref.Value, lot.Value);
            }
        }
    }

    // A handful at most, and mostly one.
    private static List<string> InstrumentsThatCount(BoardUnderObligation board)
    {
        var all = new List<string>(2);
        foreach (var place in board.Board.Places)
        {
            foreach (var reading in place.Counting)
            {
                if (reading.VisitOrder >= 0)
                {
                    Add(all, reading.Reading.Instrument ?? reading.Visit.Instrument);
                }
            }
        }

        foreach (var proof in board.Board.Proofs)
        {
            Add(all, proof.Proof.Instrument ?? proof.Visit.Instrument);
        }

        return all;
    }

    private static void Add(List<string> all, Written<string>? instrument)
    {
        if (instrument is { Value: var name } && !all.Contains(name))
        {
            all.Add(name);
        }
    }

    // What is counted beside one that is told may be about any reading.
    private static bool Counts(Finding finding, BoardUnderObligation board, ref HashSet<(int Line, int Column)>? counting) =>
        CheckEffects.For(finding.Check) != CheckEffect.HoldsBackWhileItCounts
        || finding.More > 0
        || (counting ??= SpotsThatCount(board)).Contains((finding.Place.Line, finding.Place.Column));

    private static HashSet<(int Line, int Column)> SpotsThatCount(BoardUnderObligation board)
    {
        var spots = new HashSet<(int Line, int Column)>();
        foreach (var place in board.Board.Places)
        {
            foreach (var reading in place.Counting)
            {
                foreach (var value in reading.Reading.Values)
                {
                    spots.Add((value.Value.Spot.Line, value.Value.Spot.Column));
                }
            }
        }

        return spots;
    }
}
