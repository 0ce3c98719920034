using System.Text.Json;
using Ohmstead.Assessment.Reckoning;
using Ohmstead.Assessment.Reckoning.Basis;

namespace Ohmstead.Output;

/// <summary>Rules and their answers as one JSON document.</summary>
internal static class ReckonJson
{
    /// <summary>Writes the list of rules.</summary>
    public static void WriteList(TextWriter target) => Write(target, json =>
        {
            json.WriteStartArray("rules");
            foreach (var field in ReckonCatalogue.Fields)
            {
                foreach (var rule in field.Rules)
                {
                    json.WriteStartObject();
                    json.WriteString("rule", rule.Name);
                    json.WriteString("field", field.Name);
                    json.WriteString("computes", rule.Computes);
                    json.WriteEndObject();
                }
            }

            json.WriteEndArray();
        });

    /// <summary>Writes what a rule is, and its example worked.</summary>
    public static void WritePage(TextWriter target, ReckonRule rule) => Write(target, json =>
        {
            json.WriteString("rule", rule.Name);
            json.WriteString("computes", rule.Computes);
            json.WriteString("formula", rule.Formula);
            json.WriteString("validity", rule.Validity);
            json.WriteStartArray("inputs");
            foreach (var input in rule.Inputs)
            {
                json.WriteStartObject();
                json.WriteString("name", input.Name);
                json.WriteString("meaning", input.Meaning);
                json.WriteString("form", input.Form);
                json.WriteString("range", input.Range);
                json.WriteBoolean("needed", input.IsNeeded);
                json.WriteString("usual", input.Usual);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteString("example", rule.Example);
            if (rule.OfExample().Is(out var answer, out _))
            {
                Answer(json, answer);
            }
        });

    /// <summary>Writes an answer.</summary>
    public static void WriteAnswer(TextWriter target, ReckonRule rule, Reckoned answer) => Write(target, json =>
        {
            json.WriteString("rule", rule.Name);
            Answer(json, answer);
        });

    /// <summary>Writes why there is no answer.</summary>
    public static void WriteRefusal(TextWriter target, string name, string reason, string example) => Write(target, json =>
        {
            json.WriteString("rule", name);
            json.WriteString("refused", reason);
            json.WriteString("example", example);
        });

    private static void Answer(Utf8JsonWriter json, Reckoned answer)
    {
        json.WriteStartArray("answer");
        foreach (var line in answer.Lines)
        {
            json.WriteStartObject();
            json.WriteString("what", line.What);
            json.WriteString("text", line.Value);
            if (line.Number is { } number)
            {
                json.WriteNumber("value", number);
                json.WriteString("unit", line.Unit);
            }

            json.WriteString("arithmetic", line.Arithmetic);
            json.WriteString("source", line.Source.Text);
            Strings(json, "remarks", line.Remarks);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Strings(json, "cautions", answer.Cautions);
    }

    private static void Strings(Utf8JsonWriter json, string name, IReadOnlyList<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    private static void Write(TextWriter target, Action<Utf8JsonWriter> members) =>
        target.Write(JsonText.Document(isOneLine: false, members));
}
