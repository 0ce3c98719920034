using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>
/// What sits in a place is rated for the voltage there: the working voltage that is written, and the voltage that was proved across a
/// reservoir. An original is judged like a new part: that it has sat there for forty years is no rating.
/// </summary>
public sealed class VoltageBorne : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "voltage-borne";

    /// <inheritdoc/>
    public string Asks => "what sits there is rated for the voltage that works on it";

    /// <inheritdoc/>
    public string AsMet => "rated for what works on it";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        var across = board
            .Board.Points.Where(static point => point.Reservoir is not null)
            .ToLookup(static point => point.Reservoir!.Value, StringComparer.Ordinal);
        FirstByName<Part>? designed = null;
        foreach (var place in board.Board.Places)
        {
            if (
                place.IsEmpty
                || !BearsVoltage(place.Values)
                || place.Values.RatedVoltage is not { } rated
                || Worst(board.Board, WorkingAt(place), across[place.Part.Ref.Value], Magnitude(rated.Value).Value) is not { } worst
            )
            {
                continue;
            }

            var at = place.Part.Ref.Value;
            yield return worst.Volts.Value > Math.Abs(rated.Value.Value)
                ? Obligation.Open(
                    Kind,
                    BoardState.FaultStands,
                    at,
                    $"{worst.Words} at a part that is rated for {rated.Text}",
                    $"fit a part rated for more than {QuantityText.Format(worst.Volts)}, or find out why the voltage is so high"
                ) with
                {
                    // What belongs there would bear it; where it would not either, another part alone is no answer.
                    NeedsPart = place.Part.Values.RatedVoltage is { } wanted && Math.Abs(wanted.Value.Value) >= worst.Volts.Value,
                }
                : Obligation.Met(Kind, at, AsMet, Borne(board, place, rated, worst));
        }

        // A line of the board's own that leaves the working voltage out takes none away.
        Written<Quantity>? WorkingAt(PlaceHistory place) =>
            place.Part.Values.WorkingVoltage is { } own ? own
            : place.Part.FromDesign is null && board.Board.Design is { } design
                ? (designed ??= new(design.Parts, static part => part.Ref.Value)).Find(place.Part.Ref.Value)?.Values.WorkingVoltage
            : null;
    }

    private static Evidence Borne(
        BoardUnderObligation board,
        PlaceHistory place,
        Written<Quantity> rated,
        (Quantity Volts, LazyText Words, AssessedProof? By) worst
    ) =>
        worst.By is { } proof
            ? board.By(proof, new LazyText(() => $"{worst.Words}, rated for {rated.Text}"))
            : board.ByTheRecord(new LazyText(() => $"{QuantityText.Format(worst.Volts)} on {rated.Text}"), place.Part);

    // For a part that gives its voltage (a regulator, a cell, a lamp) the mark is no rating.
    private static bool BearsVoltage(PartValues values) => values.Kind.Value.Family is PartFamily.Capacitor or PartFamily.Resistor;

    private static (Quantity Volts, LazyText Words, AssessedProof? By)? Worst(
        BoardAssessment board,
        Written<Quantity>? working,
        IEnumerable<TestPoint> across,
        decimal rated
    )
    {
        (Quantity Volts, LazyText Words, AssessedProof? By)? worst = working is not null
            ? (Magnitude(working.Value), LazyText.For(working, static working => $"a working voltage of {working.Text}"), null)
            : null;
        foreach (var point in across)
        {
            if (
                board.ProofsAt(point.Name.Value).LastOrDefault(proof => VoltageOf(proof, rated) is not null) is not { } proof
                || VoltageOf(proof, rated) is not { } read
            )
            {
                continue;
            }

            var volts = Magnitude(read.Volts);
            if (worst is not { } known || volts.Value > known.Volts.Value)
            {
                worst = (volts, $"{read.Text} proved at {point.Name.Value}", proof);
            }
        }

        return worst;
    }

    // A bound speaks where what it leaves open is more than the part bears; below that it says neither.
    private static (Quantity Volts, string Text)? VoltageOf(AssessedProof proof, decimal rated)
    {
        foreach (var value in proof.Proof.Values)
        {
            if (value.Measured == Measured.Voltage)
            {
                return value.Exact is { } volts ? (volts, value.Value.Text)
                    : value.Value.Value is { Bound: { } bound } shown
                    && (shown.Kind is IndicationKind.Above or IndicationKind.AtLeast ? bound.Value : -bound.Value) > rated
                        ? (bound, value.Value.Text)
                    : null;
            }
        }

        return null;
    }

    private static Quantity Magnitude(Quantity voltage) => voltage with { Value = Math.Abs(voltage.Value) };
}
