using System.Collections.Frozen;

namespace Ohmstead.Electronics.Parts;

/// <summary>What is usually accepted of a part out of circuit. A default: an equipment's own manual comes first, and an override is
/// recorded.</summary>
/// <param name="Part">The kind of part.</param>
/// <param name="Measure">What is measured.</param>
/// <param name="ExtraFraction">What ageing adds to the marked tolerance, as a fraction of nominal; null where no figure is usual.</param>
/// <param name="LooseFraction">The widest deviation borne in an uncritical place, as a fraction of nominal; null where there is
/// none.</param>
/// <param name="Accept">The limit in words.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record AcceptLimit(string Part, string Measure, decimal? ExtraFraction, decimal? LooseFraction, string Accept, Source Source)
{
    private const string ReadingIsNotEnough = "passes or fails by a test, and the test is named: a pass says what was tried and no more";

    private static readonly Source Practice = Source.CommonPractice;
    private static readonly Source Pots = Source.FromMemory("IEC 60393-1", "terms");
    private static readonly Source Insulation = Source.Published(
        "IEE Wiring Matters, autumn 2005, page 16; practice of appliance testing in the UK",
        "insulation in service; the ratio common practice"
    );
    private static readonly Source Sheets = Source.FromMemory("semiconductor data sheets", null);

    /// <summary>The limits known here.</summary>
    public static IReadOnlyList<AcceptLimit> All { get; } =
    [
        new(
            "carbon composition resistor",
            "resistance at low voltage, 25 degrees",
            0m,
            0.20m,
            "its mark; ±20 % where uncritical (grid leaks, pull-ups); replace beyond or when noisy",
            Practice
        )
        {
            UsualTolerance = 0.20m,
        },
        new("carbon film resistor", "resistance", 0.02m, null, "its mark and 2 % of ageing", Practice) { UsualTolerance = 0.05m },
        new("metal film resistor", "resistance", 0.01m, null, "its mark and 0.5 to 1 % of ageing", Practice) { UsualTolerance = 0.05m },
        new("wire-wound resistor", "resistance, end caps", 0m, null, "its mark; four wires when low", Practice) { UsualTolerance = 0.10m },
        new("precision divider", "ratio, not only resistance", null, null, "ratio within the instrument's specification", Practice),
        new(
            "potentiometer",
            "end to end, wiper, sweep",
            null,
            0.20m,
            "±20 % end to end, wiper at the end to 5 % or 2 Ω, contact variation to 3 %, no dropout in the sweep",
            Pots
        ),
        new("trimmer", "end to end, wiper, sweep", null, 0.20m, "±10 to 20 % end to end, no dropout in the sweep", Pots),
        new(
            "inductor",
            "d.c. resistance; inductance at stated frequency and bias",
            null,
            0.20m,
            "resistance ±10 to 20 % of the drawing; no shorted turns by ring test",
            Practice
        ),
        new(
            "mains transformer",
            "winding resistance, ratio, off-load current, insulation",
            null,
            null,
            "ratio ±3 to 5 %; at 500 V d.c. 7 MΩ over reinforced insulation, 2 MΩ as class II and 1 MΩ as class I in service: say by "
                + "which; what is sound shows more than 50 MΩ",
            Insulation
        ),
        new(
            "fuse",
            "cold resistance; rating, speed, breaking capacity",
            null,
            null,
            "the right type; whole is no evidence of the current",
            Practice
        ),
        new(
            "crystal",
            "frequency at its load capacitance, series resistance",
            null,
            null,
            "±100 ppm where it clocks logic, ±20 ppm where it keeps the time of day, ±30 to 50 ppm for a colour subcarrier, 2 % in all "
                + "for a serial line",
            Practice
        ),
        new("silicon diode", "forward drop at 1 mA", null, null, "0.5 to 0.8 V, large rectifiers from 0.4 V, open the other way", Practice),
        new(
            "Schottky or germanium diode",
            "forward drop at 1 mA",
            null,
            null,
            "Schottky 0.1 to 0.45 V, germanium 0.15 to 0.4 V; germanium leaks by its type",
            Practice
        ),
        new("Zener diode", "voltage at its test current", null, null, "tolerance by series and suffix", Sheets),
        new(
            "bipolar transistor",
            "base drop, gain at a stated current, leakage",
            null,
            null,
            "gain within its sheet; germanium with ten times the leakage of its type is replaced",
            Practice
        ),
        new("regulator", "output, ripple, headroom", null, null, "its sheet over line, load and temperature", Sheets),
        new(
            "relay",
            "coil resistance; contacts by a test",
            null,
            0.20m,
            "coil ±10 to 20 % of its mark at 20 degrees (copper gains 0.4 % a kelvin); pulls in and drops out by test",
            Practice
        ),
        new("motor", "winding resistance", null, 0.20m, "±10 to 20 % of its mark at 20 degrees (copper gains 0.4 % a kelvin)", Practice),
        new("cell", "voltage, under its load where it can be", null, null, "above the end-point voltage of its chemistry", Practice),
        new("memory", "a test of every cell, read and written", null, null, ReadingIsNotEnough, Practice),
        new("integrated circuit", "a test of its function", null, null, ReadingIsNotEnough, Practice),
        new(
            "valve",
            "anode current or slope at its sheet's voltages",
            null,
            null,
            "by its data book; a tester's scale is a comparison",
            Practice
        ),
    ];

    /// <summary>The widest tolerance that parts of this kind were usually sold with, as a fraction; what holds where none is written.
    /// Null where there is no such figure.</summary>
    public decimal? UsualTolerance { get; init; }

    /// <summary>The limit of a kind of part, or null when none is known here.</summary>
    public static AcceptLimit? Find(string part) => ByPart.GetValueOrDefault(part);

    private static readonly FrozenDictionary<string, AcceptLimit> ByPart = All.ToFrozenDictionary(
        limit => limit.Part,
        StringComparer.Ordinal
    );

    /// <summary>The range for a nominal value with a marked tolerance, ageing added; refused when no figure is usual for the
    /// part.</summary>
    public Outcome<Worked<(decimal Low, decimal High)>> Range(decimal nominal, decimal tolerance) =>
        Domain
            .Require(
                Domain.Positive("nominal value", nominal),
                Domain.Within("tolerance", tolerance, 0m, 1m),
                Domain.That(ExtraFraction is not null, $"no usual figure is known for a {Part}")
            )
            .Compute(() =>
            {
                decimal spread = nominal * (tolerance + ExtraFraction!.Value);
                return new Worked<(decimal Low, decimal High)>(
                    (nominal - spread, nominal + spread),
                    new(() =>
                        $"{Figures.Text(nominal)} ± ({Figures.Percent(tolerance)} + {Figures.Percent(ExtraFraction.Value)}): "
                        + $"{Figures.Text(nominal - spread)} to {Figures.Text(nominal + spread)}"
                    ),
                    Source
                );
            });
}
