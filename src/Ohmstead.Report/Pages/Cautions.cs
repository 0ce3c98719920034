using Ohmstead.Assessment.Boards;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>What can hurt, how long it takes to bleed down, and always to whom a figure defers. It is as loud as what it says: most of all where something must be made safe first.</summary>
internal static class Cautions
{
    // To 60 V d.c.: the usual boundary of touchable voltage, IEC 62368-1:2018 table 4 (from memory). It is where the figure stops, not a permission.
    private const double BleedsTo = 60;

    /// <summary>Writes the cautions of a board, or says that it names none.</summary>
    public static void Write(HtmlWriter html, IReadOnlyList<AssessedHazard> hazards)
    {
        var isUnsafe = hazards.Any(hazard => hazard.MustGo && hazard.MadeSafe is null);
        using var entry = Entry.Open(html, "cautions", isUnsafe ? "Make it safe first" : "Before you touch it");
        if (hazards.All(hazard => hazard.MadeSafe is not null || hazard.Hazard.Kind.Value == "lead and flux"))
        {
            List(html, hazards, isDesign: false);
            return;
        }

        using var box = html.Open(Tag.Div, isUnsafe ? ClassName.Danger : ClassName.Caution);
        List(html, hazards, isDesign: false);
    }

    /// <summary>Writes the cautions that hold for every unit of a design.</summary>
    public static void Write(HtmlWriter html, DesignUnits design)
    {
        using var entry = Entry.Open(html, "cautions", "Before you touch one", "each unit's page says what was made safe");
        AssessedHazard[] hazards = [.. design.Design.Hazards.Select(hazard => new AssessedHazard(hazard, null))];
        if (hazards.Length == 0)
        {
            List(html, hazards, isDesign: true);
            return;
        }

        using var box = html.Open(Tag.Div, ClassName.Caution);
        List(html, hazards, isDesign: true);
    }

    private static void List(HtmlWriter html, IReadOnlyList<AssessedHazard> hazards, bool isDesign)
    {
        if (hazards.Count > 0)
        {
            using var list = html.Open(Tag.Ul);
            var told = new HashSet<string>(StringComparer.Ordinal);
            foreach (var hazard in hazards.OrderBy(hazard => hazard.MustGo && hazard.MadeSafe is null ? 0 : hazard.MadeSafe is null ? 1 : 2))
            {
                One(html, hazard, isDesign, told);
            }
        }
        else
        {
            html.Open(Tag.P).Text("The record names no hazard. That is not proof that there is none.");
        }

        html.Open(Tag.P, ClassName.Fine).Text(SafetyNotice.Defer);
    }

    private static void One(HtmlWriter html, AssessedHazard assessed, bool isDesign, HashSet<string> told)
    {
        var hazard = assessed.Hazard;
        using var item = html.Open(Tag.Li);
        html.Open(Tag.Strong).Text(hazard.Kind.Value + (hazard.At is { } at ? $" at {at.Value}" : string.Empty));
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
            clauses.AddRange(Figures(hazard));

            // What holds for the kind is said once; said for each of six capacitors, nobody would read it.
            clauses.AddRange(!told.Add(hazard.Kind.Value) ? [] : HazardCatalogue.All.FirstOrDefault(known => known.Name == CatalogueId(hazard.Kind.Value))?.Cautions.Where(caution => caution != SafetyNotice.Defer) ?? []);
        }

        if (clauses.Count > 0)
        {
            html.Text($": {string.Join("; ", clauses)}.");
        }
    }

    private static IEnumerable<string> Figures(Records.Model.Hazard hazard)
    {
        if (hazard.Voltage is not { } voltage || hazard.Capacitance is not { } capacitance)
        {
            yield break;
        }

        var (volts, farads) = (voltage.Value.Value, capacitance.Value.Value);
        if (StoredEnergy.Of(farads, volts).Is(out var energy, out _))
        {
            yield return $"{capacitance.Text} at {voltage.Text} holds {QuantityText.Format(new Quantity(decimal.Round(energy.Joules, 4), Dimension.Energy), 3)}";
        }

        if (hazard.Bleed is { } bleed && (double)volts > BleedsTo && Discharge.Seconds((double)bleed.Value.Value, (double)farads, (double)volts, BleedsTo).Is(out var seconds, out _))
        {
            yield return $"through {bleed.Text} it needs {QuantityText.Format(new Quantity((decimal)Math.Ceiling(seconds.Value), Dimension.Duration))} to fall to 60 V, if the resistor is not open: measure";
        }
    }

    private static string CatalogueId(string kind) => kind switch
    {
        "charged capacitor" => "stored-energy",
        "picture tube" => "picture-tube",
        "leaking cell" => "rechargeable-cell",
        "lithium cell" => "lithium-cell",
        "oil-filled part" => "polychlorinated-oil",
        "selenium rectifier" => "selenium",
        "crazed suppressor" => "crazed-suppressor",
        "lead and flux" => "lead-and-flux",
        "hot parts" => "hot-parts",
        _ => kind,
    };
}
