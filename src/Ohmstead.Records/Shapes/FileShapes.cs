using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Records.Shapes;

/// <summary>The six files a collection consists of. Each has a JSON schema of the same name in <c>schema/</c>.</summary>
public static class FileShapes
{
    private static readonly Key Format = Key.Count("format", "The version of the record format; 1 when not said.", "1");
    private static readonly Key Note = Key.Text("note", "Anything the next person should know.", "manual in the hut");

    private static readonly Shape DutyPart = new(
        "part of the duty",
        "Hours of the year at a temperature of their own.",
        "{ hours_per_year: 200, temperature: 52 °C }",
        [
            Key.Count("hours_per_year", "How many of the hours a year.", "200").Needed(),
            Key.Quantity("temperature", Dimension.Temperature, "Temperature of the air around the parts then.", "52 °C").Needed(),
        ]
    );

    private static readonly Shape Duty = new(
        "duty",
        "How much and how warm it runs.",
        "{ hours_per_year: 900, temperature: 38 °C }",
        [
            Key.Count("hours_per_year", "Hours of running a year.", "900"),
            Key.Quantity("temperature", Dimension.Temperature, "Temperature of the air around the parts when running.", "38 °C"),
            Key.List("at_times", DutyPart, "Hours at other temperatures, part of hours_per_year: a hot summer, a closed cabinet."),
        ]
    );

    /// <summary>Something that can hurt.</summary>
    public static Shape HazardShape { get; } =
        new(
            "hazard",
            "Something that can hurt.",
            "{ hazard: charged capacitor, at: C1, voltage: 340 V, capacitance: 100 µF, bleed: 220 kΩ }",
            [
                Key.Word("hazard", Vocabulary.Hazards, "no kind of hazard", "What kind of hazard.").Needed(),
                Key.Text("at", "Where it is.", "C1"),
                Key.Quantity("voltage", Dimension.Voltage, "The voltage it can hold or carry.", "340 V"),
                Key.Quantity("capacitance", Dimension.Capacitance, "The capacitance that stores the energy.", "100 µF"),
                Key.Quantity("bleed", Dimension.Resistance, "The resistance that bleeds it down.", "220 kΩ"),
                Note,
            ]
        );

    private static readonly Shape Waiting = new(
        "wait",
        "Work that cannot go on, and for what.",
        "{ since: 2026-03-16, for: new pen motor belt, order: PO-12, blocks: drift test }",
        [
            Key.Date("since", "Since when.", "2026-03-16").Needed(),
            Key.Text("for", "For what.", "new pen motor belt").Needed(),
            Key.Id("order", "The order it came under, from stock.yaml.", "PO-12"),
            Key.Id("line", "The line of that order which it waits for.", "2"),
            Key.Text("blocks", "What cannot go on.", "drift test"),
            Key.Date("until", "When the wait ended.", "2026-04-02"),
        ]
    );

    private static readonly Shape WentTo = new(
        "step of where it went",
        "Where the board went, or whose it is now. New steps are appended at the end.",
        "{ date: 2026-05-02, did: lent, to: Two Weirs museum, until: 2026-11-30 }",
        [
            Key.Date("date", "The day.", "2026-05-02").Needed(),
            Key.Word(
                    "did",
                    Vocabulary.Whereabouts,
                    "nothing that becomes of a board",
                    "What became of it: after sold, given away or lost it is not here any more, after broken up it is no board any more, "
                        + "and after retired it is kept as it is, for show."
                )
                .Needed(),
            Key.Text("at", "The place where it stands from then on.", "store, shelf 3"),
            Key.Text("owner", "Whose it is from then on.", "harbour office"),
            Key.Text("to", "Who has it.", "Two Weirs museum"),
            Key.Date("until", "When what was lent is to come back.", "2026-11-30"),
            Key.Text("by", "Initials of who says so.", "RK"),
            Note,
        ]
    );

    private static readonly Shape Former = new(
        "former number",
        "A number that the board had before. New ones are appended at the end.",
        "{ number: SP-0003, until: 2026-05-02 }",
        [
            Key.Id("number", "The number, which no other board may have.", "SP-0003").Needed(),
            Key.Date("until", "The day it got the next one.", "2026-05-02"),
        ]
    );

    private static readonly Shape Arrived = new(
        "arrival",
        "How the board came.",
        "{ date: 2026-02-02, from: lookout hut store, complaint: pen drifts after an hour }",
        [
            Key.RoughDate("date", "When it came.", "2026-02-02"),
            Key.Text("from", "Where it came from.", "lookout hut store"),
            Key.Text("complaint", "What was said to be wrong.", "pen drifts after an hour"),
            Note,
        ]
    );

    /// <summary>A test point or test.</summary>
    public static Shape PointShape { get; } =
        new(
            "point",
            "A test point or test that proves a board of this design.",
            "{ point: +15V, nominal: 15 V, tolerance: 5 %, ripple_limit: 10 mV }",
            [
                Key.Id("point", "Its name.", "+15V").Needed(),
                Key.Word(
                    "measures",
                    Vocabulary.PointMeasures,
                    "nothing that is measured at a point",
                    "What is measured there; voltage when not said."
                ),
                Key.AnyQuantity("nominal", "The value it should have.", "15 V"),
                Key.Tolerance("tolerance", "How far from it is allowed.", "5 %"),
                Key.AnyQuantity("low", "The lowest value allowed.", "14.25 V"),
                Key.AnyQuantity("high", "The highest value allowed.", "15.75 V"),
                Key.Quantity("ripple_limit", Dimension.Voltage, "The highest ripple allowed, peak to peak.", "10 mV"),
                Key.Word(
                    "rail",
                    Vocabulary.Rails,
                    "no kind of rail",
                    "What the rail is or feeds; decides its usual limits where none are written."
                ),
                Key.Quantity("rated_current", Dimension.Current, "The current the rail is rated for; a dummy load follows from it.", "2 A"),
                Key.Id("reservoir", "The reservoir capacitor whose ripple shows here, from the parts.", "C1"),
                Key.Quantity("winding", Dimension.Voltage, "The voltage r.m.s. at full load of the winding that feeds this point.", "12 V"),
                Key.Id("input", "The point before the regulator of this rail; its headroom follows from it.", "raw"),
                Key.Quantity(
                    "source_resistance",
                    Dimension.Resistance,
                    "The resistance that a meter sees here; decides how much it pulls the voltage down.",
                    "470 kΩ"
                ),
                Key.Number("hours", "The least hours of a soak.", "4"),
                Key.Word(
                    "required",
                    Vocabulary.YesNo,
                    "neither yes nor no",
                    "Whether a board of this design must pass it to be fit to run; yes when not said."
                ),
                Key.Text("source", "Where the limit comes from.", "service sheet 3"),
                Note,
            ]
        );

    private static readonly Shape KnownFault = new(
        "known fault",
        "A fault that this design is known for.",
        "{ at: C12, what: dries out beside the regulator, advice: measure ESR warm }",
        [
            Key.Text("at", "Where.", "C12"),
            Key.Text("what", "What happens.", "dries out beside the regulator").Needed(),
            Key.Text("advice", "What to do.", "measure ESR warm"),
        ]
    );

    /// <summary>A calibration of an instrument.</summary>
    public static Shape Calibration { get; } =
        new(
            "calibration",
            "One calibration. Older ones stay: a reading is judged by the one in force on its day.",
            "{ date: 2025-09-12, valid: 12 months, certificate: SP-C-31 }",
            [
                Key.Date("date", "The day.", "2025-09-12").Needed(),
                Key.Quantity("valid", Dimension.Duration, "How long it holds; 12 months when not said.", "12 months"),
                Key.Text("certificate", "The certificate.", "SP-C-31").AsPrinted(),
            ]
        );

    /// <summary>What an instrument is good for in one quantity.</summary>
    public static Shape Accuracy { get; } =
        new(
            "accuracy",
            "What the instrument is good for in one quantity.",
            "{ measures: capacitance, error: 0.5 %, digits: 5, step: 0.1 µF }",
            [
                Key.Word("measures", Vocabulary.InstrumentMeasures, "nothing that an instrument measures", "The quantity.").Needed(),
                Key.Quantity("error", Dimension.Ratio, "The part of the error that goes with the reading.", "0.5 %"),
                Key.Count("digits", "The part of the error counted in steps of the last digit.", "5"),
                Key.AnyQuantity("step", "The step of the last digit.", "0.1 µF"),
                Key.AnyQuantity("fixed", "A fixed part of the error.", "5 pF"),
                Key.AnyQuantity("up_to", "The largest reading this holds for.", "2000 µF"),
                Key.Quantity(
                    "certificate",
                    Dimension.Ratio,
                    "The expanded uncertainty (k = 2) of the calibration itself, as part of the reading, from its certificate.",
                    "0.2 %"
                ),
            ]
        );

    /// <summary>An instrument.</summary>
    public static Shape Instrument { get; } =
        new(
            "instrument",
            "A measuring instrument.",
            "{ id: bridge-2, what: component bridge }",
            [
                Key.Id("id", "Its name in the records.", "bridge-2").Needed(),
                Key.Text("what", "What it is.", "component bridge").Needed(),
                Key.Text("maker", "Who made it.", "Tallis").AsPrinted(),
                Key.Text("serial", "Its serial number.", "0412").AsPrinted(),
                Key.List("calibrations", Calibration, "Its calibrations."),
                Key.List("accuracy", Accuracy, "What it is good for."),
                Note,
            ]
        );

    /// <summary>A lot in the drawer.</summary>
    public static Shape LotShape { get; } =
        new(
            "lot",
            "Parts in the drawer that came together.",
            "{ lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 35 V, received: 2026-02-20, quantity: 10 }",
            [
                Key.Id("lot", "Its name in the records.", "L-031").Needed(),
                PartShape.Kind,
                .. PartShape.OfThePart.Where(key => key != PartShape.Note),
                Key.RoughDate("received", "When it came.", "2026-02-20"),
                Key.Count("quantity", "How many came.", "10"),
                Key.Id("order", "The order it came under.", "PO-11"),
                Key.Text("price", "What one of them cost, with the currency; for the keeper, nothing is computed from it.", "0.42 EUR"),
                Key.Date("formed", "When the parts were last formed again.", "2026-03-01"),
                Key.Quantity("shelf_life", Dimension.Duration, "How long the parts may lie before they must be formed again.", "2 years"),
                Note,
            ]
        );

    /// <summary>collection.yaml.</summary>
    public static Shape Collection { get; } =
        new(
            "collection",
            "A collection of boards and its rules.",
            "collection: Saltmarsh Point weather collection",
            [
                Key.Text("collection", "The name of the collection.", "Saltmarsh Point weather collection").Needed(),
                Key.Text("keeper", "Who keeps it.", "RK"),
                Key.Text("place", "Where it is.", "Saltmarsh Point"),
                Key.Text(
                    "time_zone",
                    "The time zone of the bench, which says what day it is there; else each machine's own.",
                    "Europe/Lisbon"
                ),
                Key.Address(
                    "site",
                    "Where its pages are found on the web, once they are published: codes on labels and sheets lead there, and so do the "
                        + "links of the feed.",
                    "https://boards.example/"
                ),
                Key.AddressOfRecords(
                    "repository",
                    "Where a record is seen on the web as it was at a commit: pages lead there when they are written with --commit.",
                    "https://git.example/boards/blob/{commit}/{path}"
                ),
                Key.Word("invented", Vocabulary.YesNo, "neither yes nor no", "Whether everything in it is invented, as in an example."),
                Key.Word(
                    "decision",
                    Vocabulary.DecisionRules,
                    "no rule of decision",
                    "How a reading near its limit is judged: guarded leaves undecided what the uncertainty U does not prove, guarded to "
                        + "five per cent takes 0.83 U, three sigma 1.5 U, six sigma 3 U; simple takes a reading as it stands; uncritical "
                        + "rejects only what is proved outside, save of safety parts."
                ),
                Key.Quantity("look_every", Dimension.Duration, "How often a board is looked at again.", "24 months"),
                Key.Date(
                    "told_before",
                    "What was done before this day is taken as told: a board with no visit since asks for nothing but what can hurt.",
                    "2026-12-01"
                ),
                Key.Mapping("duty", Duty, "How much and how warm boards run when they do not say it themselves."),
                Format,
                Note,
            ]
        );

    /// <summary>instruments.yaml.</summary>
    public static Shape Instruments { get; } =
        new(
            "instruments",
            "The instruments of a collection.",
            "instruments: []",
            [Key.List("instruments", Instrument, "The instruments."), Format, Note]
        );

    /// <summary>stock.yaml.</summary>
    public static Shape Stock { get; } =
        new(
            "stock",
            "The drawer, the orders, and incoming inspection.",
            "lots: []",
            [
                Key.List("lots", LotShape, "Lots in the drawer."),
                Key.List("orders", OrderShape.Order, "Orders."),
                Key.List("bench", BenchShape.InStock, "Incoming inspection: readings of lots, and pieces that were scrapped."),
                Format,
                Note,
            ]
        );

    /// <summary>A file in designs/.</summary>
    public static Shape Design { get; } =
        new(
            "design",
            "A board design: what all its units have in common.",
            "design: barograph-servo",
            [
                Key.Id("design", "Its name in the records.", "barograph-servo").Needed(),
                Key.Text("title", "What it is.", "Barograph servo amplifier").Needed(),
                Key.Text("maker", "Who made it.", "Tallis").AsPrinted(),
                Key.Text("revision", "The revision described.", "C").AsPrinted(),
                Key.RoughDate("made", "When it was made.", "1978"),
                Key.List("parts", PartShape.Shape, "Its parts."),
                Key.List("points", PointShape, "Its test points and tests."),
                Key.List("hazards", HazardShape, "What can hurt."),
                Key.List("known_faults", KnownFault, "Faults it is known for."),
                Format,
                Note,
            ]
        );

    /// <summary>A file in boards/.</summary>
    public static Shape Board { get; } =
        new(
            "board",
            "One physical board.",
            "board: SP-0007",
            [
                Key.Id("board", "Its number in the collection.", "SP-0007").Needed(),
                Key.Text("title", "What it is.", "Barograph servo amplifier").Needed(),
                Key.Id("design", "Its design, from designs/.", "barograph-servo"),
                Key.Text("serial", "Its serial number, as printed.", "0412").AsPrinted(),
                Key.Text("revision", "Its revision.", "C").AsPrinted(),
                Key.Text("maker", "Who made it.", "Tallis").AsPrinted(),
                Key.RoughDate("made", "When it was made.", "1978"),
                Key.Mapping("arrived", Arrived, "How it came."),
                Key.Date("told_before", "What was done before this day is taken as it was told; else the collection's day.", "2026-12-01"),
                Key.Mapping("duty", Duty, "How much and how warm it runs."),
                Key.List("parts", PartShape.Shape, "What differs from the design, or all parts when there is no design."),
                Key.List("points", PointShape, "Test points of a board without a design, or that differ from it."),
                Key.List("hazards", HazardShape, "What can hurt, added to the design's."),
                Key.List("bench", BenchShape.Shape, "Visits to the bench, in order."),
                Key.List("waiting", Waiting, "Work that cannot go on."),
                Key.List("whereabouts", WentTo, "Where it is and whose it is, step by step."),
                Key.List("formerly", Former, "The numbers that it had before; their pages lead to this one."),
                Format,
                Note,
            ]
        );

    /// <summary>All six with the names of their schemas.</summary>
    public static IReadOnlyList<(string SchemaName, Shape Shape)> All { get; } =
    [
        ("board", Board),
        ("collection", Collection),
        ("design", Design),
        ("instruments", Instruments),
        ("meters", MeterShape.File),
        ("stock", Stock),
    ];
}
