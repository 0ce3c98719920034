using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Records.Shapes;

/// <summary>A part: what belongs in one place of a board, or what a lot in the drawer consists of.</summary>
public static class PartShape
{
    /// <summary>The reference designator.</summary>
    public static Key Ref { get; } = Key.Id("ref", "The reference designator, as on the drawing.", "C12").Needed();

    /// <summary>The kind of part.</summary>
    public static Key Kind { get; } = Key.Word("kind", Vocabulary.PartKinds, "no kind of part", "What kind of part it is.").Needed();

    /// <summary>What it does there.</summary>
    public static Key Role { get; } =
        Key.Word("role", Vocabulary.Roles, "no role of a part", "What the part does in its place; decides which replacement values fit.");

    /// <summary>Marked capacitance.</summary>
    public static Key Capacitance { get; } = Key.Quantity("capacitance", Dimension.Capacitance, "The marked capacitance.", "470 µF");

    /// <summary>Marked resistance.</summary>
    public static Key Resistance { get; } = Key.Quantity("resistance", Dimension.Resistance, "The marked resistance.", "4k7");

    /// <summary>Marked inductance.</summary>
    public static Key Inductance { get; } = Key.Quantity("inductance", Dimension.Inductance, "The marked inductance.", "10 mH");

    /// <summary>Marked tolerance.</summary>
    public static Key Tolerance { get; } =
        Key.Tolerance("tolerance", "The marked tolerance: symmetric, asymmetric or an IEC 60062 letter.", "-10/+50 %");

    /// <summary>Rated voltage.</summary>
    public static Key RatedVoltage { get; } =
        Key.Quantity(
            "rated_voltage",
            Dimension.Voltage,
            "The voltage the part is rated for; for a zener diode, a regulator or a pack of cells the voltage it gives.",
            "25 V"
        );

    /// <summary>Working voltage.</summary>
    public static Key WorkingVoltage { get; } =
        Key.Quantity("working_voltage", Dimension.Voltage, "The voltage the part sees in this place.", "15.2 V");

    /// <summary>Rated temperature.</summary>
    public static Key Temperature { get; } =
        Key.Quantity("temperature", Dimension.Temperature, "The highest temperature the part is rated for.", "85 °C");

    /// <summary>Power rating.</summary>
    public static Key Power { get; } = Key.Quantity("power", Dimension.Power, "The power rating.", "0.5 W");

    /// <summary>Rated current.</summary>
    public static Key Current { get; } = Key.Quantity("current", Dimension.Current, "The current rating.", "1 A");

    /// <summary>Speed of a fuse.</summary>
    public static Key Speed { get; } =
        Key.Word(
            "speed",
            Vocabulary.FuseSpeeds,
            "no speed of a fuse",
            "How quickly a fuse opens, IEC 60127: FF very quick, F quick, M medium, T slow, TT very slow."
        );

    /// <summary>Breaking capacity of a fuse.</summary>
    public static Key Breaking { get; } =
        Key.Word(
            "breaking",
            Vocabulary.FuseBreakings,
            "no breaking capacity of a fuse",
            "What current a fuse can interrupt, IEC 60127: L low (glass), E enhanced, H high (ceramic)."
        );

    /// <summary>Standard of a fuse.</summary>
    public static Key Standard { get; } =
        Key.Word(
            "standard",
            Vocabulary.FuseStandards,
            "no standard of a fuse",
            "The standard that a fuse is rated by: the same figure is another current in each."
        );

    /// <summary>Frequency of a crystal.</summary>
    public static Key Frequency { get; } =
        Key.Quantity("frequency", Dimension.Frequency, "The marked frequency of a crystal.", "4.433619 MHz");

    /// <summary>The part's own dissipation factor limit.</summary>
    public static Key LossFactorLimit { get; } =
        Key.Quantity(
            "loss_factor_limit",
            Dimension.Ratio,
            "The part's own limit of dissipation factor (tan delta), from its data sheet.",
            "0.14"
        );

    /// <summary>The part's own or the design's ESR limit.</summary>
    public static Key EsrLimit { get; } =
        Key.Quantity(
            "esr_limit",
            Dimension.Resistance,
            "The highest ESR: from the data sheet of the part, or what this place of the design stands.",
            "0.9 Ω"
        );

    /// <summary>The frequency of the ESR limits.</summary>
    public static Key EsrFrequency { get; } =
        Key.Quantity(
            "esr_frequency",
            Dimension.Frequency,
            "The frequency at which esr_limit and esr_low hold; without it they decide only what they decide at 120 "
                + "Hz and at 100 kHz alike.",
            "100 kHz"
        );

    /// <summary>The least ESR the circuit needs.</summary>
    public static Key EsrLow { get; } =
        Key.Quantity("esr_low", Dimension.Resistance, "The least ESR that this place needs, as some regulators do.", "50 mΩ");

    /// <summary>The part's own leakage limit.</summary>
    public static Key LeakageLimit { get; } =
        Key.Quantity("leakage_limit", Dimension.Current, "The highest leakage current, from the data sheet.", "120 µA");

    /// <summary>Circuit limit, lowest.</summary>
    public static Key Low { get; } = Key.AnyQuantity("low", "Circuit limit: the lowest value at which this place still works.", "380 µF");

    /// <summary>Circuit limit, highest.</summary>
    public static Key High { get; } =
        Key.AnyQuantity("high", "Circuit limit: the highest value at which this place still works.", "1000 µF");

    /// <summary>Rated life.</summary>
    public static Key Life { get; } = Key.Quantity("life", Dimension.Duration, "The rated life at the rated temperature.", "2000 h");

    /// <summary>Rated ripple current.</summary>
    public static Key RippleCurrent { get; } = Key.Quantity("ripple_current", Dimension.Current, "The rated ripple current.", "630 mA");

    /// <summary>Whether it has a right way round.</summary>
    public static Key Polarity { get; } =
        Key.Word(
            "polarity",
            Vocabulary.Polarities,
            "no polarity of a part",
            "Whether the part has a right way round; needed where the kind does not say it."
        );

    /// <summary>Safety class.</summary>
    public static Key SafetyClass { get; } =
        Key.Word("safety_class", Vocabulary.SafetyClasses, "no safety class", "The class of a suppression capacitor, IEC 60384-14.");

    /// <summary>What it is made of.</summary>
    public static Key Material { get; } =
        Key.Word(
            "material",
            Vocabulary.Materials,
            "no material of a part",
            "What it is made of where the kind does not say it: junction, dielectric or chemistry; decides its usual limits."
        );

    /// <summary>Cells in series.</summary>
    public static Key Cells { get; } = Key.Count("cells", "How many cells a pack has in series.", "3");

    /// <summary>Form of the body.</summary>
    public static Key Form { get; } = Key.Word("form", Vocabulary.Forms, "no form of a part", "The body and how its leads leave it.");

    /// <summary>Size of a fuse.</summary>
    public static Key Size { get; } =
        Key.Word("size", Vocabulary.FuseSizes, "no size of a fuse", "The size of a fuse: what its holder takes.");

    /// <summary>Lead pitch.</summary>
    public static Key LeadPitch { get; } = Key.Quantity("lead_pitch", Dimension.Length, "The distance between the leads.", "5 mm");

    /// <summary>Diameter.</summary>
    public static Key Diameter { get; } = Key.Quantity("diameter", Dimension.Length, "The diameter of the can.", "12.5 mm");

    /// <summary>Height.</summary>
    public static Key Height { get; } = Key.Quantity("height", Dimension.Length, "The height or length of the can.", "20 mm");

    /// <summary>Maker.</summary>
    public static Key Maker { get; } = Key.Text("maker", "Who made it.", "Ostrel").AsPrinted();

    /// <summary>Series.</summary>
    public static Key Series { get; } = Key.Text("series", "The maker's series.", "RB").AsPrinted();

    /// <summary>Type number.</summary>
    public static Key Type { get; } = Key.Text("type", "The type number.", "TL-7404").AsPrinted();

    /// <summary>Date code.</summary>
    public static Key DateCode { get; } = Key.Text("date_code", "The date code, as printed.", "7834").AsPrinted();

    /// <summary>A remark.</summary>
    public static Key Note { get; } = Key.Text("note", "Anything the next person should know.", "sleeve shrunk at the top");

    /// <summary>The keys that describe a part wherever it is, in canonical order.</summary>
    public static IReadOnlyList<Key> Values { get; } =
    [
        Role,
        Capacitance,
        Resistance,
        Inductance,
        Tolerance,
        RatedVoltage,
        WorkingVoltage,
        Temperature,
        Power,
        Current,
        Speed,
        Breaking,
        Standard,
        Frequency,
        LossFactorLimit,
        EsrLimit,
        EsrLow,
        EsrFrequency,
        LeakageLimit,
        Low,
        High,
        Life,
        RippleCurrent,
        Material,
        Cells,
        Polarity,
        SafetyClass,
        Form,
        Size,
        LeadPitch,
        Diameter,
        Height,
        Maker,
        Series,
        Type,
        DateCode,
        Note,
    ];

    /// <summary>Of these the keys that belong to the part itself, and not to the place that it sits in.</summary>
    public static IReadOnlyList<Key> OfThePart { get; } = [.. Values.Except([WorkingVoltage, Role, Low, High, EsrLow])];

    /// <summary>A part that was put in and came from no lot.</summary>
    public static Shape NewPart { get; } =
        new(
            "new part",
            "What was put in, as its print says it.",
            "{ kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 25 V, temperature: 105 °C }",
            [Kind, .. OfThePart]
        );

    /// <summary>A part in its place.</summary>
    public static Shape Shape { get; } =
        new(
            "part",
            "What belongs in one place of a board.",
            "{ ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: -10/+50 %, rated_voltage: 25 V }",
            [Ref, Kind, .. Values]
        );
}
