using System.Text.Json;
using Ohmstead.Assessment.Families.Statistics;

namespace Ohmstead.Output;

/// <summary>Families of parts as one JSON document, for programs. What is not known well enough is null, with the reason beside
/// it.</summary>
internal static class FamiliesJson
{
    // What the iteration leaves of a mass that is zero.
    private const double LeastMass = 1e-6;

    /// <summary>Writes the document.</summary>
    public static void Write(TextWriter target, IReadOnlyList<FamilyStatistics> families)
    {
        target.Write(JsonText.Document(isOneLine: false, json =>
            {
                json.WriteStartArray("families");
                foreach (var family in families)
                {
                    Family(json, family);
                }

                json.WriteEndArray();
            }));
    }

    private static void Family(Utf8JsonWriter json, FamilyStatistics family)
    {
        json.WriteStartObject();
        json.WriteString("kind", family.Name.Kind);
        json.WriteString("maker", family.Name.Maker);
        json.WriteString("series", family.Name.Series);
        json.WriteNumber("parts", family.Parts);
        json.WriteNumber("measured", family.Measured);
        json.WriteNumber("boards", family.Boards);
        json.WriteNumber("failed_as_found", family.FailedAsFound);
        json.WriteNumber("failed_later", family.FailedLater);
        json.WriteNumber("failed_in_circuit", family.FailedInCircuit);
        if (family.Share is { } share)
        {
            json.WriteStartObject("share");
            Number(json, "share", share.Share);
            Number(json, "low", share.Low);
            Number(json, "high", share.High);
            Number(json, "confidence", ShareFailed.Confidence);
            json.WriteBoolean("one_sided", share.IsUpperLimit);
            json.WriteString("arithmetic", share.Arithmetic.Text);
            json.WriteString("source", share.Source.Text);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("share");
        }

        Ages(json, family.Ages);
        json.WriteEndObject();
    }

    private static void Ages(Utf8JsonWriter json, AgesAtFailure ages)
    {
        json.WriteStartObject("ages");
        json.WriteNumber("observed", ages.Observed);
        json.WriteNumber("failed_by_first_look", ages.FailedByFirstLook);
        json.WriteNumber("failed_between_looks", ages.FailedBetweenLooks);
        if (ages.Steps.Is(out var estimate, out var noSteps))
        {
            json.WriteStartArray("steps");
            foreach (var mass in estimate.Masses.Where(mass => mass.Probability >= LeastMass))
            {
                json.WriteStartObject();
                Number(json, "after", mass.After);
                Number(json, "by", double.IsInfinity(mass.By) ? null : mass.By);
                Number(json, "share", mass.Probability);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }
        else
        {
            json.WriteNull("steps");
        }

        json.WriteString("no_steps", noSteps);
        if (ages.Life.Is(out var life, out var noLife))
        {
            json.WriteStartObject("weibull");
            Number(json, "shape", life.Fit.Life.Shape);
            Number(json, "shape_low", life.Shape.Low);
            Number(json, "shape_high", life.Shape.High);
            Number(json, "scale", life.Fit.Life.Scale);
            Number(json, "scale_low", life.Scale.Low);
            Number(json, "scale_high", life.Scale.High);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("weibull");
        }

        json.WriteString("no_weibull", noLife);
        json.WriteEndObject();
    }

    // Six decimals are more than any of these figures is worth, and the same on every machine.
    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        const int decimals = 6;
        if (value is { } known)
        {
            json.WriteNumber(name, Math.Round((decimal)known, decimals));
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
