using System.Collections.Immutable;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Notes;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Records.Model;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>What can hurt, how long it takes to bleed down, and always to whom a figure defers. It is as loud as what it says: most of all
/// where something must be made safe first.</summary>
/// <param name="html">The page.</param>
internal sealed class Cautions(HtmlWriter html)
{
    private const int LongestLine = 140;

    /// <summary>Writes the cautions of a board, or says that it names none.</summary>
    public void Write(ImmutableArray<AssessedHazard> hazards)
    {
        var isUnsafe = hazards.Any(hazard => hazard.MustGo && hazard.MadeSafe is null);
        using var section = Section.Open(html, "cautions", isUnsafe ? "Make it safe first" : "Before you touch it");
        if (hazards.All(hazard => hazard.MadeSafe is not null || hazard.Hazard.Kind.Value == HazardKind.LeadAndFlux))
        {
            List(hazards, isDesign: false);
            return;
        }

        using var box = html.Open(Tag.Div, isUnsafe ? ClassName.Danger : ClassName.Caution);
        List(hazards, isDesign: false);
    }

    /// <summary>Writes the cautions that hold for every unit of a design.</summary>
    public void Write(DesignUnits design)
    {
        using var section = Section.Open(html, "cautions", "Before you touch one", "each unit's page says what was made safe");
        var hazards = AssessedHazard.OfDesign(design.Design);
        if (hazards.Length == 0)
        {
            List(hazards, isDesign: true);
            return;
        }

        using var box = html.Open(Tag.Div, ClassName.Caution);
        List(hazards, isDesign: true);
    }

    private void List(ImmutableArray<AssessedHazard> hazards, bool isDesign)
    {
        if (hazards.Length > 0)
        {
            using var list = html.Open(Tag.Ul);
            var told = new HashSet<string>(StringComparer.Ordinal);
            foreach (
                var hazard in hazards.OrderBy(hazard =>
                    hazard.MustGo && hazard.MadeSafe is null ? 0
                    : hazard.MadeSafe is null ? 1
                    : 2
                )
            )
            {
                One(hazard, isDesign, told);
            }
        }
        else
        {
            html.Open(Tag.P).Text("The record names no hazard. That is not proof that there is none.");
        }

        html.Open(Tag.P, ClassName.Fine).Text(SafetyNotice.Defer);
    }

    private void One(AssessedHazard assessed, bool isDesign, HashSet<string> told)
    {
        var hazard = assessed.Hazard;
        using var item = html.Open(Tag.Li);
        html.Open(Tag.Strong).Text(hazard.Kind.Text + (hazard.At is { } at ? $" at {at.Value}" : string.Empty));
        var clauses = new List<string>();
        if (assessed.MadeSafe is { } visit)
        {
            clauses.Add($"made safe on {visit.Date.Text}");
        }
        else if (assessed.MustGo && !isDesign)
        {
            clauses.Add("not made safe");
        }

        if (hazard.Note is { } note)
        {
            clauses.Add(note.Value.TrimEnd('.'));
        }

        if (assessed.MadeSafe is null)
        {
            clauses.AddRange(HazardNotes.Figures(assessed).Select(note => note.Says));

            // What holds for the kind is said once; said for each of six capacitors, nobody would read it.
            // To whom all of it defers stands below the list, too, and does not take the one line.
            clauses.AddRange(told.Add(hazard.Kind.Text) ? HazardNotes.Cautions(hazard.Kind.Value).OrderBy(IsDeferring) : []);
        }

        // One line each; what must be made safe first is told whole at once.
        var shown = clauses.Count > 1 && clauses[0].Length + clauses[1].Length <= LongestLine ? 2 : 1;
        if (clauses.Count > 0)
        {
            html.Text($": {string.Join("; ", clauses.Take(shown))}.");
        }

        if (assessed.MadeSafe is null)
        {
            Fold(assessed, [.. clauses.Skip(shown)], assessed.MustGo && !isDesign);
        }
    }

    private static bool IsDeferring(string caution) => caution.StartsWith("defer to ", StringComparison.Ordinal);

    private void Fold(AssessedHazard assessed, string[] more, bool isOpen)
    {
        var (notes, above, source) = (
            HazardNotes.Figures(assessed),
            HazardNotes.Above(assessed),
            HazardNotes.CautionSource(assessed.Hazard.Kind.Value)
        );
        if (notes.Count + above.Count + more.Length == 0)
        {
            return;
        }

        using var fold = isOpen ? html.Open(Tag.Details).With(FixedAttribute.Open) : html.Open(Tag.Details);
        html.Open(Tag.Summary).Text(more.Length > 0 ? "What to do, and why" : "Working and limits in standards");
        using var list = html.Open(Tag.Ul);
        if (more.Length > 0)
        {
            html.Open(Tag.Li).Text($"{string.Join("; ", more)}.");
        }

        foreach (var note in notes)
        {
            html.Open(Tag.Li).Text($"{note.Arithmetic} ({note.Source})");
        }

        foreach (var limit in above)
        {
            html.Open(Tag.Li).Text($"Above {limit}");
        }

        if (source is not null && more.Length > 0)
        {
            html.Open(Tag.Li).Text($"Cautions: {source}");
        }

        html.Open(Tag.Li).Text("A limit in a standard is no permission: defer to local codes and licensed practice.");
    }
}
