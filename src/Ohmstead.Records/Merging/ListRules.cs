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
        new("bench", "visit") { Day = "date" },
        new("found", "finding"),
        new("readings", "reading") { Beside = ["note"] },
        new("work", "work") { Beside = ["note", "kept", "with"] },
        new("decided", "decision"),
        new("proof", "proof") { Beside = ["note"] },
        new("photos", "photograph") { Name = ["file"] },
        new("scrapped", "scrapped piece"),
        new("waiting", "wait")
        {
            Name = ["since", "for"],
            Day = "since",
            Free = true,
        },
        new("whereabouts", "step") { Name = ["date"], Day = "date" },
        new("formerly", "former number") { Name = ["number"], Day = "until" },
        new("parts", "part")
        {
            Name = ["ref"],
            Free = true,
            Fact = Marking,
        },
        new("points", "point")
        {
            Name = ["point"],
            Free = true,
            Fact = ["measures", "nominal", "tolerance", "low", "high", "ripple_limit", "rail", "hours", "required"],
        },
        new("hazards", "hazard") { Name = ["hazard", "at"], Beside = ["note"] },
        new("known_faults", "known fault") { Free = true },
        new("lots", "lot")
        {
            Name = ["lot"],
            Free = true,
            Fact = Marking,
        },
        new("lines", "line of the order")
        {
            Name = ["line"],
            Free = true,
            Fact = ["quantity", "kind", "what"],
        },
        new("came", "parcel") { Day = "date" },
        new("orders", "order")
        {
            Name = ["order"],
            Free = true,
            Fact = ["received", "lost", "cancelled"],
        },
        new("instruments", "instrument") { Name = ["id"], Free = true },
        new("calibrations", "calibration") { Name = ["date"], Day = "date" },
        new("accuracy", "accuracy"),
        new("at_times", "part of the duty"),
    }.ToFrozenDictionary(rule => rule.List, StringComparer.Ordinal);

    private static readonly ListRule Other = new(string.Empty, "entry");

    /// <summary>The rule for a list.</summary>
    internal static ListRule For(string list) => All.GetValueOrDefault(list, Other);
}
