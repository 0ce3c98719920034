using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using static Ohmstead.Publishing.Tables.SharedKeys;

namespace Ohmstead.Publishing.Tables;

/// <summary>Every value of every reading and proof.</summary>
internal static class ReadingsTable
{
    private static readonly string[] OutcomeWords = [.. Enum.GetValues<VerdictOutcome>().Select(VerdictWords.Describe)];

    /// <summary>Its columns.</summary>
    public static DataColumns<ReadValueRow> Columns { get; } =
        new(
            "reading row",
            "One value of a reading or proof, with its verdict.",
            "{ board: SP-0007, date: 2026-03-14, of: C12, kind: as found, measured: capacitance, written: 391 µF, value: 0.000391, "
                + "unit: F, outcome: inside, line: 31 }",
            new(Board, row => row.Of.Board),
            new(Date, row => row.Of.Date),
            new(By, row => row.Of.By),
            new(Key.Text("of", "The part, point or lot that was read.", "C12").Needed(), row => row.Of.Name),
            new(
                Word("kind", [.. Vocabulary.ReadingStates, "proof"], "When in the life of the part it was taken, or that it is a proof.")
                    .Needed(),
                row => row.Of.Kind
            ),
            new(Word("circuit", Vocabulary.Circuits, "Whether the part was in the circuit."), row => row.Of.Circuit),
            new(Key.Id("instrument", "The instrument.", "bridge-2"), row => row.Of.Instrument),
            new(Key.Text("measured", "What was measured; test for a test of function.", "capacitance").Needed(), row => row.Measured),
            new(
                Key.Text(
                        "written",
                        "What was read as written: a figure, a bound such as > 20 MΩ, or open, short, over range; pass or fail for a test.",
                        "391 µF"
                    )
                    .Needed(),
                row => row.Written
            ),
            new(Key.Number("value", "The same as a figure; absent where the meter showed none.", "0.000391"), row => row.Value),
            new(Figures.Unit, row => row.Unit),
            new(
                Key.Number("uncertainty", "The expanded uncertainty of the value, k = 2; absent where it is not known.", "0.0000041"),
                row => row.Uncertainty
            ),
            // The limit that governs stands here as figures alone: words beside them would say the same once more, and rounded.
            new(Figures.Low, row => row.Low),
            new(Figures.High, row => row.High),
            new(Key.Text("limit_kind", "Which kind of limit governs.", "circuit limit"), row => row.LimitKind),
            new(Word("outcome", OutcomeWords, "What the value says.").Needed(), row => VerdictWords.Describe(row.Outcome)),
            new(Key.Number("probability_inside", "The probability that the true value is inside, to four decimals.", "0.9987"), row =>
                row.Probability
            ),
            new(Key.Count("line", "The line of the record.", "31").Needed(), row => row.Of.Line)
        )
        {
            OfOneBoard = [new(Key.Text("limit_from", "Where the limit comes from.", "the marking"), row => row.LimitFrom)],
        };

    /// <summary>The readings and proofs of a board, value by value.</summary>
    public static IEnumerable<ReadValueRow> Rows(BoardAssessment board)
    {
        var number = board.Board.Id.Value;
        foreach (var assessed in board.Readings)
        {
            var reading = assessed.Reading;
            if ((reading.Part ?? reading.Point ?? reading.Lot) is { } name)
            {
                var of = new ReadingRow(number, Day(assessed.Visit.Date.Value), assessed.Visit.By?.Value, name.Value, reading.StateWord)
                {
                    Circuit = reading.Circuit?.Text,
                    Instrument = (reading.Instrument ?? assessed.Visit.Instrument)?.Value,
                    Line = Number(reading.Spot.Line),
                };
                foreach (var row in Values(of, assessed.Verdicts, reading.Result))
                {
                    yield return row;
                }
            }
        }

        foreach (var assessed in board.Proofs)
        {
            var proof = assessed.Proof;
            var of = new ReadingRow(number, Day(assessed.Visit.Date.Value), assessed.Visit.By?.Value, proof.Point.Value, "proof")
            {
                Instrument = (proof.Instrument ?? assessed.Visit.Instrument)?.Value,
                Line = Number(proof.Spot.Line),
            };
            foreach (var row in Values(of, assessed.Verdicts, proof.Result))
            {
                yield return row;
            }
        }
    }

    private static IEnumerable<ReadValueRow> Values(ReadingRow of, ImmutableArray<Verdict> verdicts, Written<TestResult>? test)
    {
        foreach (var verdict in verdicts)
        {
            yield return new(of, VerdictWords.Describe(verdict.Measured), verdict.Reading.Text, verdict.Outcome)
            {
                Value = Figures.Of(verdict.Exact),
                Unit = Figures.UnitOf(verdict.Reading.Value.Dimension),
                Uncertainty = Figures.Uncertainty(verdict.Uncertainty),
                Low = Figures.Limit(verdict.Limit?.Interval.Lower),
                High = Figures.Limit(verdict.Limit?.Interval.Upper),
                LimitKind = verdict.Limit is { } limit ? VerdictWords.Describe(limit.Kind) : null,
                LimitFrom = verdict.Limit?.Origin.Text,
                Probability = verdict.Probability is { } probability ? Figures.Probability(probability) : null,
            };
        }

        if (test is not null)
        {
            yield return new(of, "test", test.Text, Outcomes.From(test.Value));
        }
    }
}
