using Ohmstead.Records.Shapes;

namespace Ohmstead.PartsLists;

/// <summary>What the columns of a sort of table may hold, and how people head them.</summary>
/// <param name="Targets">What a column may hold.</param>
/// <param name="Usual">The usual headings of each, the likeliest first; letters and digits alone count, in small letters.</param>
/// <param name="Needed">What a table must have, with its name in a message.</param>
internal sealed record ColumnWords(
    IReadOnlyList<string> Targets,
    IReadOnlyList<(string Target, string[] Headings)> Usual,
    IReadOnlyList<(string Target, string Words)> Needed
)
{
    // How people and programs head such columns; letters and digits alone count. Common practice.
    private static readonly (string Target, string[] Headings)[] UsualOfParts =
    [
        (
            ColumnPlan.Reference,
            [
                "ref",
                "refs",
                "reference",
                "references",
                "refdes",
                "referencedesignator",
                "referencedesignators",
                "designator",
                "designators",
                "part",
                "parts",
            ]
        ),
        (ColumnPlan.Value, ["value", "val", "values", "rating", "marking"]),
        (ColumnPlan.Count, ["quantity", "qty", "count", "number", "pieces"]),
        ("kind", ["kind", "kindofpart"]),
        ("role", ["role", "function"]),
        ("capacitance", ["capacitance"]),
        ("resistance", ["resistance"]),
        ("inductance", ["inductance"]),
        ("tolerance", ["tolerance", "tol"]),
        ("rated_voltage", ["ratedvoltage", "voltage", "volts", "voltagerating", "wv", "wvdc"]),
        ("working_voltage", ["workingvoltage"]),
        ("temperature", ["temperature", "temp", "ratedtemperature"]),
        ("power", ["power", "watts", "wattage", "powerrating"]),
        ("current", ["current", "ratedcurrent", "currentrating"]),
        ("speed", ["speed", "fusespeed"]),
        ("breaking", ["breaking", "breakingcapacity"]),
        ("frequency", ["frequency", "freq"]),
        ("material", ["material", "dielectric", "chemistry"]),
        ("safety_class", ["safetyclass"]),
        ("form", ["form", "body", "style"]),
        ("size", ["fusesize"]),
        ("lead_pitch", ["leadpitch", "pitch", "leadspacing"]),
        ("diameter", ["diameter", "dia"]),
        ("height", ["height"]),
        ("maker", ["maker", "manufacturer", "mfr", "mfg", "make"]),
        ("series", ["series"]),
        ("type", ["type", "typenumber", "partnumber", "mpn", "pn", "manufacturerpartnumber", "mfrpartnumber", "makerspartnumber", "model"]),
        ("date_code", ["datecode"]),
        ("note", ["note", "notes", "remark", "remarks", "comment", "comments", "description"]),
    ];

    /// <summary>A parts list of one board or design.</summary>
    public static ColumnWords OfParts { get; } =
        new(
            [
                ColumnPlan.Reference,
                ColumnPlan.Value,
                ColumnPlan.Count,
                .. PartShape.Shape.Keys.Select(key => key.Name).Where(key => key != ColumnPlan.Reference),
            ],
            UsualOfParts,
            [(ColumnPlan.Reference, "references")]
        );

    /// <summary>What stands before a name in --columns, where several tables are read: <c>parts.</c></summary>
    public string Prefix { get; init; } = string.Empty;

    /// <summary>What two columns may not both be by their headings; of the others the likeliest is taken.</summary>
    public IReadOnlyList<string> MustBeCertain { get; init; } = [ColumnPlan.Reference, ColumnPlan.Value];
}
