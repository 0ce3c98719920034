using System.Globalization;
using System.Text;
using System.Text.Json;
using Ohmstead.Assessment.Checks;
using Ohmstead.Collections;
using Ohmstead.Records.Findings;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>
/// Findings as SARIF 2.1.0 (OASIS Standard, 27 March 2020), one run: each check as a rule with its page as help, columns in UTF-16 units
/// with their ends, related places, and lasting names. A host takes 5,000 results of a run: the worst come first, and what is left out is
/// told.
/// </summary>
/// <param name="prefix">The path of the collection from the root of the repository, or nothing.</param>
internal sealed class SarifFindings(string prefix) : IFindingsWriter
{
    private const int Most = 5_000;

    /// <inheritdoc/>
    public void Write(TextWriter target, RunResult result, CollectionFolder folder, int exitCode)
    {
        var sources = new FindingSources(folder);
        var names = new FindingNames(sources);
        // Names are counted in order of place, whatever is left out afterwards.
        var all = result.Findings.Select(finding => (Finding: finding, Name: names.Next(finding))).ToArray();
        var told = all.OrderByDescending(one => one.Finding.Severity).Take(Most).ToArray();
        string[] rules = [.. told.Select(one => one.Finding.Check).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://raw.githubusercontent.com/oasis-tcs/sarif-spec/master/Schemata/sarif-schema-2.1.0.json");
            json.WriteString("version", "2.1.0");
            json.WriteStartArray("runs");
            json.WriteStartObject();
            Tool(json, rules);
            json.WriteStartObject("automationDetails");
            json.WriteString("id", $"ohmstead/{result.Workshop.Collection.Name}/");
            json.WriteEndObject();
            json.WriteString("columnKind", "utf16CodeUnits");
            Invocation(json, exitCode, all.Length - told.Length);
            json.WriteStartArray("results");
            foreach (var (finding, name) in told)
            {
                Result(json, finding, Array.BinarySearch(rules, finding.Check, StringComparer.Ordinal), name, sources);
            }

            json.WriteEndArray();
            json.WriteEndObject();
            json.WriteEndArray();
            json.WriteEndObject();
        }

        target.Write(Encoding.UTF8.GetString(buffer.GetBuffer(), 0, (int)buffer.Length) + "\n");
    }

    private static void Tool(Utf8JsonWriter json, string[] rules)
    {
        var pages = CheckPages.All();
        var effects = CheckCatalogue.Descriptions.ToDictionary(check => check.Name, StringComparer.Ordinal);
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", "ohmstead");
        json.WriteString("semanticVersion", ProgramVersion.Number);
        json.WriteStartArray("rules");
        foreach (var rule in rules)
        {
            json.WriteStartObject();
            json.WriteString("id", rule);
            var page = pages.TryGetValue(rule, out var known) ? CheckPages.Text(known) : null;
            json.WriteStartObject("shortDescription");
            json.WriteString("text", effects.GetValueOrDefault(rule)?.Summary ?? Summary(page) ?? rule);
            json.WriteEndObject();
            if (page is not null)
            {
                json.WriteStartObject("help");
                json.WriteString("text", page);
                json.WriteString("markdown", page);
                json.WriteEndObject();
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    // The first paragraph below the heading of its page.
    private static string? Summary(string? page) => page?.Split('\n').Skip(1).FirstOrDefault(line => line.Trim().Length > 0)?.Trim();

    private static void Invocation(Utf8JsonWriter json, int exitCode, int left)
    {
        json.WriteStartArray("invocations");
        json.WriteStartObject();
        json.WriteBoolean("executionSuccessful", exitCode is ExitCode.Clean or ExitCode.Findings);
        json.WriteNumber("exitCode", exitCode);
        if (left > 0)
        {
            json.WriteStartArray("toolExecutionNotifications");
            json.WriteStartObject();
            json.WriteString("level", "warning");
            json.WriteStartObject("message");
            json.WriteString(
                "text",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{left} more findings are left out, the least serious; ohmstead check tells all"
                )
            );
            json.WriteEndObject();
            json.WriteEndObject();
            json.WriteEndArray();
        }

        json.WriteEndObject();
        json.WriteEndArray();
    }

    private void Result(Utf8JsonWriter json, Finding finding, int rule, string name, FindingSources sources)
    {
        json.WriteStartObject();
        json.WriteString("ruleId", finding.Check);
        json.WriteNumber("ruleIndex", rule);
        json.WriteString(
            "level",
            finding.Severity switch
            {
                Severity.Error => "error",
                Severity.Warning => "warning",
                _ => "note",
            }
        );
        Message(json, finding.NextStep is { } next ? $"{finding.Message}; {next}" : finding.Message);
        json.WriteStartArray("locations");
        Location(json, finding.Place, sources, null);
        json.WriteEndArray();
        if (finding.Related.Length > 0)
        {
            json.WriteStartArray("relatedLocations");
            foreach (var related in finding.Related)
            {
                Location(json, related.Place, sources, related.Note);
            }

            json.WriteEndArray();
        }

        json.WriteStartObject("partialFingerprints");
        json.WriteString("ohmstead/v1", name);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private void Location(Utf8JsonWriter json, Records.Text.Place place, FindingSources sources, string? note)
    {
        var (first, behind) = sources.Columns(place);
        json.WriteStartObject();
        json.WriteStartObject("physicalLocation");
        json.WriteStartObject("artifactLocation");
        json.WriteString("uri", RelativeAddress(prefix + place.Path));
        json.WriteEndObject();
        json.WriteStartObject("region");
        json.WriteNumber("startLine", place.Line);
        json.WriteNumber("startColumn", first);
        json.WriteNumber("endColumn", behind);
        json.WriteEndObject();
        json.WriteEndObject();
        if (note is not null)
        {
            Message(json, note);
        }

        json.WriteEndObject();
    }

    private static void Message(Utf8JsonWriter json, string text)
    {
        json.WriteStartObject("message");
        json.WriteString("text", Printable.Escape(text));
        json.WriteEndObject();
    }

    /// <summary>A path as the relative part of an address (RFC 3986): each of its names escaped.</summary>
    internal static string RelativeAddress(string path) => string.Join('/', path.Split('/').Select(Uri.EscapeDataString));
}
