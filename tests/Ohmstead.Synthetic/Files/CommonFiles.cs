using Ohmstead.Synthetic.Parts;
using Ohmstead.Synthetic.Text;

namespace Ohmstead.Synthetic.Files;

/// <summary>Writes collection.yaml, instruments.yaml and stock.yaml.</summary>
public static class CommonFiles
{
    /// <summary>collection.yaml.</summary>
    public static string Collection() =>
        new LineWriter()
            .Line("collection: Saltmarsh Point weather collection")
            .Line("keeper: RK")
            .Line("place: Saltmarsh Point")
            .Line("invented: yes")
            .Line("look_every: 24 months")
            .Line("duty: { hours_per_year: 900, temperature: 38 °C }")
            .Line("format: 1")
            .ToString();

    /// <summary>instruments.yaml.</summary>
    public static string Instruments()
    {
        var file = new LineWriter().Line("instruments:");
        Instrument(
            file,
            "bridge-1",
            "component bridge",
            Accuracy("capacitance").Add("error", "0.5 %"),
            Accuracy("esr").Add("error", "1 %").Add("fixed", "10 mΩ"),
            Accuracy("loss_factor").Add("fixed", "0.001"),
            Accuracy("inductance").Add("error", "1 %")
        );
        Instrument(file, "loop-1", "ESR tester for use in circuit", Accuracy("esr").Add("error", "5 %").Add("fixed", "20 mΩ"));
        Instrument(
            file,
            "meter-1",
            "bench multimeter",
            Accuracy("resistance").Add("error", "0.1 %"),
            Accuracy("voltage").Add("error", "0.05 %").Add("digits", "3").Add("step", "1 mV"),
            Accuracy("leakage").Add("error", "1 %"),
            Accuracy("current").Add("error", "0.5 %")
        );
        Instrument(file, "scope-1", "oscilloscope", Accuracy("ripple").Add("error", "3 %"));
        Instrument(file, "tracer-1", "curve tracer");
        return file.ToString();
    }

    /// <summary>stock.yaml.</summary>
    public static string Stock(CollectionPlan plan)
    {
        var batches = Enumerable.Range(1, plan.Batches).ToList();
        return new LineWriter()
            .List(0, "lots", batches.SelectMany(batch => ElectrolyticTemplate.All.Select((template, at) => Lot(template, at, batch))))
            .List(0, "orders", batches.Select(batch => Order(batch, SeededRandom.For(plan.Seed, 3, batch))))
            .ToString();
    }

    private static FlowLine Accuracy(string measures) => new FlowLine().Add("measures", measures);

    private static void Instrument(LineWriter file, string id, string what, params FlowLine[] accuracies) =>
        file.Line($"  - id: {id}")
            .Line($"    what: {what}")
            .List(
                4,
                "calibrations",
                ((string[])["2023-10-02", "2024-09-16", "2025-09-08", "2026-09-01"]).Select(date =>
                    new FlowLine().Add("date", date).Add("valid", "12 months").Add("certificate", $"SP-C-{date[..4]}")
                )
            )
            .List(4, "accuracy", accuracies);

    private static FlowLine Lot(ElectrolyticTemplate template, int at, int batch) =>
        new FlowLine()
            .Add("lot", CollectionPlan.LotId(at, batch))
            .Add("kind", "aluminium electrolytic")
            .Add("capacitance", $"{template.Microfarads} µF")
            .Add("tolerance", "20 %")
            .Add("rated_voltage", $"{template.Volts} V")
            .Add("temperature", "105 °C")
            .Add("life", "2000 h")
            .Add("form", "radial")
            .Add("lead_pitch", $"{Figures.Number(template.Pitch)} mm")
            .Add("diameter", $"{Figures.Number(template.Diameter)} mm")
            .Add("height", $"{Figures.Number(template.Height)} mm")
            .Add("maker", "Varnow")
            .Add("series", "VL")
            .AddPlain("date_code", "\"2348\"")
            .Add("received", "2024-01-08")
            .Add("quantity", "500")
            .Add("shelf_life", "2 years");

    // Placed before any board began to wait; most are still open, which is what boards wait for.
    private static FlowLine Order(int batch, SeededRandom random) =>
        new FlowLine()
            .Add("order", CollectionPlan.OrderId(batch))
            .Add("placed", $"2024-01-{Figures.Padded(random.Between(10, 28), 2)}")
            .Add("from", "Dunmere parts")
            .Add("for", random.Pick(["pen motor belts", "edge connectors, 22 way", "gear trains for the recorder"]))
            .Add("lost", random.Chance(10) ? "2024-11-20" : null);
}
