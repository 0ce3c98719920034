using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Notes;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Sheets;

/// <summary>What can hurt and how long it takes to bleed down, with a box to tick and a line for the voltage that was measured.</summary>
internal static class SheetCautions
{
    public static void Write(HtmlWriter html, BoardAssessment board)
    {
        using var box = html.Open(Tag.Section, SheetClass.Caution);
        var there = Begin(html, board);
        if (there.Length > 0)
        {
            using var list = html.Open(Tag.Ul);
            var told = new HashSet<string>(StringComparer.Ordinal);
            foreach (var hazard in there)
            {
                One(html, hazard, told);
            }
        }

        var safe = board
            .Hazards.Where(hazard => hazard.MadeSafe is not null)
            .Select(hazard => $"{Name(hazard)} on {hazard.MadeSafe!.Date.Text}")
            .ToArray();
        if (safe.Length > 0)
        {
            html.Open(Tag.P).Text($"Made safe before: {string.Join(", ", safe)}.");
        }

        html.Open(Tag.P, SheetClass.Fine).Text(SafetyNotice.Defer);
    }

    /// <summary>Writes the heading of a box of cautions, and that nothing stands where nothing does.</summary>
    /// <param name="html">Stands in the box.</param>
    /// <param name="board">The board.</param>
    /// <returns>The hazards that still stand, what must go first.</returns>
    internal static ImmutableArray<AssessedHazard> Begin(HtmlWriter html, BoardAssessment board)
    {
        ImmutableArray<AssessedHazard> there =
        [
            .. board.Hazards.Where(hazard => hazard.MadeSafe is null).OrderBy(hazard => hazard.MustGo ? 0 : 1),
        ];
        html.Open(Tag.H2).Text(there.Any(hazard => hazard.MustGo) ? "Make it safe first" : "Before you touch it");
        if (there.Length == 0)
        {
            html.Open(Tag.P)
                .Text(
                    board.Hazards.Length == 0
                        ? "The record names no hazard. That is not proof that there is none."
                        : "What the record names was made safe. That is not proof that nothing is left."
                );
        }

        return there;
    }

    private static void One(HtmlWriter html, AssessedHazard assessed, HashSet<string> told)
    {
        var hazard = assessed.Hazard;
        using var item = html.Open(Tag.Li);
        html.Open(Tag.Strong).Text(Name(assessed));
        string[] says =
        [
            .. hazard.Note is { } note ? [note.Value.TrimEnd('.')] : Array.Empty<string>(),
            .. HazardNotes.Figures(assessed).Select(figure => figure.Says),
            .. told.Add(hazard.Kind.Text) ? HazardNotes.Cautions(hazard.Kind.Value) : [],
        ];
        html.Text(says.Length > 0 ? $": {string.Join("; ", says)}. " : ". ");
        if (hazard.Voltage is not null)
        {
            html.Text("Measured ");
            html.Open(Tag.Span, SheetClass.Short).Close();
            html.Text(" V ");
        }

        html.Open(Tag.Span, SheetClass.Tick).Text(assessed.MustGo ? "made safe" : "seen to");
    }

    private static string Name(AssessedHazard assessed) =>
        assessed.Hazard.Kind.Text + (assessed.Hazard.At is { } at ? $" at {at.Value}" : string.Empty);
}
