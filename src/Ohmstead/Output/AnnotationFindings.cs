using System.Globalization;
using Ohmstead.Collections;
using Ohmstead.Records.Findings;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>Findings as workflow commands, which a code host shows on the lines of a pull request. A step shows ten at most: the worst come
/// first, the rest is counted.</summary>
/// <param name="prefix">The path of the collection from the root of the repository, or nothing.</param>
internal sealed class AnnotationFindings(string prefix) : IFindingsWriter
{
    private const int Most = 9;

    /// <inheritdoc/>
    public void Write(TextWriter target, RunResult result, CollectionFolder folder, int exitCode)
    {
        foreach (var finding in result.Findings.OrderByDescending(finding => finding.Severity).Take(Most))
        {
            var command = finding.Severity switch
            {
                Severity.Error => "error",
                Severity.Warning => "warning",
                _ => "notice",
            };
            var text = finding.NextStep is null ? finding.Message : $"{finding.Message}; {finding.NextStep}";
            target.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"::{command} file={Property(prefix + finding.Place.Path)},line={finding.Place.Line},col={finding.Place.Column},"
                        + $"title={Property(finding.Check)}::{Data(text)}"
                )
            );
        }

        var all = result.Findings.Sum(finding => 1 + finding.More);
        if (all > Most)
        {
            target.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"::warning::{all - Math.Min(Most, result.Findings.Length)} more findings are in the log of this step"
                )
            );
        }

        // The whole list as plain text: the annotations are a selection, the log is complete.
        using var inert = new InertWriter(target);
        new TextFindings(int.MaxValue, int.MaxValue).Write(inert, result, folder, exitCode);
    }

    private static string Data(string text) => Printable.Escape(text).Replace("%", "%25", StringComparison.Ordinal);

    private static string Property(string text) =>
        Data(text).Replace(":", "%3A", StringComparison.Ordinal).Replace(",", "%2C", StringComparison.Ordinal);

    /// <summary>A line of a record that looks like a workflow command must not become one.</summary>
    private sealed class InertWriter(TextWriter inner) : StringWriter(CultureInfo.InvariantCulture)
    {
        public override void WriteLine(string? value) =>
            inner.WriteLine(
                (value ?? string.Empty).Replace("::", ": :", StringComparison.Ordinal).Replace("##[", "# #[", StringComparison.Ordinal)
            );

        public override void WriteLine() => inner.WriteLine();
    }
}
