using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Records.Shapes;

/// <summary>One visit to the bench: what was found, read, done, decided and proved on one day.</summary>
public static class BenchShape
{
#pragma warning disable CS1591 // Each key explains itself in its description, which people read in the schema too.
    public static Key Date { get; } = Key.Date("date", "The day of this visit to the bench.", "2026-03-14").Needed();
    public static Key By { get; } = Key.Text("by", "Initials of who did it.", "RK");
    public static Key RoomTemperature { get; } = Key.Quantity("temperature", Dimension.Temperature, "Temperature at the bench.", "21 °C");
    public static Key Instrument { get; } = Key.Id("instrument", "The instrument used, from instruments.yaml.", "bridge-2");
    public static Key Powered { get; } = Key.Text("powered", "How power was applied that day, if it was.", "through a series lamp");
    public static Key At { get; } = Key.Text("at", "The place on the board.", "J3");
    public static Key Note { get; } = Key.Text("note", "Anything the next person should know.", "print disagrees");
    public static Key What { get; } = Key.Text("what", "What was seen.", "flux left from earlier work").Needed();
    public static Key Severity { get; } =
        Key.Word(
                "severity",
                Vocabulary.Severities,
                "no severity of a finding",
                "How much it matters; major and safety must be answered before the board is fit to run."
            )
            .Needed();
    public static Key Part { get; } = Key.Id("part", "The part, by reference designator.", "C12");
    public static Key Lot { get; } = Key.Id("lot", "The lot in the drawer, from stock.yaml.", "L-031");
    public static Key Piece { get; } =
        Key.Text("piece", "Which piece of the lot, or which of several new parts, was read or scrapped.", "2").AsPrinted();
    public static Key Point { get; } = Key.Id("point", "The test point, from the design.", "+15V");
    public static Key State { get; } =
        Key.Word(
            "state",
            Vocabulary.ReadingStates,
            "no state of a part",
            "When in the part's life the reading was taken; as found when not said."
        );
    public static Key Circuit { get; } =
        Key.Word("circuit", Vocabulary.Circuits, "neither in nor out of the circuit", "Whether the part was in the circuit.");
    public static Key Frequency { get; } =
        Key.Quantity("frequency", Dimension.Frequency, "The test frequency; for a crystal or a proof, the frequency read.", "120 Hz");
    public static Key Capacitance { get; } = Key.Indication("capacitance", Dimension.Capacitance, "Capacitance read.", "391 µF");
    public static Key Esr { get; } = Key.Indication("esr", Dimension.Resistance, "Equivalent series resistance read.", "1.4 Ω");
    public static Key LossFactor { get; } = Key.Indication("loss_factor", Dimension.Ratio, "Dissipation factor (tan delta) read.", "0.12");
    public static Key Leakage { get; } = Key.Indication("leakage", Dimension.Current, "Leakage current read.", "18 µA");
    public static Key Insulation { get; } =
        Key.Indication("insulation", Dimension.Resistance, "Insulation resistance read across a capacitor.", "24 GΩ");
    public static Key After { get; } =
        Key.Quantity("after", Dimension.Duration, "How long the voltage had stood when leakage or insulation was read.", "2 min");
    public static Key AtVoltage { get; } =
        Key.Quantity("at_voltage", Dimension.Voltage, "The voltage at which leakage or insulation was read.", "25 V");
    public static Key Bias { get; } =
        Key.Quantity(
            "bias",
            Dimension.Voltage,
            "The d.c. voltage across the part while its capacitance was read, beyond what the meter needs.",
            "12 V"
        );
    public static Key VoltageLoss { get; } =
        Key.Indication("voltage_loss", Dimension.Ratio, "Voltage loss after a charging pulse.", "1.2 %");
    public static Key Resistance { get; } = Key.Indication("resistance", Dimension.Resistance, "Resistance read.", "4.81 kΩ");
    public static Key Inductance { get; } = Key.Indication("inductance", Dimension.Inductance, "Inductance read.", "9.7 mH");
    public static Key Voltage { get; } = Key.Indication("voltage", Dimension.Voltage, "Voltage read.", "15.06 V");
    public static Key Ripple { get; } = Key.Indication("ripple", Dimension.Voltage, "Ripple read, peak to peak.", "4 mV");
    public static Key Current { get; } = Key.Indication("current", Dimension.Current, "Current read.", "310 mA");
    public static Key ForwardVoltage { get; } =
        Key.Indication("forward_voltage", Dimension.Voltage, "Forward voltage of a junction read.", "0.62 V");
    public static Key Gain { get; } = Key.Indication("gain", Dimension.Number, "Current gain of a transistor read.", "140");
    public static Key Temperature { get; } =
        Key.Quantity("temperature", Dimension.Temperature, "Temperature read, or at which the reading was taken.", "21 °C");
    public static Key Hours { get; } = Key.Number("hours", "Hours of soak.", "4");
    public static Key Result { get; } = Key.Word("result", Vocabulary.Results, "neither pass nor fail", "The result of a functional test.");
    public static Key Range { get; } = RangeLike("100 µF");
    public static Key RangeOfProof { get; } = RangeLike("60 V");
    public static Key Method { get; } = Key.Text("method", "How it was measured or tested.", "four-wire");
    public static Key Verdict { get; } =
        Key.Word(
            "verdict",
            Vocabulary.Verdicts,
            "no verdict",
            "The verdict, for readers without the tool; it must agree with the computed one."
        );
    public static Key Did { get; } = Key.Word("did", Vocabulary.Works, "no kind of work", "What was done.").Needed();
    public static Key NewPart { get; } =
        Key.Mapping("new_part", PartShape.NewPart, "What was put in, where it came from no lot in the drawer.");
    public static Key TakenFrom { get; } =
        Key.Text(
            "taken_from",
            "The board and the place that it was taken from, where it sat on another board; what it is says new_part.",
            "SP-0003 C4"
        );
    public static Key WentTo { get; } =
        Key.Text("went_to", "The board and the place that it went to, where it was taken off for another board.", "SP-0008 C1");
    public static Key Polarity { get; } =
        Key.SomeWords(
            "polarity",
            Vocabulary.PolarityWays,
            "no way to establish a polarity",
            "How the right way round was established; the print alone does not establish it."
        );
    public static Key With { get; } = Key.Text("with", "What it was done with.", "isopropanol");
    public static Key Dry { get; } = Key.Quantity("dry", Dimension.Duration, "How long it must dry before power.", "24 h");
    public static Key Kept { get; } = Key.Text("kept", "Where the original part is kept.", "bag 7, drawer 2").AsPrinted();
    public static Key Irreversible { get; } =
        Key.Word("irreversible", Vocabulary.YesNo, "neither yes nor no", "Whether the change cannot be undone.");
    public static Key Clears { get; } =
        Key.Text("clears", "The place of the finding that this work answers, when it is not the part itself.", "J3");
    public static Key Hazard { get; } =
        Key.Word("hazard", Vocabulary.Hazards, "no kind of hazard", "The hazard that this work makes safe.");
    public static Key Decision { get; } =
        Key.Word("decision", Vocabulary.Decisions, "no decision about a part", "What a person decided.").Needed();
    public static Key Because { get; } = Key.Text("because", "Why.", "this family fails shorted").Needed();
    public static Key Corrects { get; } =
        Key.Date(
            "corrects",
            "The day of the entry about the same place that was written down wrongly: this one counts in its stead, as of that day.",
            "2026-03-14"
        );
    public static Key WrittenWrongly { get; } =
        Key.Text("because", "Why the entry of that day is known to be wrong.", "read off the wrong scale of the meter");
    public static Key Scrapped { get; } = Key.Count("count", "How many pieces went to the bin.", "1").Needed();
    public static Key File { get; } =
        Key.Text("file", "The picture, from the root of the collection.", "photos/SP-0007/front.png").Needed();
    public static Key Shows { get; } = Key.Text("shows", "What the picture shows, in words.", "C12 with the worn print beside it").Needed();
#pragma warning restore CS1591

    private static Key RangeLike(string example) =>
        Key.AnyQuantity(
            "range",
            "The range that the meter was on, in the unit of what was read first; decides which of its accuracies counts.",
            example
        );

    /// <summary>Something seen.</summary>
    public static Shape Found { get; } =
        new(
            "finding",
            "Something seen at the bench.",
            "{ at: J3, what: flux left from earlier work, severity: minor }",
            [At.Needed(), What, Severity]
        );

    /// <summary>A reading of a part, of a lot before it is fitted, or of a point.</summary>
    public static Shape Reading { get; } =
        new(
            "reading",
            "A measurement.",
            "{ part: C12, state: as found, circuit: out, frequency: 120 Hz, capacitance: 391 µF, esr: 1.4 Ω }",
            [
                Part,
                Lot,
                Piece,
                Point,
                State,
                Circuit,
                Frequency,
                Temperature,
                Instrument,
                Capacitance,
                Esr,
                LossFactor,
                Leakage,
                Insulation,
                After,
                AtVoltage,
                Bias,
                VoltageLoss,
                Resistance,
                Inductance,
                Voltage,
                Ripple,
                Current,
                ForwardVoltage,
                Gain,
                Result,
                Range,
                Method,
                Verdict,
                Corrects,
                WrittenWrongly,
                Note,
            ]
        );

    /// <summary>A reading of a lot in the drawer. What came in is measured again, not corrected: whoever fitted a piece of it relied on
    /// it.</summary>
    public static Shape ReadingOfALot { get; } =
        new(
            "reading in the drawer",
            Reading.Description,
            Reading.Example,
            [.. Reading.Keys.Where(key => key != Corrects && key != WrittenWrongly)]
        );

    /// <summary>Something done.</summary>
    public static Shape Work { get; } =
        new(
            "work entry",
            "Something done to the board.",
            "{ part: C12, did: replaced, lot: L-031, polarity: schematic }",
            [Part, At, Did, Lot, NewPart, TakenFrom, WentTo, Polarity, With, Dry, Kept, Irreversible, Clears, Hazard, Note]
        );

    /// <summary>A person's decision.</summary>
    public static Shape Decided { get; } =
        new(
            "decision",
            "What a person decided, with the reason.",
            "{ part: C4, decision: replace, because: this family fails shorted }",
            [Part, At, Decision, Because]
        );

    /// <summary>Pieces of a lot that were thrown away before they were fitted.</summary>
    public static Shape Scrap { get; } =
        new(
            "scrapped pieces",
            "Pieces of a lot that went to the bin; what is left of the lot goes down.",
            "{ lot: L-013, count: 1, because: reads 70 % of its mark }",
            [Lot.Needed(), Piece, Scrapped, Because]
        );

    /// <summary>A proof.</summary>
    public static Shape Proof { get; } =
        new(
            "proof",
            "A measurement or test that proves the board.",
            "{ point: +15V, voltage: 15.06 V, ripple: 4 mV }",
            [
                Point.Needed(),
                Voltage,
                Ripple,
                Current,
                Frequency,
                Temperature,
                Hours,
                Result,
                RangeOfProof,
                Instrument,
                Verdict,
                Corrects,
                WrittenWrongly,
                Note,
            ]
        );

    /// <summary>A picture.</summary>
    public static Shape Photo { get; } =
        new(
            "photograph",
            "A picture taken at the bench.",
            "{ file: photos/SP-0007/front.png, shows: the board from the front }",
            [File, Shows]
        );

    private static readonly Key[] OfAVisit =
    [
        Date,
        By,
        RoomTemperature,
        Instrument,
        Powered,
        Key.List("found", Found, "What was seen."),
        Key.List("readings", Reading, "What was measured."),
        Key.List("work", Work, "What was done, in order."),
        Key.List("decided", Decided, "What a person decided, with reasons."),
        Key.List("proof", Proof, "What proved the board."),
        Key.List("photos", Photo, "Pictures."),
        Note,
    ];

    /// <summary>One visit to the bench.</summary>
    public static Shape Shape { get; } =
        new("bench visit", "One visit to the bench. New visits are appended at the end.", "{ date: 2026-03-14, by: RK }", OfAVisit);

    /// <summary>One visit to the bench with parts of the drawer.</summary>
    public static Shape InStock { get; } =
        new(
            "drawer visit",
            "One visit to the bench with parts of the drawer. New visits are appended at the end.",
            "{ date: 2026-03-14, by: RK }",
            [
                .. OfAVisit[..^1].Select(key => key.Name == "readings" ? Key.List("readings", ReadingOfALot, "What was measured.") : key),
                Key.List("scrapped", Scrap, "Pieces of lots that went to the bin."),
                Note,
            ]
        );
}
