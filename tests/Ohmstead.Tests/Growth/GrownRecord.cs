using System.Text;

namespace Ohmstead.Tests.Growth;

/// <summary>A collection of one board that is as large as one likes in one direction.</summary>
/// <param name="Name">The direction in words.</param>
/// <param name="First">The size that is doubled twice; where findings are told, so large that each check has told all that it tells one by
/// one.</param>
/// <param name="Files">The files of the collection for a size, by path.</param>
internal sealed record GrownRecord(string Name, int First, Func<int, IReadOnlyList<(string Path, string Text)>> Files)
{
    /// <summary>The one check of reading that may find anything; null where all can be read, and is judged.</summary>
    public string? Refused { get; private init; }

    /// <summary>The part or the point of which is asked why it is judged as it is.</summary>
    public string Told { get; private init; } = "R0";

    private const string Head = "---\nboard: SP-0001\ntitle: A board that grows\n";

    /// <summary>All directions.</summary>
    public static IReadOnlyList<GrownRecord> All { get; } =
    [
        // What is in order.
        Board("parts", 1500, n => Parts(n)),
        Board("parts, each with a reading", 1500, n => Parts(n) + Readings(n, i => $"part: R{i}, circuit: out, resistance: 47 kΩ")),
        Board("readings of one part in one visit", 1500, n => Parts(1) + Readings(n, i => "part: R0, circuit: out, resistance: 47 kΩ")),
        Board("readings of one part in one visit, each in a way of its own", 1500, n =>
            Parts(1) + Readings(n, i => $"part: R0, circuit: out, at_voltage: {i + 1} V, resistance: 47 kΩ")
        ),
        Board("warm readings of one winding in one visit", 1500, n =>
            "parts:\n- { ref: R0, kind: transformer, resistance: 10 Ω }\n"
            + Readings(n, i => "part: R0, circuit: out, temperature: 20 °C, resistance: 10 Ω")
        ),
        Board("readings of a regulated point and of its input in one visit", 1500, n =>
            "points:\n- { point: P0, nominal: 12 V, tolerance: 5 %, input: P1 }\n- { point: P1, nominal: 20 V, tolerance: 20 % }\n"
            + Readings(n, i => $"point: P{i % 2}, voltage: {(i % 2 == 0 ? 12 : 20)} V")
        ) with
        {
            Told = "P0",
        },
        Board("visits with a reading of one part", 1500, n =>
            Parts(1)
            + "bench:\n"
            + Lines(n, i => $"- date: 2026-03-14\n  readings:\n    - {{ part: R0, circuit: out, resistance: {47 + (i % 2)} kΩ }}")
        ),
        Board("readings as left beside as much work", 1500, n =>
            Parts(n)
            + Visit("readings", n, i => $"part: R{i}, state: as left, circuit: out, resistance: 47 kΩ")
            + Section("work", n, i => $"did: cleaned, part: R{i}")
        ),
        Board("replacements of one part", 1500, n => Parts(1) + Visit("work", n, i => "did: replaced, part: R0")),
        Board("parts, each replaced", 1500, n => Parts(n) + Visit("work", n, i => $"did: replaced, part: R{i}")),
        Collection(
            "parts, each read and replaced from a lot",
            1500,
            n =>
                Parts(n)
                + Readings(n, i => $"part: R{i}, lot: L-1, state: new, circuit: out, resistance: 47 kΩ")
                + Section("work", n, i => $"did: replaced, part: R{i}, lot: L-1"),
            ("stock.yaml", n => "lots:\n- { lot: L-1, kind: carbon film resistor, resistance: 47 kΩ, quantity: 90000 }\n")
        ),
        Board("findings, each mended", 1500, n =>
            Parts(n)
            + Visit("found", n, i => $"at: R{i}, what: burnt, severity: major")
            + Section("work", n, i => $"did: repaired, part: R{i}")
        ),
        Board("hazards beside much work", 1500, n =>
            "hazards:\n" + Lines(n, i => $"- {{ hazard: leaking cell, at: R{i} }}") + Visit("work", n, i => $"did: removed, part: Q{i}")
        ),
        Board("washes", 1500, n => Parts(1) + "bench:\n" + Lines(n, i => "- date: 2026-03-14\n  work:\n    - { did: washed, dry: 2 d }")),
        Board("points, each proved", 1500, n => Points(n) + Visit("proof", n, i => $"point: P{i}, voltage: 5 V")),
        Board("decisions", 1500, n => Parts(n) + Visit("decided", n, i => $"part: R{i}, decision: keep, because: it reads well")),
        Board("hazards", 1500, n => "hazards:\n" + Lines(n, i => $"- {{ hazard: mains, at: R{i} }}")),
        Board("waits", 1500, n => "waiting:\n" + Lines(n, i => $"- {{ since: 2026-01-01, for: part {i} }}")),
        Board("reservoirs, each proved", 1500, n =>
            "parts:\n"
            + Lines(n, i => $"- {{ ref: C{i}, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V }}")
            + "points:\n"
            + Lines(n, i => $"- {{ point: P{i}, nominal: 5 V, tolerance: 5 %, reservoir: C{i} }}")
            + Visit("proof", n, i => $"point: P{i}, voltage: 5 V, ripple: 10 mV")
        ),
        Board("live metal, mended and tested", 1500, n =>
            Parts(n)
            + Visit("found", n, i => $"at: R{i}, what: chassis live to touch, severity: safety")
            + Section("work", n, i => $"did: repaired, part: R{i}")
            + Section("proof", n, i => $"point: earth-{i}, result: pass")
        ),
        Board("decisions to form again, each at a visit of its own", 1500, n =>
            "parts:\n"
            + Lines(n, i => $"- {{ ref: C{i}, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V }}")
            + "bench:\n"
            + Lines(n, i => $"- date: 2026-03-14\n  decided:\n    - {{ part: C{i}, decision: form again, because: it lay long }}")
        ),
        Board("decisions about what is not listed, each at a visit of its own", 1500, n =>
            "bench:\n" + Lines(n, i => $"- date: 2026-03-14\n  decided:\n    - {{ at: lid {i}, decision: replace, because: it is bent }}")
        ),
        Collection(
            "parts and points of its own beside those of its design",
            1500,
            n => "design: D-1\n" + Parts(n) + Points(n),
            ("designs/D-1.md", n => "---\ndesign: D-1\ntitle: A design that grows\n" + Parts(n) + Points(n) + "---\n")
        ),
        Collection(
            "parts and points of a design",
            1500,
            n => "design: D-1\n",
            ("designs/D-1.md", n => "---\ndesign: D-1\ntitle: A design that grows\n" + Parts(n) + Points(n) + "---\n")
        ),
        Collection(
            "lots in the stock, each read",
            1500,
            n => Parts(1),
            ("stock.yaml", n =>
                "lots:\n"
                + Lines(n, i => $"- {{ lot: L-{i}, kind: carbon film resistor, resistance: 47 kΩ, quantity: 5, received: 2025-03-01 }}")
                + Readings(n, i => $"lot: L-{i}, resistance: 47 kΩ")
            )
        ),
        Board("parts in braces on one line", 1500, n =>
            "parts: [" + string.Join(", ", Each(n, i => $"{{ ref: R{i}, kind: carbon film resistor, resistance: 47 kΩ }}")) + "]\n"
        ),
        Board("parts on one line behind a character of two units", 1500, n =>
            "note: 🔋\nparts: ["
            + string.Join(", ", Each(n, i => $"{{ ref: R{i}, kind: carbon film resistor, resistance: 47 kΩ }}"))
            + "]\n"
        ),
        Board("a line of one value", 8000, n => "note: " + new string('x', n) + "\n"),
        Board("a note of many lines", 1000, n => "note: |\n" + Lines(n, i => "  a line")),
        // What is wrong.
        Board("unknown parts", 1500, n => Parts(n) + Readings(n, i => $"part: Q{i}X, circuit: out, resistance: 47 kΩ")),
        Collection(
            "unknown lots",
            3000,
            n => Parts(1) + Readings(n, i => $"part: R0, lot: L-{i}X, circuit: out, resistance: 47 kΩ"),
            ("stock.yaml", n =>
                "lots:\n" + Lines(n, i => $"- {{ lot: L-{i}, kind: carbon film resistor, resistance: 47 kΩ, quantity: 5 }}")
            )
        ),
        Collection(
            "unknown lots in the stock",
            1500,
            n => Parts(1),
            ("stock.yaml", n =>
                "lots:\n"
                + Lines(n, i => $"- {{ lot: L-{i}, kind: carbon film resistor, resistance: 47 kΩ, quantity: 5 }}")
                + Readings(n, i => $"lot: M-{i}X, resistance: 47 kΩ")
            )
        ),
        Board("unknown points", 1500, n => Points(n) + Visit("proof", n, i => $"point: Q{i}X, voltage: 5 V")),
        Board("unknown instruments", 1500, n =>
            Parts(1) + Readings(n, i => $"part: R0, circuit: out, resistance: 47 kΩ, instrument: M{i}")
        ),
        Board("reservoirs that are not there", 1500, n =>
            "points:\n" + Lines(n, i => $"- {{ point: P{i}, nominal: 5 V, tolerance: 5 %, reservoir: C{i}X }}") + Parts(n)
        ),
        Board("photographs that are not there", 1500, n => Visit("photos", n, i => $"file: photos/SP-0001/{i}.jpg, shows: it")),
        Board("readings that fail", 1500, n => Parts(n) + Readings(n, i => $"part: R{i}, circuit: out, resistance: 470 kΩ")),
        Board("readings far from the marking", 3000, n => Parts(n) + Readings(n, i => $"part: R{i}, circuit: out, resistance: 47 MΩ")),
        Board("readings of points that contradict each other", 1500, n =>
            Points(n) + Visit("proof", 2 * n, i => $"point: P{i % n}, voltage: {(i < n ? 5 : 9)} V")
        ),
        Board("references that come again", 1500, n =>
            "parts:\n" + Lines(n, i => "- { ref: R1, kind: carbon film resistor, resistance: 47 kΩ }")
        ),
        Board("unknown keys of one mapping", 8000, n => Lines(n, i => $"key{i}: 1")) with
        {
            Refused = "key-unknown",
        },
        Board("an unknown key in each part", 1500, n =>
            "parts:\n" + Lines(n, i => $"- {{ ref: R{i}, kind: carbon film resistor, resistanse{i}: 47 kΩ }}")
        ) with
        {
            Refused = "key-unknown",
        },
        Board("unknown words", 1500, n => "parts:\n" + Lines(n, i => $"- {{ ref: R{i}, kind: resistorr }}")) with
        {
            Refused = "word-unknown",
        },
        Board("readings of parts that could not be read", 1500, n =>
            "parts:\n"
            + Lines(n, i => $"- {{ ref: R{i}, kind: resistorr }}")
            + Readings(n, i => $"part: R{i}, circuit: out, resistance: 47 kΩ")
        ) with
        {
            Refused = "word-unknown",
        },
        Board("numbers cut by a comma", 1500, n =>
            "parts:\n" + Lines(n, i => $"- {{ ref: R{i}, kind: carbon film resistor, resistance: 4,7 kΩ }}")
        ) with
        {
            Refused = "decimal-comma",
        },
        Board("one number cut by many commas", 40000, n =>
            "parts:\n- { ref: R1, kind: carbon film resistor, resistance: " + string.Join(',', Each(n, i => "1")) + " kΩ }\n"
        ) with
        {
            Refused = "decimal-comma",
        },
        Board("one key many times", 8000, n => Lines(n, i => "note: x")) with
        {
            Refused = "key-repeated",
        },
        Board("values cut by a number sign", 8000, n => Lines(n, i => $"key{i}: v #x")) with
        {
            Refused = "value-cut-by-comment",
        },
        Board("escapes of control characters", 4000, n => "note: \"" + string.Concat(Each(n, i => "\\x07")) + "\"\n") with
        {
            Refused = "control-character",
        },
        Board("tabs and spaces before a key", 40000, n => "note: x\n" + string.Concat(Each(n, i => " \t")) + "x: 1\n") with
        {
            Refused = "tab-indentation",
        },
        Board("brackets that are never closed", 70000, n => "note: " + new string('[', n) + "\n") with
        {
            Refused = "too-deep",
        },
        Board("lists in lists", 40000, n => "note:\n  " + string.Concat(Each(n, i => "- ")) + "x\n") with
        {
            Refused = "too-deep",
        },
        Board("lines behind a quote that is never closed", 20000, n => "note: \"x\n" + Lines(n, i => "k: v")) with
        {
            Refused = "yaml-syntax",
        },
        // The story below.
        Board("one paragraph", 8000, n => string.Empty, n => string.Concat(Each(n, i => "word C12 "))),
        Board("a paragraph of many lines", 8000, n => string.Empty, n => Lines(n, i => "word C12 and")),
        Board(
            "control characters in the story",
            4000,
            n => string.Empty,
            n => string.Concat(Each(n, i => "word \a and another word "))
        ) with
        {
            Refused = "control-character",
        },
        Board("conflicts of a merge in the story", 3000, n => string.Empty, n => Lines(n, i => "<<<<<<< a\nx\n=======\ny\n>>>>>>> b")) with
        {
            Refused = "merge-conflict",
        },
    ];

    private static GrownRecord Board(string name, int first, Func<int, string> keys, Func<int, string>? story = null) =>
        new(name, first, n => [("boards/SP-0001.md", Head + keys(n) + "---\n" + story?.Invoke(n))]);

    private static GrownRecord Collection(string name, int first, Func<int, string> keys, (string Path, Func<int, string> Text) beside) =>
        new(name, first, n => [("boards/SP-0001.md", Head + keys(n) + "---\n"), (beside.Path, beside.Text(n))]);

    private static string Parts(int n) => "parts:\n" + Lines(n, i => $"- {{ ref: R{i}, kind: carbon film resistor, resistance: 47 kΩ }}");

    private static string Points(int n) => "points:\n" + Lines(n, i => $"- {{ point: P{i}, nominal: 5 V, tolerance: 5 % }}");

    private static string Readings(int n, Func<int, string> entry) => Visit("readings", n, entry);

    private static string Visit(string key, int n, Func<int, string> entry) => "bench:\n- date: 2026-03-14\n" + Section(key, n, entry);

    private static string Section(string key, int n, Func<int, string> entry) =>
        $"  {key}:\n" + string.Concat(Enumerable.Range(0, n).Select(i => $"    - {{ {entry(i)} }}\n"));

    private static string Lines(int n, Func<int, string> line)
    {
        var text = new StringBuilder();
        for (var i = 0; i < n; i++)
        {
            text.Append(line(i)).Append('\n');
        }

        return text.ToString();
    }

    private static IEnumerable<string> Each(int n, Func<int, string> piece) => Enumerable.Range(0, n).Select(piece);
}
