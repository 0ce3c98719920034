using Ohmstead.Records.Findings;
using Ohmstead.Records.Shapes;
using static Ohmstead.Publishing.Tables.SharedKeys;

namespace Ohmstead.Publishing.Tables;

/// <summary>Every finding.</summary>
internal static class FindingsTable
{
    /// <summary>Its columns.</summary>
    public static DataColumns<Finding> Columns { get; } =
        new(
            "finding row",
            "Something about a record that a person should know.",
            "{ record: boards/SP-0007.md, line: 31, column: 5, check: reading-outside, severity: warning, message: says something }",
            new(Key.Text("record", "The file.", "boards/SP-0007.md").Needed(), finding => finding.Place.Path),
            new(Key.Count("line", "The line.", "31").Needed(), finding => Number(finding.Place.Line)),
            new(Key.Count("column", "The column.", "5").Needed(), finding => Number(finding.Place.Column)),
            new(Key.Id("check", "The check that found it.", "polarity-from-print-alone").Needed(), finding => finding.Check),
            new(Word("severity", ["note", "warning", "error"], "How serious it is.").Needed(), finding => Severity(finding)),
            new(
                Key.Text("message", "What was found and what was expected.", "the print alone does not establish polarity").Needed(),
                finding => finding.Message
            ),
            new(Key.Text("next", "What to do.", "add polarity: [meter]"), finding => finding.NextStep)
        );

    private static string Severity(Finding finding) =>
        finding.Severity switch
        {
            Records.Findings.Severity.Error => "error",
            Records.Findings.Severity.Warning => "warning",
            _ => "note",
        };
}
