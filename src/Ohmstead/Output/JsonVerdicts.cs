using System.Collections.Immutable;
using System.Text.Json;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Output;

/// <summary>The verdicts of a board as one JSON document, for programs: each value with its limit, the rule that decided, uncertainty and
/// probability.</summary>
internal static class JsonVerdicts
{
    /// <summary>Writes the verdicts of a board, or of one place or point of it.</summary>
    internal static void Write(TextWriter target, JudgedBoard board, string? at)
    {
        target.Write(JsonText.Document(isOneLine: false, json =>
            {
                json.WriteString("board", board.Board.Id.Value);
                json.WriteString("path", board.Board.Path);
                json.WriteString("state", BoardStates.Words(board.State));
                json.WriteString("where", board.Whereabouts.Told);
                json.WriteBoolean("look_overdue", board.IsLookOverdue);
                json.WriteString("look_again", board.LookAgain is { } look ? IsoDate.Text(look) : null);
                json.WriteStartArray("obligations");
                foreach (var obligation in board.Obligations)
                {
                    if (at is null || at == obligation.At)
                    {
                        Entry(json, obligation);
                    }
                }

                json.WriteEndArray();
                json.WriteStartArray("verdicts");
                foreach (var reading in board.Readings)
                {
                    var of = reading.Reading.Part ?? reading.Reading.Point ?? reading.Reading.Lot;
                    if (
                        of is not null
                        && (
                            at is null
                            || at == reading.Reading.Part?.Value
                            || at == reading.Reading.Point?.Value
                            || at == reading.Reading.Lot?.Value
                        )
                    )
                    {
                        Entry(
                            json,
                            of.Value,
                            reading.Visit.Date.Text,
                            reading.Reading.StateWord,
                            reading.Reading.Spot.Line,
                            reading.Verdicts,
                            CorrectionWords.Told(reading)
                        );
                    }
                }

                foreach (var proof in board.Proofs.Where(proof => at is null || at == proof.Proof.Point.Value))
                {
                    Entry(
                        json,
                        proof.Proof.Point.Value,
                        proof.Visit.Date.Text,
                        "proof",
                        proof.Proof.Spot.Line,
                        proof.Verdicts,
                        CorrectionWords.Told(proof)
                    );
                }

                json.WriteEndArray();
            }));
    }

    private static void Entry(Utf8JsonWriter json, Obligation obligation)
    {
        var isOpen = obligation.Standing == ObligationStanding.Open;
        json.WriteStartObject();
        json.WriteString("kind", obligation.Kind);
        json.WriteString("at", obligation.At);
        json.WriteString("standing", ObligationStandings.Words(obligation.Standing));
        json.WriteString("text", obligation.Text);
        json.WriteString("state", isOpen ? BoardStates.Words(obligation.State) : null);
        json.WriteString("next", isOpen ? obligation.NextStep : null);
        if (obligation.MetBy is { } evidence)
        {
            json.WriteStartObject("evidence");
            json.WriteString("words", evidence.Words);
            json.WriteString("day", evidence.Day is { } day ? IsoDate.Text(day) : null);
            json.WriteString("path", evidence.Path);
            json.WriteNumber("line", evidence.Spot.Line);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("evidence");
        }

        json.WriteEndObject();
    }

    private static void Entry(
        Utf8JsonWriter json,
        string of,
        string date,
        string state,
        int line,
        ImmutableArray<Verdict> verdicts,
        string? corrected
    )
    {
        foreach (var verdict in verdicts)
        {
            json.WriteStartObject();
            json.WriteString("at", of);
            json.WriteString("date", date);
            json.WriteString("state", state);
            json.WriteNumber("line", line);
            json.WriteString("measured", VerdictWords.Describe(verdict.Measured));
            json.WriteString("reading", verdict.Reading.Text);
            json.WriteString("outcome", VerdictWords.Describe(verdict.Outcome));
            json.WriteString("why", verdict.Why);
            if (corrected is not null)
            {
                json.WriteString("corrected", corrected);
            }

            if (verdict.Limit is { } limit)
            {
                Limit(json, limit);
            }

            Number(json, "deviation", verdict.Deviation);
            Number(json, "margin", verdict.Margin);
            if (verdict is { Rule: { } rule, Uncertainty: { } uncertainty, Probability: { } probability })
            {
                json.WriteString("rule", rule.Name);
                json.WriteString("uncertainty", QuantityText.Format(uncertainty, 3));
                json.WriteNumber("probability_inside", decimal.Round((decimal)probability, 4));
            }

            json.WriteStartArray("remarks");
            foreach (var remark in verdict.Remarks)
            {
                json.WriteStringValue(remark.Text);
            }

            if (PartNotes.Frequency(verdict) is { } note)
            {
                json.WriteStringValue(note.Line);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }
    }

    private static void Limit(Utf8JsonWriter json, Limit limit)
    {
        json.WriteStartObject("limit");
        json.WriteString("kind", VerdictWords.Describe(limit.Kind));
        json.WriteString("range", VerdictWords.Range(limit.Interval));
        json.WriteString("origin", limit.Origin);
        json.WriteString("arithmetic", limit.Arithmetic);
        json.WriteString("source", limit.Source);
        json.WriteEndObject();
    }

    private static void Number(Utf8JsonWriter json, string name, decimal? value)
    {
        if (value is { } known)
        {
            json.WriteNumber(name, decimal.Round(known, 6));
        }
    }
}
