using System.Collections.Frozen;

namespace Ohmstead.Records.Merging;

/// <summary>The rules of all lists that a record may hold.</summary>
internal static class ListRules
{
    private static readonly string[] Marking =
    [
        "kind",
        "capacitance",
        "resistance",
        "inductance",
        "tolerance",
        "rated_voltage",
        "current",
        "speed",
        "breaking",
        "standard",
        "frequency",
        "material",
        "safety_class",
        "type",
        "polarity",
    ];

    private static readonly FrozenDictionary<string, ListRule> All = new ListRule[]
    {
        new("bench", "visit")
        {
            Known =
            [
                ["date", "by"],
            ],
            Day = "date",
        },
        new("found", "finding")
        {
            Known =
            [
                ["at"],
            ],
        },
        new("readings", "reading")
        {
            Known =
            [
                ["part", "lot", "point", "piece", "state", "circuit", "?"],
                ["part", "lot", "point", "piece", "state"],
                ["part", "lot", "point"],
            ],
            Beside = ["note"],
        },
        new("work", "work")
        {
            Known =
            [
                ["part", "at", "did"],
                ["part", "at"],
            ],
            Beside = ["note", "kept", "with"],
        },
        new("decided", "decision")
        {
            Known =
            [
                ["part", "at"],
            ],
        },
        new("proof", "proof")
        {
            Known =
            [
                ["point", "?"],
                ["point"],
            ],
            Beside = ["note"],
        },
        new("photos", "photograph")
        {
            Known =
            [
                ["file"],
            ],
            IsName = true,
        },
        new("scrapped", "scrapped piece")
        {
            Known =
            [
                ["lot", "piece"],
            ],
        },
        new("waiting", "wait")
        {
            Known =
            [
                ["since", "for"],
                ["for"],
            ],
            IsName = true,
            Day = "since",
            Free = true,
        },
        new("whereabouts", "step")
        {
            Known =
            [
                ["date"],
            ],
            IsName = true,
            Day = "date",
        },
        new("formerly", "former number")
        {
            Known =
            [
                ["number"],
            ],
            IsName = true,
            Day = "until",
        },
        new("parts", "part")
        {
            Known =
            [
                ["ref"],
            ],
            IsName = true,
            Free = true,
            Fact = Marking,
        },
        new("points", "point")
        {
            Known =
            [
                ["point"],
            ],
            IsName = true,
            Free = true,
            Fact = ["measures", "nominal", "tolerance", "low", "high", "ripple_limit", "rail", "hours", "required"],
        },
        new("hazards", "hazard")
        {
            Known =
            [
                ["hazard", "at"],
            ],
            IsName = true,
            Beside = ["note"],
        },
        new("known_faults", "known fault")
        {
            Known =
            [
                ["at", "what"],
                ["at"],
            ],
            Free = true,
        },
        new("lots", "lot")
        {
            Known =
            [
                ["lot"],
            ],
            IsName = true,
            Free = true,
            Fact = Marking,
        },
        new("lines", "line of the order")
        {
            Known =
            [
                ["line"],
            ],
            IsName = true,
            Free = true,
            Fact = ["quantity", "kind", "what"],
        },
        new("came", "parcel")
        {
            Known =
            [
                ["date", "line", "lot"],
                ["date", "line"],
            ],
            Day = "date",
        },
        new("orders", "order")
        {
            Known =
            [
                ["order"],
            ],
            IsName = true,
            Free = true,
            Fact = ["received", "lost", "cancelled"],
        },
        new("instruments", "instrument")
        {
            Known =
            [
                ["id"],
            ],
            IsName = true,
            Free = true,
        },
        new("calibrations", "calibration")
        {
            Known =
            [
                ["date"],
            ],
            IsName = true,
            Day = "date",
        },
        new("accuracy", "accuracy")
        {
            Known =
            [
                ["measures", "up_to"],
                ["measures"],
            ],
        },
        new("at_times", "part of the duty")
        {
            Known =
            [
                ["temperature"],
            ],
        },
    }.ToFrozenDictionary(rule => rule.List, StringComparer.Ordinal);

    private static readonly ListRule Other = new(string.Empty, "entry");

    /// <summary>The rule for a list.</summary>
    internal static ListRule For(string list) => All.GetValueOrDefault(list, Other);
}
