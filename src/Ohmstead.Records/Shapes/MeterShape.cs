using Ohmstead.Records.Model;

namespace Ohmstead.Records.Shapes;

/// <summary>How meters tell what they show: meters.yaml.</summary>
public static class MeterShape
{
    private const string NoQuantity = "nothing that a field of a meter holds";

    /// <summary>A word and the quantity that it means.</summary>
    public static Shape Name { get; } =
        new(
            "name of a quantity",
            "A word that the meter says, and the quantity that it means.",
            "{ says: Cs, is: capacitance }",
            [
                Key.Text("says", "The word, as the meter says it.", "Cs").Needed(),
                Key.Word("is", Vocabulary.MeterFields, NoQuantity, "The quantity.").Needed(),
            ]
        );

    /// <summary>A field of a line.</summary>
    public static Shape Field { get; } =
        new(
            "field",
            "One field of the line of a meter.",
            "{ holds: capacitance, unit: F }",
            [
                Key.Word(
                        "holds",
                        Vocabulary.MeterFields,
                        NoQuantity,
                        "What it holds: a quantity, the figure of the quantity that another field names (reading), that name "
                            + "(quantity), the unit of the field before it, the range of the first quantity, whether the reading is "
                            + "good (status), or nothing that is wanted."
                    )
                    .Needed(),
                Key.Text("unit", "The unit of its figure; where it is not said the line tells it, as in 46.1 uF.", "F"),
                Key.Text("good", "What a status says when the reading is good, several parted by spaces.", "0 +0"),
                Key.List("names", Name, "The words by which the meter names quantities."),
            ]
        );

    /// <summary>A meter.</summary>
    public static Shape Meter { get; } =
        new(
            "meter",
            "How one meter tells what it shows.",
            "{ meter: bridge, talks: lines, what: LCR bridge }",
            [
                Key.Id("meter", "The name that --meter takes.", "bridge").Needed(),
                Key.Text("what", "What it is.", "LCR bridge on a serial port"),
                Key.Id("instrument", "The instrument that it is, from instruments.yaml.", "bridge-1"),
                Key.Word(
                        "talks",
                        Vocabulary.MeterTalks,
                        "no way in which a meter talks",
                        "Whether it sends lines by itself, or is asked in the words of IEEE 488.2 and SCPI."
                    )
                    .Needed(),
                Key.Text("ask", "The query for a reading; READ? when not said. Only for a meter that is asked.", "FETCh?"),
                Key.Text("ask_range", "The query for its range, in the unit of what it shows first.", "SENSe:RESistance:RANGe?"),
                Key.Text("ask_frequency", "The query for its test frequency in hertz.", "FREQuency?"),
                Key.Word(
                    "separator",
                    Vocabulary.MeterSeparators,
                    "nothing that parts fields",
                    "What parts the fields of a line; commas when not said."
                ),
                Key.List(
                    "fields",
                    Field,
                    "The fields of a line, in order; a meter that is asked and has none says itself what it measures."
                ),
                Key.Text("overload", "Texts in a field that mean beyond the range or no reading, several parted by spaces.", "OL ----"),
            ]
        );

    /// <summary>meters.yaml.</summary>
    public static Shape File { get; } =
        new(
            "meters",
            "How meters at the bench tell what they show.",
            "meters: []",
            [
                Key.List("meters", Meter, "The meters."),
                Key.Count("format", "The version of the record format; 1 when not said.", "1"),
                Key.Text("note", "Anything the next person should know.", "cable in the left drawer"),
            ]
        );
}
