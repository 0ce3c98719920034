using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Commands;

/// <summary>The lines of an explanation that stand beside verdicts: what can hurt, what follows for a point, by which rule was
/// decided.</summary>
internal static class WhyNotes
{
    /// <summary>What can hurt on a board, and to whom the figures defer.</summary>
    internal static IEnumerable<string> Hazards(BoardAssessment board)
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var assessed in board.Hazards)
        {
            var hazard = assessed.Hazard;
            yield return $"  caution, {hazard.Kind.Text}"
                + (hazard.At is { } at ? $" at {at.Value}" : string.Empty)
                + (assessed.MadeSafe is { } visit ? $": made safe on {visit.Date.Text}" : string.Empty);
            if (assessed.MadeSafe is not null)
            {
                continue;
            }

            // What was told for a part with the same figures need not be read twice.
            foreach (var line in List(assessed, isFirst: told.Add(hazard.Kind.Text)).Where(told.Add))
            {
                yield return "    " + line;
            }
        }

        if (board.Hazards.Length > 0)
        {
            yield return "  " + SafetyNotice.Defer;
        }
    }

    /// <summary>What follows for a point, or for a fuse, from the design alone.</summary>
    internal static IEnumerable<string> Design(BoardAssessment board, string at) =>
        board
            .Points.Where(point => point.Name.Value == at)
            .SelectMany(point => PointNotes.OfDesign(board, point))
            .Concat(board.Place(at) is { IsEmpty: false } place ? FuseNotes.Compute(place.Values) : [])
            .Select(note => note.Line);

    /// <summary>What follows from a reading beside its verdicts.</summary>
    internal static IEnumerable<WorkedNote> Compute(BoardAssessment board, AssessedReading reading) =>
        PointNotes
            .Compute(board, reading)
            .Concat(
                reading.Verdicts.SelectMany(verdict =>
                    (WorkedNote[])
                        [
                            .. PartNotes.Compute(board, reading, verdict),
                            .. WearNotes.Compute(reading, verdict),
                            .. WindingNotes.Compute(board, reading, verdict),
                            .. RepeatNotes.Compute(board, reading, verdict),
                        ]
                )
            );

    /// <summary>By which rule a verdict was decided, and with what uncertainty; nothing when the uncertainty is not known.</summary>
    internal static IEnumerable<string> Rule(Verdict verdict)
    {
        if (verdict is { Rule: { } rule, Uncertainty: { } uncertainty })
        {
            yield return $"decided by: {DecisionRules.Words(rule)}; U = {QuantityText.Format(uncertainty, 3)}";
        }
    }

    /// <summary>What a test of function says, with how it was made: a pass says what was tried and no more.</summary>
    internal static IEnumerable<string> Test(Written<TestResult>? result, Written<string>? method)
    {
        if (result is { } said)
        {
            yield return $"test: {said.Text}, " + (method is { } how ? how.Value : "the record does not say how it was tested");
        }
    }

    private static string Above(IReadOnlyList<string> limits) =>
        $"above these limits in standards, which are no permissions: {string.Join("; ", limits)}";

    private static IEnumerable<string> List(AssessedHazard assessed, bool isFirst)
    {
        foreach (var note in HazardNotes.Figures(assessed))
        {
            yield return note.Line;
        }

        if (HazardNotes.Above(assessed) is { Count: > 0 } above)
        {
            yield return Above(above);
        }

        if (isFirst && HazardNotes.Cautions(assessed.Hazard.Kind.Value) is { Count: > 0 } cautions)
        {
            yield return $"{string.Join("; ", cautions)} ({HazardNotes.CautionSource(assessed.Hazard.Kind.Value)})";
        }
    }
}
