using Ohmstead.Records.Findings;

namespace Ohmstead.Report.Pages;

/// <summary>The explanation of one check.</summary>
/// <param name="Name">The name of the check.</param>
/// <param name="Summary">What a finding of it means, in one sentence.</param>
/// <param name="Body">Why, a wrong and a right example, what to do, the source: Markdown.</param>
/// <param name="Severity">How serious its findings are, or null where that differs.</param>
public sealed record CheckText(string Name, string Summary, string Body, Severity? Severity)
{
    /// <summary>Reads a page of explanation: its name as a heading, an empty line, the summary, an empty line, the rest.</summary>
    public static CheckText Read(string name, string page, Severity? severity)
    {
        var lines = page.ReplaceLineEndings("\n").Split('\n');
        string[] summary = [.. lines.Skip(2).TakeWhile(line => line.Length > 0)];
        return new(name, string.Join(' ', summary), string.Join('\n', lines.Skip(2 + summary.Length)), severity);
    }
}
