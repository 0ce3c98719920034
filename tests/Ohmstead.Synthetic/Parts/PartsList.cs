using Ohmstead.Synthetic.Text;

namespace Ohmstead.Synthetic.Parts;

/// <summary>Invents the parts of one board: forty, in the mix of a small analogue board.</summary>
public static class PartsList
{
    private static readonly string[] Makers = ["Ostrel", "Tallis", "Dunmere", "Varnow", "Keld"];
    private static readonly string[] Series = ["RB", "KX", "AL", "T2", "MF"];
    private static readonly string[] Roles = ["reservoir", "decoupling", "coupling", "filter"];
    private static readonly decimal[] Decades = [1m, 1.5m, 2.2m, 3.3m, 4.7m, 6.8m];
    private static readonly string[] ResistorKinds = ["carbon film resistor", "metal film resistor", "carbon composition resistor"];

    // Polypropylene loses 0.0002 to 0.0006 at 1 kHz where polyester loses 0.002 to 0.006: common practice.
    private const decimal PolypropyleneLoss = 0.1m;

    /// <summary>Forty parts.</summary>
    public static IReadOnlyList<SyntheticPart> Invent(SeededRandom random)
    {
        var parts = new List<SyntheticPart>(40);
        Add(parts, "C", 9, reference => Electrolytic(reference, random));
        Add(parts, "C", 5, reference => Film(reference, random));
        Add(parts, "C", 6, reference => Ceramic(reference, random));
        Add(parts, "R", 12, reference => Resistor(reference, random));
        Add(parts, "L", 1, reference => Inductor(reference, random));
        Add(parts, "D", 3, reference => Plain(reference, PartGroup.Diode, "diode", $"DN-{random.Between(100, 999)}"));
        Add(parts, "Q", 2, reference => Plain(reference, PartGroup.Transistor, "transistor", $"TN-{random.Between(100, 999)}"));
        Add(parts, "U", 1, reference => Plain(reference, PartGroup.Other, "integrated circuit", $"TL-{random.Between(1000, 9999)}"));
        Add(parts, "J", 1, reference => Plain(reference, PartGroup.Other, "connector", "edge, 22 way"));
        return parts;
    }

    private static void Add(List<SyntheticPart> parts, string letter, int count, Func<string, SyntheticPart> invent)
    {
        var first = 1 + parts.Count(part => part.Ref.StartsWith(letter, StringComparison.Ordinal));
        for (var number = first; number < first + count; number++)
        {
            parts.Add(invent($"{letter}{number}"));
        }
    }

    private static SyntheticPart Electrolytic(string reference, SeededRandom random)
    {
        var at = random.Between(0, ElectrolyticTemplate.All.Count - 1);
        var template = ElectrolyticTemplate.All[at];
        var line = Begin(reference, "aluminium electrolytic")
            .Add("role", random.Chance(30) ? random.Pick(Roles) : null)
            .Add("capacitance", $"{template.Microfarads} µF")
            .Add("tolerance", "-10/+50 %")
            .Add("rated_voltage", $"{template.Volts} V")
            .Add("working_voltage", $"{Figures.Number(template.Volts * random.Thousandths(400, 750))} V")
            .Add("temperature", "85 °C")
            .Add("lead_pitch", random.Chance(50) ? $"{Figures.Number(template.Pitch)} mm" : null)
            .Add("maker", random.Pick(Makers))
            .Add("series", random.Chance(30) ? random.Pick(Series) : null)
            .AddPlain("date_code", $"\"{DateCode(random)}\"");
        return new SyntheticPart(reference, PartGroup.Electrolytic, template.Farads, line, at);
    }

    private static SyntheticPart Film(string reference, SeededRandom random)
    {
        var nominal = random.Pick(Decades) * random.Pick([1e-9m, 1e-8m, 1e-7m]);
        var isPolyester = random.Chance(80);
        var line = Begin(reference, isPolyester ? "polyester film" : "polypropylene film")
            .Add("capacitance", Figures.Of(nominal, "F"))
            .Add("tolerance", "10 %")
            .Add("rated_voltage", random.Chance(50) ? "100 V" : "250 V");
        return new SyntheticPart(reference, PartGroup.Film, nominal, line, LossScale: isPolyester ? 1m : PolypropyleneLoss);
    }

    private static SyntheticPart Ceramic(string reference, SeededRandom random)
    {
        var nominal = random.Pick(Decades) * random.Pick([1e-9m, 1e-8m]);
        var line = Begin(reference, "ceramic class 2")
            .Add("capacitance", Figures.Of(nominal, "F"))
            .Add("tolerance", "-20/+80 %")
            .Add("rated_voltage", "63 V");
        return new SyntheticPart(reference, PartGroup.Ceramic, nominal, line);
    }

    private static SyntheticPart Resistor(string reference, SeededRandom random)
    {
        var nominal = random.Pick(Decades) * random.Pick([10m, 100m, 1000m, 10_000m, 100_000m]);
        var line = Begin(reference, random.Pick(ResistorKinds))
            .Add("resistance", Figures.Of(nominal, "Ω"))
            .Add("tolerance", "5 %")
            .Add("power", random.Chance(30) ? "0.5 W" : null);
        return new SyntheticPart(reference, PartGroup.Resistor, nominal, line);
    }

    private static SyntheticPart Inductor(string reference, SeededRandom random)
    {
        var nominal = random.Pick(Decades) * random.Pick([1e-3m, 1e-2m]);
        var line = Begin(reference, "inductor")
            .Add("inductance", Figures.Of(nominal, "H"))
            .Add("tolerance", "10 %")
            .Add("current", "200 mA");
        return new SyntheticPart(reference, PartGroup.Inductor, nominal, line);
    }

    private static SyntheticPart Plain(string reference, PartGroup group, string kind, string type) =>
        new(reference, group, 0m, Begin(reference, kind).Add("type", type));

    private static FlowLine Begin(string reference, string kind) => new FlowLine().Add("ref", reference).Add("kind", kind);

    private static string DateCode(SeededRandom random) =>
        Figures.Padded(random.Between(71, 89), 2) + Figures.Padded(random.Between(1, 52), 2);
}
