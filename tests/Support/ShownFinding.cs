using System.Text.Json;

namespace Ohmstead.Tests.Support;

/// <summary>A finding as the JSON form shows it.</summary>
internal sealed record ShownFinding(string Path, int Line, int Column, string Severity, string Check, string Message, string? Next)
{
    /// <summary>All findings of a document.</summary>
    public static IReadOnlyList<ShownFinding> FromJson(string json)
    {
        using var document = JsonDocument.Parse(json);
        return [.. document.RootElement.GetProperty("findings").EnumerateArray().Select(Of)];
    }

    private static ShownFinding Of(JsonElement finding) =>
        new(
            finding.GetProperty("path").GetString()!,
            finding.GetProperty("line").GetInt32(),
            finding.GetProperty("column").GetInt32(),
            finding.GetProperty("severity").GetString()!,
            finding.GetProperty("check").GetString()!,
            finding.GetProperty("message").GetString()!,
            finding.GetProperty("next").GetString()
        );
}
