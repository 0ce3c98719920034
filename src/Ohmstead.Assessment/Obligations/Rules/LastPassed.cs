using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>When something was read or proved last and passed: of the board, of a part, and of what tells whether metal is live.</summary>
/// <param name="board">The board.</param>
internal sealed class LastPassed(BoardAssessment board)
{
    private static readonly string[] OfInsulation = ["insulation", "earth", "chassis", "touch", "leakage"];

    private readonly Moment proved = board.Proofs.LastOrDefault(static proof => proof.Outcome == VerdictOutcome.Inside)?.At
        ?? Moment.AsItCame;

    private Dictionary<string, Moment>? parts;
    private Dictionary<string, Moment>? places;

    // Of the insulation of anything.
    private Moment insulation = Moment.AsItCame;

    /// <summary>Whether the board was proved, or a part read, after a moment. Of a fault in words that say nothing of its sort only the
    /// board can tell that it is gone.</summary>
    internal bool IsProvedSince(Moment since, string part) =>
        proved > since || (parts ??= OfParts()).GetValueOrDefault(part, Moment.AsItCame) > since;

    /// <summary>Whether metal that was live was tested after a moment: at its place, or by the insulation of anything.</summary>
    internal bool IsTestedSince(Moment since, string place) =>
        (places ??= OfPlaces()).GetValueOrDefault(place, Moment.AsItCame) > since || insulation > since;

    private Dictionary<string, Moment> OfParts()
    {
        var last = new Dictionary<string, Moment>(StringComparer.Ordinal);
        foreach (var reading in board.Readings)
        {
            if (reading.Overall == VerdictOutcome.Inside)
            {
                Take(last, reading.Reading.Part?.Value, reading.At);
            }
        }

        return last;
    }

    private Dictionary<string, Moment> OfPlaces()
    {
        var last = new Dictionary<string, Moment>(StringComparer.Ordinal);
        foreach (var reading in board.Readings)
        {
            if (reading.Overall != VerdictOutcome.Inside)
            {
                continue;
            }

            var method = reading.Reading.Method?.Value;
            Take(last, reading.Reading.Part?.Value, reading.At);
            Take(last, reading.Reading.Point?.Value, reading.At);
            Take(last, method, reading.At);
            if (IsOfInsulation(reading) || (method is not null && NamesInsulation(method)))
            {
                insulation = Later(insulation, reading.At);
            }
        }

        foreach (var proof in board.Proofs)
        {
            if (proof.Outcome == VerdictOutcome.Inside)
            {
                Take(last, proof.Proof.Point.Value, proof.At);
                insulation = NamesInsulation(proof.Proof.Point.Value) ? Later(insulation, proof.At) : insulation;
            }
        }

        return last;
    }

    // What a capacitor lets through says nothing of the metal around it; a transformer stands between the mains and it.
    private static bool IsOfInsulation(AssessedReading reading) =>
        (reading.Reading.Part is null || reading.Place?.Values.Kind.Value.Family is PartFamily.Inductor or PartFamily.Coil)
        && reading.Reading.Values.Any(static value => value.Measured is Measured.Insulation or Measured.Leakage);

    private static bool NamesInsulation(string words) =>
        Array.Exists(OfInsulation, word => words.Contains(word, StringComparison.OrdinalIgnoreCase));

    private static void Take(Dictionary<string, Moment> last, string? name, Moment at)
    {
        if (name is not null)
        {
            last[name] = Later(last.GetValueOrDefault(name, Moment.AsItCame), at);
        }
    }

    private static Moment Later(Moment one, Moment other) => one > other ? one : other;
}
