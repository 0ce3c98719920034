using System.Text;
using System.Text.Json;
using Ohmstead.Collections;
using Ohmstead.Records.Findings;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>Findings as the code quality report that GitLab shows in a merge request: a list, each with a lasting name of its
/// own.</summary>
/// <param name="prefix">The path of the collection from the root of the repository, or nothing.</param>
internal sealed class CodeQualityFindings(string prefix) : IFindingsWriter
{
    /// <inheritdoc/>
    public void Write(TextWriter target, RunResult result, CollectionFolder folder, int exitCode)
    {
        var names = new FindingNames(new FindingSources(folder));
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartArray();
            foreach (var finding in result.Findings)
            {
                json.WriteStartObject();
                json.WriteString(
                    "description",
                    Printable.Escape(finding.NextStep is { } next ? $"{finding.Message}; {next}" : finding.Message)
                );
                json.WriteString("check_name", finding.Check);
                json.WriteString("fingerprint", names.Next(finding));
                json.WriteString(
                    "severity",
                    finding.Severity switch
                    {
                        Severity.Error => "major",
                        Severity.Warning => "minor",
                        _ => "info",
                    }
                );
                json.WriteStartObject("location");
                json.WriteString("path", prefix + finding.Place.Path);
                json.WriteStartObject("lines");
                json.WriteNumber("begin", finding.Place.Line);
                json.WriteEndObject();
                json.WriteEndObject();
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        target.Write(Encoding.UTF8.GetString(buffer.GetBuffer(), 0, (int)buffer.Length) + "\n");
    }
}
