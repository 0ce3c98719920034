using System.Collections.Immutable;

namespace Ohmstead.Electronics.Hazards;

/// <summary>The hazards of old electronics, each with its usual cautions. None of it replaces training.</summary>
public static class HazardCatalogue
{
    private static readonly Source Workshop = Source.CommonPractice;

    private static readonly Source Stored = Source.Published(
        "Nippon Chemi-Con FAQ 29BDH12; EIA-815:1999",
        "recovery voltage; discharge; the share that comes back as quoted of encyclopedias, the resistors common practice"
    );

    private static readonly Source Tubes = Source.Published(
        "NAVEDTRA 14188, Introduction to Test Equipment",
        "page 1-16: ground first, each tube by itself; coating and resistor common practice"
    );

    /// <summary>All hazards, in the order they are usually looked for.</summary>
    public static ImmutableArray<Hazard> All { get; } =
    [
        Hazard.Create(
            "mains",
            "mains parts and live chassis",
            Workshop,
            "unplug, and check dead with a meter that was just proved on a known source",
            "a chassis joined to one side of the mains needs an isolating transformer to be worked on",
            "a residual-current device does not protect on the secondary of an isolating transformer",
            "one hand where it can be, and insulated probes"
        ),
        Hazard.Create(
            "stored-energy",
            "reservoir capacitors that keep their charge",
            Stored,
            "a bleeder may be open: measure before and after letting down",
            "let down to 1 kV through a wire-wound resistor of 1 to 20 kΩ on an insulated probe, made for the voltage, never under 1 Ω "
                + "for each volt and never with a screwdriver; above 1 kV through 1 MΩ or more",
            "its clip to bare metal of the chassis first, then the probe to the capacitor; each capacitor by itself",
            "an aluminium electrolytic may get back 15 % of its voltage by itself, more than 60 V after 450 V, most of it 10 to 20 days "
                + "later: measure again before each touch, keep a shorting link on a stored one"
        ),
        Hazard.Create(
            "switching-primary",
            "primary side of a switching supply",
            Workshop,
            "some 325 V d.c. from 230 V mains, or 340 V from a doubler on 120 V, for minutes after unplugging",
            "heatsinks may be at primary potential"
        ),
        Hazard.Create(
            "picture-tube",
            "cathode-ray tube",
            Tubes,
            "10 to 30 kV on the tube for days, count with 10 nF: a text of the trade says 5 to 10 nF for a tube",
            "a high-voltage probe, or 10 MΩ or more made for the voltage on an insulated wand: never 1 to 20 kΩ and never a "
                + "screwdriver, 25 kV into 2.2 kΩ is a flash-over of 284 kW",
            "its clip first, to the strap on the outer coating of the tube, not to the ground of a board; then the probe under the "
                + "anode cap, for a minute",
            "the charge comes back within minutes: let down again right before you touch, each time",
            "implosion: eye protection, and never lift by the neck"
        ),
        Hazard.Create(
            "crazed-suppressor",
            "mains suppressor of metallised paper in clear resin, case crazed",
            Workshop,
            "fails short with smoke, sometimes hours after power-up",
            "no measurement passes a crazed one: replace on sight with film of the same class or better"
        ),
        Hazard.Create(
            "rechargeable-cell",
            "leaking cell, nickel-cadmium, nickel-metal hydride or alkaline",
            Workshop,
            "the white crust is potassium carbonate, about pH 11.5; what is wet or fresh is potassium hydroxide, about pH 12, and more "
                + "where it is strong: gloves and goggles for both",
            "neutralise with a weak acid such as 5 % vinegar, rinse with water, then with 2-propanol; baking soda is for acid, not for this"
        ),
        Hazard.Create(
            "lithium-cell",
            "lithium memory cell",
            Source.Published("Renata designer's guide, primary lithium cells", "pages 52 and 53; when it is spent common practice"),
            "never charge it: two diodes, or a diode and a resistor that limits when the diode has failed short ('calculate "
                + "charge-guard'); a diode alone is no guard",
            "3.1 to 3.3 V when fresh; replaced under some 2.5 V, though sheets discharge to 2.0 V; a spent one may read 3.0 V without "
                + "load; replace with a tagged cell, do not solder to the cell"
        ),
        Hazard.Create(
            "cell-pack",
            "rechargeable pack that vents",
            Workshop,
            "a faulty pack vents and burns: out of the set before anything else"
        ),
        Hazard.Create(
            "electrolyte",
            "leaked electrolyte",
            Workshop,
            "conductive and corrosive, above all the kinds of the 1990s: wash before any test under power",
            "gloves, and no food at the bench"
        ),
        Hazard.Create(
            "asbestos",
            "mineral wool, heat pads, cords and arc barriers from before about 1980",
            Workshop,
            "treat as asbestos until tested",
            "neither blow nor brush it"
        ),
        Hazard.Create(
            "polychlorinated-oil",
            "oil-filled capacitor or ballast that may hold PCB",
            Source.Published("40 CFR 761.2(a)(4), 761.3", "United States; elsewhere by its own law"),
            "made before 2 July 1979, or nobody knows when: assume 500 ppm of PCB or more until it is tested or is marked \"No PCBs\"; "
                + "elsewhere suspect anything oil-filled that is not marked free of it",
            "do not open it; gloves; hazardous-waste route (contaminated from 50 ppm)"
        ),
        Hazard.Create(
            "selenium",
            "selenium rectifier",
            Workshop,
            "its smoke at failure is toxic: ventilate and leave",
            "a silicon replacement raises the voltage by 10 to 30 V: add series resistance"
        ),
        Hazard.Create(
            "beryllia",
            "beryllia ceramic in radio-frequency power parts",
            Workshop,
            "white ceramic under a power part may be beryllia: never file, break or abrade it"
        ),
        Hazard.Create("mercury", "mercury relay or tilt switch", Workshop, "keep upright, do not open, collect separately"),
        Hazard.Create("radium", "radium dial paint", Workshop, "identify before work; do not open or scrape a luminous dial"),
        Hazard.Create(
            "hot-parts",
            "hot valves and resistors",
            Workshop,
            "envelopes reach 150 to 250 degrees, power resistors more than 200",
            "let cool before reaching in"
        ),
        Hazard.Create(
            "lead-and-flux",
            "lead solder and rosin fume",
            Source.Published("HSE SIM 03/2002/26, exposure limits of EH40", "paragraph 3"),
            "wash hands, no food at the bench",
            "rosin fume sensitises: local extraction (limits in the UK: 0.05 mg/m³ over 8 h, 0.15 mg/m³ over 15 min)"
        ),
    ];
}
