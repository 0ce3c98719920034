using System.Text.Json;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Output;

/// <summary>What would fit a place, as one JSON document.</summary>
internal static class FitJson
{
    /// <summary>Writes the report.</summary>
    /// <param name="target">Where to.</param>
    /// <param name="board">The number of the board.</param>
    /// <param name="reference">The place.</param>
    /// <param name="report">What fits it.</param>
    public static void Write(TextWriter target, string board, string reference, FitReport report)
    {
        target.Write(JsonText.Document(isOneLine: false, json =>
            {
                json.WriteString("board", board);
                json.WriteString("part", reference);
                json.WriteString("what", report.What);
                json.WriteStartArray("assumptions");
                foreach (var assumption in report.Assumptions)
                {
                    json.WriteStringValue(assumption);
                }

                json.WriteEndArray();
                Candidates(json, "fits", report.Fitting);
                Candidates(json, "together", report.Together);
                Candidates(json, "unknown", report.Unknown);
                Candidates(json, "refused", report.Refused);
                json.WriteStartArray("look_for");
                foreach (var need in report.Need)
                {
                    json.WriteStartObject();
                    json.WriteString("about", need.Aspect);
                    json.WriteString("text", need.Words);
                    json.WriteString("source", need.Source.Text);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
            }));
    }

    private static void Candidates(Utf8JsonWriter json, string name, IReadOnlyList<FitCandidate> candidates)
    {
        json.WriteStartArray(name);
        foreach (var candidate in candidates)
        {
            json.WriteStartObject();
            json.WriteString("lot", candidate.Verdict.Lot);
            json.WriteString("what", PartWords.Describe(candidate.Values));
            json.WriteNumber("left", candidate.Left);
            json.WriteString("verdict", FitWords.Describe(candidate.Verdict));
            json.WriteStartArray("reasons");
            foreach (var reason in candidate.Verdict.Reasons)
            {
                json.WriteStartObject();
                json.WriteString("speaks", FitWords.Describe(reason.Weight));
                json.WriteString("about", reason.Aspect);
                json.WriteString("text", reason.Words.Text);
                json.WriteBoolean("missing", reason is { Weight: ReasonWeight.Doubt, IsMissing: true });
                json.WriteString("source", reason.Source.Text);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
