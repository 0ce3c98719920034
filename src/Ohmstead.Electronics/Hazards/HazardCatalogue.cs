using System.Collections.Immutable;

namespace Ohmstead.Electronics.Hazards;

/// <summary>The hazards of old electronics, each with its usual cautions. None of it replaces training.</summary>
public static class HazardCatalogue
{
    private static readonly Source Workshop = Source.CommonPractice;

    /// <summary>All hazards, in the order they are usually looked for.</summary>
    public static ImmutableArray<Hazard> All { get; } =
    [
        Hazard.Of(
            "mains", "mains parts and live chassis", Workshop,
            "unplug, and check dead with a meter that was just proved on a known source",
            "a chassis joined to one side of the mains needs an isolating transformer to be worked on",
            "a residual-current device does not protect on the secondary of an isolating transformer",
            "one hand where it can be, and insulated probes"),
        Hazard.Of(
            "stored-energy", "reservoir capacitors that keep their charge", Workshop,
            "a bleeder may be open: measure before and after letting down",
            "let down through a wire-wound resistor of 1 to 20 kΩ on an insulated probe, never with a screwdriver",
            "a shorted aluminium electrolytic may recover up to a tenth of its voltage: measure again"),
        Hazard.Of(
            "switching-primary", "primary side of a switching supply", Workshop,
            "some 325 V d.c. from 230 V mains, or 340 V from a doubler on 120 V, for minutes after unplugging",
            "heatsinks may be at primary potential"),
        Hazard.Of(
            "picture-tube", "cathode-ray tube", Workshop,
            "10 to 30 kV on 0.3 to 2 nF; the charge comes back after one discharge",
            "implosion: eye protection, and never lift by the neck"),
        Hazard.Of(
            "crazed-suppressor", "mains suppressor of metallised paper in clear resin, case crazed", Workshop,
            "fails short with smoke, sometimes hours after power-up",
            "no measurement passes a crazed one: replace on sight with film of the same class or better"),
        Hazard.Of(
            "rechargeable-cell", "leaking nickel-cadmium cell", Workshop,
            "the crust is alkaline, about pH 13 to 14: gloves and goggles",
            "neutralise with a weak acid such as 5 % vinegar, rinse with water, then with 2-propanol"),
        Hazard.Of(
            "lithium-cell", "lithium memory cell", Workshop,
            "never charge it: a series diode or resistor stands in the circuit for that",
            "3.0 V when fresh, spent under some 2.5 V; replace with a tagged cell, do not solder to the cell"),
        Hazard.Of(
            "cell-pack", "rechargeable pack that vents", Workshop,
            "a faulty pack vents and burns: out of the set before anything else"),
        Hazard.Of(
            "electrolyte", "leaked electrolyte", Workshop,
            "conductive and corrosive, above all the kinds of the 1990s: wash before any test under power",
            "gloves, and no food at the bench"),
        Hazard.Of(
            "asbestos", "mineral wool, heat pads, cords and arc barriers from before about 1980", Workshop,
            "treat as asbestos until tested",
            "neither blow nor brush it"),
        Hazard.Of(
            "polychlorinated-oil", "oil-filled capacitor or ballast that may hold PCB",
            Source.FromMemory("40 CFR 761; Regulation (EU) 2019/1021", null),
            "suspect anything oil-filled from before 1977 to 1986, by country",
            "do not open it; gloves; hazardous-waste route (regulated from 50 ppm)"),
        Hazard.Of(
            "selenium", "selenium rectifier", Workshop,
            "its smoke at failure is toxic: ventilate and leave",
            "a silicon replacement raises the voltage by 10 to 30 V: add series resistance"),
        Hazard.Of(
            "beryllia", "beryllia ceramic in radio-frequency power parts", Workshop,
            "white ceramic under a power part may be beryllia: never file, break or abrade it"),
        Hazard.Of(
            "mercury", "mercury relay or tilt switch", Workshop,
            "keep upright, do not open, collect separately"),
        Hazard.Of(
            "radium", "radium dial paint", Workshop,
            "identify before work; do not open or scrape a luminous dial"),
        Hazard.Of(
            "hot-parts", "hot valves and resistors", Workshop,
            "envelopes reach 150 to 250 degrees, power resistors more than 200",
            "let cool before reaching in"),
        Hazard.Of(
            "lead-and-flux", "lead solder and rosin fume",
            Source.FromMemory("EH40 workplace exposure limits", "rosin fume 0.05 mg/m³ over 8 h"),
            "wash hands, no food at the bench",
            "rosin fume sensitises: local extraction"),
    ];
}
