using System.Collections.Frozen;

namespace Ohmstead.Records.Merging;

/// <summary>How the items of a list are known again, and what of an item is one fact.</summary>
/// <param name="List">The key of the list.</param>
/// <param name="What">What an item is called in a message.</param>
internal sealed record ListRule(string List, string What)
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
            Beside = ["note", "method"],
        },
        new("work", "work")
        {
            Known =
            [
                ["part", "at", "did"],
                ["part", "at"],
            ],
            Beside = ["note", "kept", "with", "polarity"],
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

    private static readonly ListRule Other = new("", "entry") { Known = [] };

    /// <summary>The keys by which an item is known again, the strictest first; ? stands for the names of the quantities that were
    /// read.</summary>
    internal string[][] Known { get; private init; } = [];

    /// <summary>Whether the first of them is a name, which no other item may have.</summary>
    internal bool IsName { get; private init; }

    /// <summary>The key of the day on which it happened, by which items of two people are put in order; else null.</summary>
    internal string? Day { get; private init; }

    /// <summary>The keys that stand beside the fact: two people may change two of them.</summary>
    private string[] Beside { get; init; } = [];

    /// <summary>Whether each key stands for itself, but for those of <see cref="Fact"/>.</summary>
    private bool Free { get; init; }

    /// <summary>The keys that are one fact together, where the others stand for themselves.</summary>
    private string[] Fact { get; init; } = [];

    /// <summary>The rule for a list.</summary>
    internal static ListRule For(string list) => All.GetValueOrDefault(list, Other);

    /// <summary>Whether a key is part of the one fact that an item tells: that is changed by one person or by nobody.</summary>
    internal bool IsFact(string key) => Free ? Fact.Contains(key) : !Beside.Contains(key);

    /// <summary>What an item is known by.</summary>
    /// <param name="item">The item.</param>
    /// <param name="keys">The keys.</param>
    internal static string NameOf(Piece item, string[] keys)
    {
        var said = keys.Select(key =>
            key != "?" ? item.TextAt(key)
            : item.Value is Nodes.MappingNode mapping
                ? string.Join('+', mapping.Entries.Select(entry => entry.Key).Where(IsRead).Order(StringComparer.Ordinal))
            : null
        );
        return string.Join('\u0001', said);
    }

    private static bool IsRead(string key) =>
        key
            is "capacitance"
                or "esr"
                or "loss_factor"
                or "leakage"
                or "insulation"
                or "voltage_loss"
                or "resistance"
                or "inductance"
                or "voltage"
                or "ripple"
                or "current"
                or "forward_voltage"
                or "gain"
                or "result"
                or "hours"
                or "temperature"
                or "frequency";
}
